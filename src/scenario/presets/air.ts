import { COMMON, type Preset } from '../../units/preset.ts';

/** Outdoors where neither file nor person says. [ppm], [µg/m3], [µg/m3] */
export const OUTDOORS: Readonly<Record<'co2' | 'tvoc' | 'pm25', Preset>> = {
  co2: { value: 420, low: 400, high: 480, source: 'world mean of about 2023 (from memory)' },
  tvoc: { value: 20, low: 5, high: 100, source: `${COMMON}: a town without much traffic` },
  pm25: {
    value: 8,
    low: 4,
    high: 20,
    source: `${COMMON}: towns of north-western Europe; the WHO guideline for a year is 5`,
  },
};

/** Share that survives the way in through leaks. [-] */
export const PENETRATION: Readonly<Record<'tvoc' | 'pm25', Preset>> = {
  tvoc: { value: 1, low: 0.9, high: 1, source: COMMON },
  pm25: {
    value: 0.8,
    low: 0.6,
    high: 1,
    source: 'Handbook of Indoor Air Quality 2021: 0.78 ± 0.17 for 0.1 to 1 µm; PTEAM: 1',
  },
};

/** How fast surfaces take it out of the air. [1/h] */
export const DEPOSITION: Readonly<Record<'tvoc' | 'pm25', Preset>> = {
  tvoc: { value: 0, low: 0, high: 0.3, source: `${COMMON}: carpets give back what they take up` },
  pm25: {
    value: 0.3,
    low: 0.1,
    high: 0.5,
    source: 'PTEAM 0.39 1/h (from memory); 0.1 and up in a study of two houses',
  },
};

/** Fresh wall paint: all that two coats give off [g/m2], walls of a room over its floor area [-]. */
export const PAINT = {
  amount: {
    value: 0.2,
    low: 0.02,
    high: 6,
    source: `${COMMON}: 0.2 L/m2 of 0.1 to 30 g/L, the EU limit for matt wall paint (from memory)`,
  },
  walls: { value: 2.5, low: 1.5, high: 3.5, source: `${COMMON}: walls of a room over its floor` },
} as const satisfies Readonly<Record<string, Preset>>;

/**
 * Paint gives off half while it dries and half over months: share [-] and time constant [day] of each.
 * Sparks and others 1999: gone in 3 to 4 days from steel, over 200 from plasterboard.
 */
export const PAINT_PARTS = [
  { share: 0.5, days: 1.2 },
  { share: 0.5, days: 70 },
] as const;
