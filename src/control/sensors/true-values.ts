import { meanPriceOf } from '../../physics/economics/mean-price.ts';
import type { Tariff } from '../../physics/economics/tariff.ts';
import { VAPOUR_GAS_CONSTANT, ZERO_CELSIUS } from '../../physics/moist-air/constants.ts';
import { dewPoint } from '../../physics/moist-air/dew-point.ts';
import { type ControlContext, OUTDOOR, windowOpen } from '../control-context.ts';
import { createLocalHour } from './local-hour.ts';
import { FIRST_SPECIES, KIND } from './quantity-kinds.ts';
import type { SensorState } from './sensor-states.ts';

/**
 * Tells sensors what they measure, as it truly is at the start of the step at hand, to be called
 * once a step: one loop per quantity. A species that the home does not carry stays NaN, which meets
 * no condition.
 */
export function createTrueValues(
  sensors: readonly SensorState[],
  context: ControlContext,
  tariff?: Tariff,
): () => void {
  const { moment, presence, windows, home, household, dt } = context;
  const measuring = (kind: number) => sensors.filter((sensor) => sensor.kind === kind);
  const temperatures = measuring(KIND.temperature);
  const relative = measuring(KIND['relative humidity']);
  const absolute = measuring(KIND['absolute humidity']);
  const aboveOutdoors = measuring(KIND['humidity above outdoors']);
  const dewPoints = measuring(KIND['dew point']);
  const windowStates = measuring(KIND.window);
  const presences = measuring(KIND.presence);
  const hours = measuring(KIND.hour);
  const sinceNoon = measuring(KIND['hour since noon']);
  const prices = measuring(KIND['electricity price']);
  const price = meanPriceOf(tariff);
  const levels = home.species.map((_, q) => measuring(FIRST_SPECIES + q));
  const hour = createLocalHour(household.clock, moment, dt);

  const copyAir = (): void => {
    const { temperature, relativeHumidity, absoluteHumidity, outdoor } = moment.observed;
    const { species, outdoorSpecies } = moment.observed;
    copyRooms(temperatures, temperature, outdoor, OUTDOOR.temperature);
    copyRooms(relative, relativeHumidity, outdoor, OUTDOOR.relativeHumidity);
    copyRooms(absolute, absoluteHumidity, outdoor, OUTDOOR.absoluteHumidity);
    copyRooms(aboveOutdoors, absoluteHumidity, outdoor, OUTDOOR.absoluteHumidity);
    for (let q = 0; q < levels.length; q++) {
      copyRooms(levels[q]!, species[q]!, outdoorSpecies, q);
    }
  };

  const derive = (): void => {
    const { temperature, absoluteHumidity, outdoor } = moment.observed;
    const outside = outdoor[OUTDOOR.absoluteHumidity]!;
    for (let k = 0; k < aboveOutdoors.length; k++) aboveOutdoors[k]!.truth -= outside;
    for (let k = 0; k < dewPoints.length; k++) {
      const i = dewPoints[k]!.room;
      const t = i >= 0 ? temperature[i]! : outdoor[OUTDOOR.temperature]!;
      dewPoints[k]!.truth = dewPointAt(t, i >= 0 ? absoluteHumidity[i]! : outside);
    }
  };

  const lookAtHome = (): void => {
    const { present, anyone } = presence;
    for (let k = 0; k < windowStates.length; k++) {
      const { room } = windowStates[k]!;
      windowStates[k]!.truth = windowOpen(windows.readOpen, room) ? 1 : 0;
    }
    for (let k = 0; k < presences.length; k++) {
      const i = presences[k]!.room;
      presences[k]!.truth = i >= 0 ? present[i]! : anyone ? 1 : 0;
    }
    for (let k = 0; k < hours.length; k++) hours[k]!.truth = hour();
    for (let k = 0; k < sinceNoon.length; k++) sinceNoon[k]!.truth = (hour() + 12) % 24;
    for (let k = 0; k < prices.length; k++) prices[k]!.truth = price(moment.utc, dt);
  };

  return () => {
    if (sensors.length === 0) return;
    copyAir();
    derive();
    lookAtHome();
  };
}

/** Give sensors the value of their room, or of outdoors. */
function copyRooms(
  sensors: readonly SensorState[],
  indoors: Float64Array,
  outdoors: Float64Array,
  place: number,
): void {
  for (let k = 0; k < sensors.length; k++) {
    const sensor = sensors[k]!;
    sensor.truth = sensor.room >= 0 ? indoors[sensor.room]! : outdoors[place]!;
  }
}

/** @param water  [g/m3]; air with hardly any counts as having a trace, because none has no dew point */
function dewPointAt(temperature: number, water: number): number {
  const pressure = (water / 1000) * VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS);
  return Number.isNaN(pressure) ? pressure : dewPoint(Math.max(LEAST_PRESSURE, pressure));
}

/** Saturated at about -90 °C. [Pa] */
const LEAST_PRESSURE = 0.01;
