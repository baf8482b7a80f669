import type { DayInputs } from '../../control/day-inputs.ts';
import type { Commands } from '../../control/observations.ts';
import { AIR, EXTRA, HUMIDITY, TEMPERATURE } from '../layout/lay-out-imposed.ts';
import type { Model } from '../layout/model.ts';
import { IMPOSED } from '../layout/state-layout.ts';
import type { Imposing } from './lay-out-imposing.ts';

/** Let imposed people take the place of the household's in a day whose first step is number `first`. */
export function imposePeople(
  day: DayInputs,
  imposing: Imposing,
  first: number,
  steps: number,
): void {
  if (first < 0) return;
  if (imposing.presence.length > 0) followPresence(day, imposing, first, steps);
  const { occupants, peopleHeat, peopleVapour, peopleSpecies } = imposing;
  const count = steps * day.rooms;
  const from = first * day.rooms;
  replace(day.occupants, occupants, from, count, 1, 0);
  replace(day.awake, occupants, from, count, 1, 0);
  replace(day.peopleHeat, peopleHeat, from, count, 1, 0);
  replace(day.peopleVapour, peopleVapour, from, count, 1, 0);
  peopleSpecies.forEach((column, q) => {
    replace(day.peopleSpecies, column, from, count, day.speciesCount, q);
  });
}

/** Keep of the household's people who are noticed or asleep, and put one who is awake where it has nobody. */
function followPresence(
  day: DayInputs,
  { presence, person }: Imposing,
  first: number,
  steps: number,
): void {
  const { occupants, awake, peopleHeat, peopleVapour, peopleSpecies, speciesCount } = day;
  for (let k = 0; k < steps * day.rooms; k++) {
    const share = presence[first * day.rooms + k]!;
    if (Number.isNaN(share)) continue;
    const there = occupants[k]!;
    const stay = there > 0 ? (there - awake[k]! * (1 - share)) / there : 0;
    const more = there > 0 ? 0 : share;
    occupants[k] = there * stay + more;
    awake[k] = there > 0 ? awake[k]! * share : more;
    peopleHeat[k] = peopleHeat[k]! * stay + more * person.sensible;
    peopleVapour[k] = peopleVapour[k]! * stay + more * person.vapour;
    for (let q = 0; q < speciesCount; q++) {
      const at = k * speciesCount + q;
      peopleSpecies[at] = peopleSpecies[at]! * stay + more * person.species[q]!;
    }
  }
}

function replace(
  into: Float64Array,
  column: Float64Array,
  from: number,
  count: number,
  stride: number,
  offset: number,
): void {
  if (column.length === 0) return;
  for (let k = 0; k < count; k++) {
    const value = column[from + k]!;
    if (!Number.isNaN(value)) into[k * stride + offset] = value;
  }
}

/**
 * Set what is imposed in one step, and let it have its way against what people and control command.
 *
 * @param step  number of the step since the period's start; the spin-up's are negative
 */
export function imposeStep(
  m: Model,
  imposing: Imposing,
  step: number,
  openingRoom: Int32Array,
  commands: Commands,
): void {
  const { records, flags } = m.imposed;
  const inPeriod = step >= 0;
  const from = (inPeriod ? step : 0) * m.roomCount;
  const none = NO_COLUMN;
  for (let k = 0; k < flags.length; k++) flags[k] = 0;
  fill(m, TARGET_T, imposing.temperature, from, TEMPERATURE);
  fill(m, TARGET_W, imposing.humidity, from, HUMIDITY);
  fill(m, TARGET_RH, imposing.relativeHumidity, from, HUMIDITY);
  fill(m, HEAT, inPeriod ? imposing.heat : none, from, EXTRA);
  fill(m, VAPOUR, inPeriod ? imposing.vapour : none, from, EXTRA);
  fill(m, WINDOWS, inPeriod ? imposing.windows : none, from, EXTRA);
  fill(m, OUTDOOR_AIR, inPeriod ? imposing.air : none, from, AIR);
  for (let i = 0; i < m.roomCount; i++) {
    const at = i * IMPOSED_STRIDE;
    records[at + MEAN_T] = Number.NaN;
    records[at + MEAN_W] = Number.NaN;
    if (Number.isNaN(records[at + TARGET_T]!)) continue;
    commands.setpoints[i] = Number.NEGATIVE_INFINITY;
  }
  for (let o = 0; o < openingRoom.length; o++) {
    const at = openingRoom[o]! * IMPOSED_STRIDE;
    const share = Number.isNaN(records[at + OUTDOOR_AIR]!) ? records[at + WINDOWS]! : 0;
    if (Number.isNaN(share)) continue;
    commands.openings[o] = share;
    commands.openTimes[o] = share > 0 ? 1 : 0;
  }
}

function fill(
  { imposed: { records, flags }, roomCount }: Model,
  field: number,
  column: Float64Array,
  from: number,
  flag: number,
): void {
  const given = column.length > 0;
  for (let i = 0; i < roomCount; i++) {
    const value = given ? column[from + i]! : Number.NaN;
    records[i * IMPOSED_STRIDE + field] = value;
    if (!Number.isNaN(value)) flags[flag] = 1;
  }
}

const NO_COLUMN = new Float64Array(0);
const { temperature: TARGET_T, humidity: TARGET_W, relativeHumidity: TARGET_RH } = IMPOSED;
const { heat: HEAT, vapour: VAPOUR, windows: WINDOWS } = IMPOSED;
const { meanTemperature: MEAN_T, meanHumidity: MEAN_W } = IMPOSED;
const { outdoorAir: OUTDOOR_AIR } = IMPOSED;
const IMPOSED_STRIDE = IMPOSED.stride;
