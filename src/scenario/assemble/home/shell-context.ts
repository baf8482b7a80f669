import type { GroundElement } from '../../../home/ground.ts';
import type { Finding } from '../../unplaced-problem.ts';
import type { BuildFacts } from '../build-facts.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

/** What the shell of every room is drawn from, and where what is wrong with it is collected. */
export interface ShellContext {
  readonly facts: BuildFacts;
  readonly plans: readonly RoomPlan[];
  readonly ground: GroundElement;
  readonly defaults: Defaults;
  readonly findings: Finding[];
}
