import type { Home } from '../../home/home.ts';
import { VAPOUR_GAS_CONSTANT, ZERO_CELSIUS } from '../../physics/moist-air/constants.ts';
import { dewPoint } from '../../physics/moist-air/dew-point.ts';
import { SECONDS_PER_DAY, toLocal } from '../../units/local-clock.ts';
import type { Quantity } from '../automation.ts';
import { type ControlContext, type Moment, OUTDOOR, windowOpen } from '../control-context.ts';

/**
 * What a quantity truly is at the start of the step at hand; a sensor makes a reading of it.
 *
 * A species that the home does not carry is NaN, which meets no condition. Allocates nothing.
 *
 * @param kind  number of the quantity, from `kindOf`
 * @param room  index of the room; -1 for outdoors, or for the home as a whole
 */
export function trueValue(kind: number, room: number, context: ControlContext): number {
  const { moment, presence, windows } = context;
  switch (kind) {
    case KIND.temperature:
      return temperatureAt(moment, room);
    case KIND['relative humidity']:
      return relativeHumidityAt(moment, room);
    case KIND['absolute humidity']:
      return waterAt(moment, room);
    case KIND['humidity above outdoors']:
      return waterAt(moment, room) - waterAt(moment, OUTDOORS);
    case KIND['dew point']:
      return dewPointAt(temperatureAt(moment, room), waterAt(moment, room));
    case KIND.window:
      return windowOpen(windows, room) ? 1 : 0;
    case KIND.presence:
      return room >= 0 ? presence.present[room]! : Number(presence.anyone);
    case KIND.hour:
      return hourOf(context);
    default:
      return levelOf(kind - SPECIES, room, moment);
  }
}

/** Number by which `trueValue` knows a quantity: species are told apart by their place in the home. */
export function kindOf(quantity: Quantity, { species }: Pick<Home, 'species'>): number {
  if (quantity in KIND) return KIND[quantity as keyof typeof KIND];
  return SPECIES + species.findIndex(({ name }) => name === quantity);
}

function levelOf(q: number, room: number, { observed }: Moment): number {
  if (q < 0) return Number.NaN;
  return room >= 0 ? observed.species[q]![room]! : observed.outdoorSpecies[q]!;
}

/** Local time in the middle of the step, so that a step belongs to the hour it lies in. [h] */
function hourOf({ moment, household, dt }: ControlContext): number {
  const local = toLocal(household.clock, moment.utc + dt / 2);
  return (local - Math.floor(local / SECONDS_PER_DAY) * SECONDS_PER_DAY) / 3600;
}

function temperatureAt({ observed }: Moment, room: number): number {
  return room >= 0 ? observed.temperature[room]! : observed.outdoor[OUTDOOR.temperature]!;
}

function relativeHumidityAt({ observed }: Moment, room: number): number {
  return room >= 0 ? observed.relativeHumidity[room]! : observed.outdoor[OUTDOOR.relativeHumidity]!;
}

function waterAt({ observed }: Moment, room: number): number {
  return room >= 0 ? observed.absoluteHumidity[room]! : observed.outdoor[OUTDOOR.absoluteHumidity]!;
}

/** @param water  [g/m3]; air with hardly any counts as having a trace, because none has no dew point */
function dewPointAt(temperature: number, water: number): number {
  const pressure = (water / 1000) * VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS);
  return dewPoint(Math.max(LEAST_PRESSURE, pressure));
}

const OUTDOORS = -1;
/** Saturated at about -90 °C. [Pa] */
const LEAST_PRESSURE = 0.01;
const KIND = {
  temperature: 0,
  'relative humidity': 1,
  'absolute humidity': 2,
  'humidity above outdoors': 3,
  'dew point': 4,
  window: 5,
  presence: 6,
  hour: 7,
} as const;
/** The number of the home's first species; one less stands for a species that it does not carry. */
const SPECIES = 100;
