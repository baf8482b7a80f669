import { COMMON, type Preset } from '../../units/preset.ts';

const preset = (value: number, low: number, high: number, source: string = COMMON): Preset => ({
  value,
  low,
  high,
  source,
});

/** [min], [min], [-], [-] */
export const PRESENCE = {
  'hold on': preset(10, 2, 30),
  delay: preset(0, 0, 2),
  'misses awake': preset(0.02, 0, 0.2),
  'misses asleep': preset(0.5, 0, 0.95, `${COMMON}: who sleeps hardly moves`),
} as const;

/** How consumer sensors err: bias, noise and step [unit of the reading], lag and interval [min]. */
export interface SensorPreset {
  readonly bias: Preset;
  readonly noise: Preset;
  readonly step: Preset;
  readonly lag: Preset;
  readonly every: Preset;
}

const HYGROMETERS =
  'six of seven cheap sensors met ISO 7726 (Salamone 2022), others were out by up to 20 %';

export const SENSORS: Readonly<
  Record<'temperature' | 'humidity' | 'co2' | 'tvoc' | 'pm25', SensorPreset>
> = {
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
  co2: {
    bias: preset(0, -50, 50),
    noise: preset(15, 5, 40),
    step: preset(1, 1, 10),
    lag: preset(3, 1, 10),
    every: preset(5, 1, 15),
  },
  tvoc: {
    bias: preset(0, -300, 300, `${COMMON}: cheap ones tell more from less, hardly how much`),
    noise: preset(30, 10, 100),
    step: preset(1, 1, 50),
    lag: preset(3, 1, 10),
    every: preset(5, 1, 15),
  },
  pm25: {
    bias: preset(0, -5, 5),
    noise: preset(1, 0.5, 3),
    step: preset(1, 0.1, 1),
    lag: preset(1, 0, 5),
    every: preset(5, 1, 15),
  },
};

/** At 20 °C and 50 %: absolute humidity [g/m3] by 1 % and by 1 K; dew point [K] likewise. Closed form. */
export const DERIVED = {
  absolute: { perHumidity: 0.173, perKelvin: 0.52, step: 0.1 },
  dewPoint: { perHumidity: 0.3, perKelvin: 0.93, step: 0.1 },
} as const;
