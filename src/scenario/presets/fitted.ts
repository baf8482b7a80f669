import { type Preset, preset } from '../../units/preset.ts';

const OWN = 'own judgement, before the log is looked at';

/** Water of people and activities over what is assumed for people like these. [-] */
export const MOISTURE_FACTOR: Preset = preset(1, 0.4, 2.5, OWN);
/** Water that a room gets at all hours. [g/h] */
export const STEADY_MOISTURE: Preset = preset(8, 0.8, 80, OWN);
/** Share of windows that stands open on average at 20 °C outdoors. [-] */
export const OPEN_WHEN_MILD: Preset = preset(0.01, 0.001, 0.1, OWN);
/** Heat that a room gets at all hours. [W] */
export const STEADY_HEAT: Preset = preset(30, 3, 300, OWN);
/** What a thermostat reads too much. [K] */
export const THERMOSTAT_BIAS: Preset = preset(0, -2, 2, OWN);
/** All assumed U-values, and all assumed heat capacities, at one time over what is assumed. [-] */
export const LOSS_FACTOR: Preset = preset(1, 0.6, 1.6, OWN);
export const CAPACITY_FACTOR: Preset = preset(1, 0.4, 2.5, OWN);
