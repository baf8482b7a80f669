import { COMMON, type Preset } from '../../units/preset.ts';
import type { WHO } from '../model/household.ts';

/** What one grown body gives: sensible heat [W], water [g/h]. */
interface BodyPreset {
  readonly heat: Preset;
  readonly water: Preset;
}

const WATER_SOURCE =
  'solar housing handbook: 40 to 60 g/h at rest, 60 to 120 active; NZ roofing code: 50 asleep';

export const AWAKE: BodyPreset = {
  heat: { value: 75, low: 60, high: 90, source: COMMON },
  water: { value: 70, low: 50, high: 120, source: WATER_SOURCE },
};

export const ASLEEP: BodyPreset = {
  heat: { value: 55, low: 45, high: 70, source: COMMON },
  water: { value: 45, low: 30, high: 60, source: WATER_SOURCE },
};

/** Share of a grown body. Common practice, by surface of the skin. [-] */
export const BODY_SHARE: Readonly<Record<(typeof WHO)[number], number>> = {
  adult: 1,
  'frail adult': 0.85,
  child: 0.65,
  infant: 0.3,
};
