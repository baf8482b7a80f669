import type { FitGroup } from './channels-of.ts';
import type { Channel } from './simulate/channel.ts';
import type { StageFit } from './stage/fit-stage.ts';

export interface FittedStage {
  readonly group: FitGroup;
  readonly channels: readonly Channel[];
  readonly fit: StageFit;
}
