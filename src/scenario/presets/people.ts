import { breathBetween, breathOfAge, GROWN } from '../../species/breath-by-age.ts';
import { COMMON, type Preset } from '../../units/preset.ts';
import type { WHO } from '../choices.ts';

/**
 * What one grown body gives: sensible heat [W], water [g/h].
 *
 * Heat with that of the water comes to 122 W awake and 86 W asleep, 0.68 W for a g/h. Published for 1.8 m2
 * of skin: 108 W seated and quiet, 126 W standing, 72 W asleep (60, 70 and 40 W/m2, a table of
 * metabolic rates; that of ASHRAE Fundamentals, from memory).
 */
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

/** What a person breathes out over what a grown one does, by age where it is given. [-] */
export function breathShare(who: (typeof WHO)[number], age: number | undefined): number {
  const grown = breathBetween(GROWN.from, GROWN.below, 1);
  if (age !== undefined) return breathOfAge(age, 1) / grown;
  const [from, below] = USUAL_AGES[who];
  return breathBetween(from, below, 1) / grown;
}

/** From one age to another [years]; rows of the table of breath. */
const USUAL_AGES: Readonly<Record<(typeof WHO)[number], readonly [number, number]>> = {
  adult: [GROWN.from, GROWN.below],
  'frail adult': [70, 120],
  child: [6, 11],
  infant: [0, 1],
};
