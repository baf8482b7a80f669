import type { Preset } from '../units/preset.ts';

/** How consumer sensors err: bias, noise and step [unit of the reading], lag and interval [min]. */
export interface SensorErrors {
  readonly bias: Preset;
  readonly noise: Preset;
  readonly step: Preset;
  readonly lag: Preset;
  readonly every: Preset;
}
