import type { Home } from '../../home/home.ts';
import { normalFrom } from '../../units/normal-from.ts';
import { stemOf } from '../../units/seeded-draw.ts';
import type { Condition } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { STREAM } from '../random-streams.ts';
import { kindOf, trueValue } from './true-value.ts';

/** Readings of everything that conditions ask for. */
export interface Sensors {
  /** Number of the reading that each condition goes by, in the order given. */
  readonly of: readonly number[];
  /** Readings as last reported. [unit of the quantity] */
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
  context: ControlContext,
  seed: number,
): Sensors {
  const kept: Condition[] = [];
  const of = conditions.map((condition) => {
    const known = kept.findIndex((other) => sameSensor(other, condition));
    return known < 0 ? kept.push(condition) - 1 : known;
  });
  const { moment } = context;
  const readings = new Float64Array(kept.length).fill(Number.NaN);
  // What is so behind the lag, and when the next report is due. [s UTC]
  const behind = new Float64Array(kept.length).fill(Number.NaN);
  const due = new Float64Array(kept.length).fill(Number.NEGATIVE_INFINITY);
  const column = (value: (one: Condition, k: number) => number) => Float64Array.from(kept, value);
  const kind = Int32Array.from(kept, ({ quantity }) => kindOf(quantity, context.home));
  const room = Int32Array.from(kept, (one) => one.room);
  const bias = column(({ sensor }) => sensor.bias);
  const noise = column(({ sensor }) => sensor.noise);
  const step = column(({ sensor }) => sensor.step);
  const every = column(({ sensor }) => sensor.every);
  const catchUp = column(({ sensor }) => -Math.expm1(-context.dt / sensor.lag));
  const order = quantitiesInOrder(context.home.species);
  const streams = Int32Array.from(kept, (one, k) => {
    const twins = kept.slice(0, k).filter((other) => samePlace(other, one)).length;
    return stemOf(seed, streamOf(one, order, twins));
  });

  const look = (): void => {
    const { utc } = moment;
    for (let k = 0; k < readings.length; k++) {
      const lags = catchUp[k]! < 1;
      if (!lags && utc < due[k]!) continue;
      const truth = trueValue(kind[k]!, room[k]!, context);
      const last = behind[k]!;
      behind[k] = lags && Number.isFinite(last) ? last + catchUp[k]! * (truth - last) : truth;
    }
  };

  const report = (): void => {
    const { utc, count } = moment;
    for (let k = 0; k < readings.length; k++) {
      if (utc < due[k]!) continue;
      due[k] = utc + every[k]!;
      let reading = behind[k]! + bias[k]!;
      if (noise[k]! > 0) reading += noise[k]! * normalFrom(streams[k]!, count);
      readings[k] = step[k]! > 0 ? Math.round(reading / step[k]!) * step[k]! : reading;
    }
  };

  const read = (): void => {
    look();
    report();
  };
  return { of, readings, read };
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

/** Random stream of a sensor, independent of which other sensors there are, so that plans share it. */
function streamOf({ quantity, room }: Condition, order: readonly string[], twins: number): number {
  const place = (order.indexOf(quantity) * MOST_ROOMS + room + 1) * MOST_TWINS + twins;
  return STREAM.sensors + place;
}

/** Quantities in a fixed order, those read without an error last, because they draw no random numbers. */
const quantitiesInOrder = (species: Home['species']): readonly string[] => [
  ...['temperature', 'relative humidity', 'absolute humidity', 'humidity above outdoors'],
  'dew point',
  ...species.map(({ name }) => name),
  ...['window', 'presence', 'hour'],
];
const MOST_ROOMS = 1000;
const MOST_TWINS = 100;
