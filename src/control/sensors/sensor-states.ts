import type { Home } from '../../home/home.ts';
import { MOST_DEVIATIONS } from '../../units/add-normal.ts';
import { stemOf, stemOfText } from '../../units/seeded-draw.ts';
import type { Condition } from '../automation.ts';
import { STREAM } from '../random-streams.ts';
import { type Edge, edgesOn } from './edges.ts';
import { kindOf } from './quantity-kinds.ts';

/** One sensor, and the conditions that go by it. */
export interface SensorState {
  /** What it measures, from `kindOf`, and in which room; -1 for outdoors, or for the whole home. */
  readonly kind: number;
  readonly room: number;
  /** What it measures as it truly is, and behind the sensor's lag. [unit of the quantity] */
  truth: number;
  behind: number;
  /**
   * What it last reported, but not rounded, and without noise where no noise could turn a condition.
   * [unit of the quantity]
   */
  reading: number;
  /** When its next report is due. [s UTC] */
  due: number;
  /** Least interval between two reports. [s] */
  readonly every: number;
  /** Share of the way to the truth that its lag lets it go in a step; 1 without a lag. [-] */
  readonly catchUp: number;
  readonly bias: number;
  /** Standard deviation of its noise, most that this can move a reading, and its random stream. */
  readonly noise: number;
  readonly doubt: number;
  readonly stream: number;
  /** Between these two readings all its conditions stay as they are. */
  calmFrom: number;
  calmTo: number;
  readonly edges: readonly Edge[];
}

/**
 * The sensor that each condition goes by. Conditions on one quantity of one room with one kind of
 * sensor share that sensor, and so its noise.
 *
 * @param dt  control step [s]
 */
export function createSensorStates(
  conditions: readonly Condition[],
  { species, rooms }: Pick<Home, 'species' | 'rooms'>,
  dt: number,
  seed: number,
): readonly SensorState[] {
  const kept: Condition[] = [];
  const states: SensorState[] = [];
  return conditions.map((condition) => {
    const known = kept.findIndex((other) => sameSensor(other, condition));
    if (known >= 0) return states[known]!;
    const twins = kept.filter((other) => samePlace(other, condition)).length;
    const { quantity, room, sensor } = condition;
    const state: SensorState = {
      kind: kindOf(quantity, species),
      room,
      truth: Number.NaN,
      behind: Number.NaN,
      reading: Number.NaN,
      due: Number.NEGATIVE_INFINITY,
      every: sensor.every,
      catchUp: -Math.expm1(-dt / sensor.lag),
      bias: sensor.bias,
      noise: sensor.noise,
      doubt: MOST_DEVIATIONS * sensor.noise,
      stream: streamOf(seed, quantity, rooms[room]?.name, twins),
      calmFrom: Number.POSITIVE_INFINITY,
      calmTo: Number.NEGATIVE_INFINITY,
      edges: edgesOn((other) => sameSensor(other, condition), conditions),
    };
    kept.push(condition);
    states.push(state);
    return state;
  });
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

/**
 * Random stream of a sensor, by what it measures and the name of its room; none for outdoors or the
 * whole home. Which other sensors and rooms there are changes nothing, so that plans share it.
 */
function streamOf(
  seed: number,
  quantity: Condition['quantity'],
  room: string | undefined,
  twins: number,
): number {
  const stem = stemOfText(stemOf(seed, STREAM.sensors), quantity);
  return stemOf(room === undefined ? stem : stemOfText(stem, room), twins);
}
