import type { Condition } from '../automation.ts';
import { unroundedEdge } from './unrounded-edge.ts';

/** A condition as its sensor looks at it: "below" is "above" with both sides turned round. */
export interface Edge {
  /** Number of the condition. */
  readonly condition: number;
  /** 1 for above, -1 for below. */
  readonly way: number;
  /** Times `way`: the edge while the condition is not met, and the one while it is. */
  readonly value: number;
  readonly clear: number;
}

/** The edges of the conditions on one sensor; they are those of readings before rounding. */
export function edgesOn(
  isOnIt: (condition: Condition) => boolean,
  conditions: readonly Condition[],
): readonly Edge[] {
  return conditions.flatMap((one, condition) => {
    if (!isOnIt(one)) return [];
    const way = one.is === 'above' ? 1 : -1;
    const edge = (level: number): number => way * unroundedEdge(one.is, level, one.sensor.step);
    return [{ condition, way, value: edge(one.value), clear: edge(one.clear) }];
  });
}
