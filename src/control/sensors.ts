import { normalFrom } from '../units/seeded-draw.ts';
import type { Condition, Quantity } from './automation.ts';
import { LUCK } from './luck.ts';
import type { Surroundings } from './surroundings.ts';
import { trueValue } from './true-value.ts';

/** Readings of everything that conditions ask for. */
export interface Sensors {
  /** For each condition, in the order given: which of the readings it goes by. */
  readonly of: readonly number[];
  /** As last reported. [unit of the quantity] */
  readonly readings: Float64Array;
  /** Once a step, before anything is decided. */
  readonly read: () => void;
}

/**
 * Conditions on one quantity of one room with one kind of sensor share that sensor, and so its noise.
 *
 * A reading is what is so behind a first-order lag, plus bias and noise, rounded; it changes when
 * the sensor reports. Noise depends on seed, sensor and time only. The lag starts out settled.
 */
export function createSensors(
  conditions: readonly Condition[],
  around: Surroundings,
  seed: number,
): Sensors {
  const kept: Condition[] = [];
  const of = conditions.map((condition) => {
    const known = kept.findIndex((other) => sameSensor(other, condition));
    return known < 0 ? kept.push(condition) - 1 : known;
  });
  const readings = new Float64Array(kept.length).fill(Number.NaN);
  const steps = kept.map((condition, k) => {
    const twins = kept.slice(0, k).filter((other) => samePlace(other, condition)).length;
    return createSensor(condition, readings, k, around, seed, luckOf(condition, twins));
  });
  const read = (): void => {
    for (let k = 0; k < steps.length; k++) steps[k]!();
  };
  return { of, readings, read };
}

function createSensor(
  { quantity, room, sensor }: Condition,
  readings: Float64Array,
  k: number,
  around: Surroundings,
  seed: number,
  luck: number,
): () => void {
  const { bias, noise, step, lag, every } = sensor;
  const { moment } = around;
  const look = trueValue(quantity, room, around);
  const catchUp = -Math.expm1(-around.dt / lag);
  let behind = Number.NaN;
  let due = Number.NEGATIVE_INFINITY;
  return () => {
    if (lag === 0 && moment.utc < due) return;
    const truth = look();
    behind = lag > 0 && Number.isFinite(behind) ? behind + catchUp * (truth - behind) : truth;
    if (moment.utc < due) return;
    due = moment.utc + every;
    let reading = behind + bias;
    if (noise > 0) reading += noise * normalFrom(seed, luck, moment.count);
    readings[k] = step > 0 ? Math.round(reading / step) * step : reading;
  };
}

function samePlace(a: Condition, b: Condition): boolean {
  return a.quantity === b.quantity && a.room === b.room;
}

function sameSensor(a: Condition, b: Condition): boolean {
  const [s, t] = [a.sensor, b.sensor];
  return (
    samePlace(a, b) &&
    s.bias === t.bias &&
    s.noise === t.noise &&
    s.step === t.step &&
    s.lag === t.lag &&
    s.every === t.every
  );
}

/** Stays the same when other sensors come and go, so that plans of one home share their luck. */
function luckOf({ quantity, room }: Condition, twins: number): number {
  const place = (QUANTITIES.indexOf(quantity) * MOST_ROOMS + room + 1) * MOST_TWINS + twins;
  return LUCK.sensors + 2 * place;
}

const QUANTITIES: readonly Quantity[] = [
  'temperature',
  'relative humidity',
  'absolute humidity',
  'humidity above outdoors',
  'dew point',
  'co2',
  'tvoc',
  'pm25',
  'window',
  'presence',
  'hour',
];
const MOST_ROOMS = 1000;
const MOST_TWINS = 100;
