import type { Preset } from '../../units/preset.ts';
import { monthsOf, sixMonthsLater } from '../month-words.ts';
import type { What } from './activities.ts';
import type { Use } from './rooms.ts';

/** Opening windows as many households do, of all rooms of some uses; a room that is slept in is a bedroom too. */
export interface UsualHabit {
  readonly uses: readonly Use[];
  /** Months as bits, north of the equator. */
  readonly months: number;
  /** When it starts, local time. [min after midnight] */
  readonly at: number;
  /** [min] */
  readonly lasts: number;
  /** Share of the full opening. [-] */
  readonly openShare: number;
  /** Of a room that something cools only once its hours are over, and not at all where they go past midnight. */
  readonly afterCooling?: true;
}

/** What households do with their windows by the clock: bedrooms every morning of the colder months, and on summer nights. */
export const USUAL_AIRING: readonly UsualHabit[] = [
  {
    uses: ['bedroom'],
    months: monthsOf('Oct-Apr'),
    ...{ at: 7 * 60 + 15, lasts: 15, openShare: 0.3 },
  },
  {
    uses: ['bedroom'],
    months: monthsOf('Jun-Aug'),
    ...{ at: 21 * 60, lasts: 11 * 60, openShare: 0.1 },
    afterCooling: true,
  },
];

/**
 * Windows that whoever is at home and awake tilts while it is mild outdoors, whatever the month: for some
 * hours, and again, and shut sooner once it is cool.
 */
export const ON_MILD_DAYS: {
  readonly uses: readonly Use[];
  /** Outdoors [°C]: from where they are tilted, and under which they are shut. */
  readonly over: number;
  readonly shutUnder: number;
  /** Up to where they are tilted in rooms that something cools [°C]: own judgement, so that hours on it is no warmer out than in. */
  readonly underWhereCooled: number;
  /** [min] */
  readonly lasts: number;
  readonly openShare: number;
} = {
  uses: ['living', 'kitchen', 'dining', 'study', 'bedroom'],
  ...{ over: 15, shutUnder: 13, underWhereCooled: 20, lasts: 3 * 60, openShare: 0.1 },
};

/** Airing once somebody has used a bathroom that has a window. */
export const AFTER_WASHING: {
  readonly uses: readonly Use[];
  readonly after: readonly What[];
  readonly lasts: number;
  readonly openShare: number;
} = { uses: ['bathroom'], after: ['shower', 'bath'], lasts: 15, openShare: 0.5 };

/** Months of a habit where a home stands. */
export const monthsAt = ({ months }: UsualHabit, latitude: number): number =>
  latitude < 0 ? sixMonthsLater(months) : months;

export const USUAL_WORDS =
  'where people sleep on winter mornings and summer nights, tilted while it is mild, bathrooms after showers';
export const USUAL_WORDS_COOLED =
  'where people sleep on winter mornings, and on summer nights when nothing cools, tilted while it is mild, where something cools not on warm days, bathrooms after showers';

/** How far windows stand open in usual habits, over the shares above. [-] */
export const USUAL_SHARE: Preset = {
  value: 1,
  low: 0.3,
  high: 2,
  source:
    'own estimate: in well-insulated homes windows gave half of an exchange of 0.5 1/h (24 homes, 1982)',
};
