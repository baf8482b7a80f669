import { COMMON, type Preset } from '../../units/preset.ts';
import type { WHO } from '../model/household.ts';

/** What one grown body gives: sensible heat [W], water [g/h], CO2 [m3/h], vapours [µg/h]. */
interface BodyPreset {
  readonly heat: Preset;
  readonly water: Preset;
  readonly co2: Preset;
  readonly tvoc: Preset;
}

const WATER_SOURCE =
  'solar housing handbook: 40 to 60 g/h at rest, 60 to 120 active; NZ roofing code: 50 asleep';
const CO2_SOURCE = 'EN 16798-1 (from memory): 20 L/h awake, 13.6 asleep';

const TVOC: Preset = {
  value: 743,
  low: 280,
  high: 1200,
  source: 'whole body of 14 people, 743 µg/h, standard deviation 465 (He and others 2019)',
};

export const AWAKE: BodyPreset = {
  heat: { value: 75, low: 60, high: 90, source: COMMON },
  water: { value: 70, low: 50, high: 120, source: WATER_SOURCE },
  co2: { value: 0.02, low: 0.015, high: 0.025, source: CO2_SOURCE },
  tvoc: TVOC,
};

export const ASLEEP: BodyPreset = {
  heat: { value: 55, low: 45, high: 70, source: COMMON },
  water: { value: 45, low: 30, high: 60, source: WATER_SOURCE },
  co2: { value: 0.0136, low: 0.011, high: 0.016, source: CO2_SOURCE },
  tvoc: TVOC,
};

/** Share of a grown body. Common practice, by surface of the skin. [-] */
export const BODY_SHARE: Readonly<Record<(typeof WHO)[number], number>> = {
  adult: 1,
  'frail adult': 0.85,
  child: 0.65,
  infant: 0.3,
};
