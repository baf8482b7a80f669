import type { FitGroup } from './channels-of.ts';
import type { Channel } from './simulate/channel.ts';
import type { StageFit } from './stage/fit-stage.ts';

/** One stage of a fit: water or heat, what was compared in it, and what came of it. */
export interface FittedStage {
  readonly group: FitGroup;
  readonly channels: readonly Channel[];
  readonly fit: StageFit;
}
