import type { Species } from '../home/home.ts';
import { VAPOUR_GAS_CONSTANT, ZERO_CELSIUS } from '../physics/moist-air/constants.ts';
import { dewPoint } from '../physics/moist-air/dew-point.ts';
import { SECONDS_PER_DAY, toLocal } from '../units/local-clock.ts';
import type { Quantity } from './automation.ts';
import { type Moment, OUTDOOR, type Surroundings, windowOpen } from './surroundings.ts';

/**
 * What a quantity truly is at the start of the step at hand; a sensor makes a reading of it.
 *
 * A species that the home does not carry is NaN, which meets no condition.
 *
 * @param room  index of the room; -1 for outdoors, or for the home as a whole
 */
export function trueValue(quantity: Quantity, room: number, around: Surroundings): () => number {
  const { moment, presence, windows } = around;
  switch (quantity) {
    case 'temperature':
      return () => temperatureAt(moment, room);
    case 'relative humidity':
      return () => relativeHumidityAt(moment, room);
    case 'absolute humidity':
      return () => waterAt(moment, room);
    case 'humidity above outdoors':
      return () => waterAt(moment, room) - waterAt(moment, OUTDOORS);
    case 'dew point':
      return () => dewPointAt(temperatureAt(moment, room), waterAt(moment, room));
    case 'window':
      return () => Number(windowOpen(windows, room));
    case 'presence':
      return () => (room >= 0 ? presence.present[room]! : Number(presence.anyone));
    case 'hour':
      return hourOf(around);
    default:
      return levelOf(quantity, room, around.home.species, moment);
  }
}

function levelOf(
  name: string,
  room: number,
  species: readonly Species[],
  moment: Moment,
): () => number {
  const q = species.findIndex((one) => one.name === name);
  if (q < 0) return () => Number.NaN;
  return () => (room >= 0 ? moment.seen.species[q]![room]! : moment.seen.outdoorSpecies[q]!);
}

/** Local time in the middle of the step, so that a step belongs to the hour it lies in. [h] */
function hourOf({ moment, household, dt }: Surroundings): () => number {
  return () => {
    const local = toLocal(household.clock, moment.utc + dt / 2);
    return (local - Math.floor(local / SECONDS_PER_DAY) * SECONDS_PER_DAY) / 3600;
  };
}

function temperatureAt({ seen }: Moment, room: number): number {
  return room >= 0 ? seen.temperature[room]! : seen.outdoor[OUTDOOR.temperature]!;
}

function relativeHumidityAt({ seen }: Moment, room: number): number {
  return room >= 0 ? seen.relativeHumidity[room]! : seen.outdoor[OUTDOOR.relativeHumidity]!;
}

function waterAt({ seen }: Moment, room: number): number {
  return room >= 0 ? seen.absoluteHumidity[room]! : seen.outdoor[OUTDOOR.absoluteHumidity]!;
}

/** @param water  [g/m3]; air with hardly any counts as having a trace, because none has no dew point */
function dewPointAt(temperature: number, water: number): number {
  const pressure = (water / 1000) * VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS);
  return dewPoint(Math.max(LEAST_PRESSURE, pressure));
}

const OUTDOORS = -1;
/** Saturated at about -90 °C. [Pa] */
const LEAST_PRESSURE = 0.01;
