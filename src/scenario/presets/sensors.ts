import type { SensorErrors } from '../../species/sensor-errors.ts';
import { byName } from '../../species/species-lists.ts';
import { SPECIES, type SpeciesName } from '../../species/species-table.ts';
import { COMMON, preset } from '../../units/preset.ts';

/** Presence sensor: hold-on [min], delay [min], misses awake [-] and asleep [-]. */
export const PRESENCE = {
  'hold on': preset(10, 2, 30),
  delay: preset(0, 0, 2),
  'misses awake': preset(0.02, 0, 0.2),
  'misses asleep': preset(0.5, 0, 0.95, `${COMMON}: who sleeps hardly moves`),
} as const;

const HYGROMETERS =
  'six of seven cheap sensors met ISO 7726 (Salamone 2022), others were out by up to 20 %';

/** How consumer sensors err of everything that the program knows; see own-species.ts for what else a scenario names. */
export const SENSORS: Readonly<Partial<Record<Measured, SensorErrors>>> = {
  temperature: {
    bias: preset(0, -0.5, 0.5),
    noise: preset(0.05, 0, 0.2),
    step: preset(0.1, 0.01, 0.5),
    lag: preset(5, 1, 15),
    every: preset(5, 1, 15),
  },
  humidity: {
    bias: preset(0, -3, 3, HYGROMETERS),
    noise: preset(0.3, 0, 1),
    step: preset(1, 0.1, 1),
    lag: preset(5, 1, 15),
    every: preset(5, 1, 15),
  },
  ...byName(SPECIES, ({ sensor }) => sensor),
};

export type Measured = 'temperature' | 'humidity' | SpeciesName;

/** At 20 °C and 50 %: absolute humidity [g/m3] by 1 % and by 1 K; dew point [K] likewise. Closed form. */
export const DERIVED = {
  absolute: { perHumidity: 0.173, perKelvin: 0.52, step: 0.1 },
  dewPoint: { perHumidity: 0.3, perKelvin: 0.93, step: 0.1 },
} as const;
