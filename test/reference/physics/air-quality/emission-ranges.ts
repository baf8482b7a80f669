/**
 * What everyday sources give to the air of a room: a usual figure between a low and a high one, and
 * who says so. Sources differ by a factor of ten within one kind; the ranges say it.
 */
export interface EmissionRange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Who says so, or "common practice". */
  readonly source: string;
}

const LIST = 'mg/min in a list of 19 activities (Indoor Air 2023, article 8857446)';

/** Fine particles while it goes on. [µg/s] */
export const PARTICLE_RATES = {
  candle: { value: 2.5, low: 0.67, high: 15, source: `candles of 0.04, 0.15 and 0.91 ${LIST}` },
  toasting: { value: 1.8, low: 0.6, high: 5.5, source: `0.11 ${LIST}; a factor of three each way` },
  cooking: { value: 4, low: 1.8, high: 22, source: `0.11 electric, 0.24 gas, 1.33 burnt ${LIST}` },
  frying: { value: 18, low: 7.2, high: 45, source: `0.43 to 2.68 ${LIST}` },
  grilling: { value: 22, low: 10, high: 46, source: `0.62 to 2.78 ${LIST}` },
} as const satisfies Readonly<Record<string, EmissionRange>>;

/** Volatile organic compounds, all together, while it goes on. [µg/s] */
export const VAPOUR_RATES = {
  person: {
    value: 0.21,
    low: 0.08,
    high: 0.34,
    source: 'whole body of 14 people, 743 µg/h, standard deviation 465 (He and others 2019)',
  },
  cooking: {
    value: 40,
    low: 8,
    high: 130,
    source:
      'common practice: up to what frying gives at least, a third of it as a mean over a meal',
  },
  frying: {
    value: 170,
    low: 130,
    high: 240,
    source: '8 to 14 mg/min by oil, alcohols included (Environ. Sci.: Processes Impacts 2025)',
  },
  'air freshener': {
    value: 1,
    low: 0.4,
    high: 2.1,
    source: '35 to 180 mg/d over three days (Singer and others 2006)',
  },
  candle: {
    value: 0.2,
    low: 0.02,
    high: 1,
    source: 'common practice: plain ones at the low end, scented ones at the high; no figure found',
  },
} as const satisfies Readonly<Record<string, EmissionRange>>;

/** Volatile organic compounds of one event. [µg] */
export const VAPOUR_EVENTS = {
  cleaning: {
    value: 100e3,
    low: 10e3,
    high: 380e3,
    source:
      'worked back from an hour of 300 to 6000 µg/m3 in 50 m3 at 0.5 1/h after undiluted cleaners; ' +
      'a tenth when diluted (Singer and others 2006)',
  },
  'stove refuelling': {
    value: 3e3,
    low: 0.5e3,
    high: 20e3,
    source: 'common practice: twice the mass of particles, as of wood smoke outdoors',
  },
} as const satisfies Readonly<Record<string, EmissionRange>>;

/** Fine particles of one event. [µg] */
export const PARTICLE_EVENTS = {
  'stove refuelling': {
    value: 1.5e3,
    low: 0.3e3,
    high: 10e3,
    source:
      'worked back from 12.2 µg/m3 on days with a fire beside 4.1 without, 27 in the hour of the peak ' +
      '(20 stoves, Chakraborty and others 2020): 40 m3, 1 1/h, five refuellings; leaky stoves more',
  },
} as const satisfies Readonly<Record<string, EmissionRange>>;

/** Fresh wall paint; see decayingSource. */
export const PAINT = {
  /** Given off in the end by two coats. [µg a m2 of wall] */
  amount: {
    value: 0.2e6,
    low: 0.02e6,
    high: 6e6,
    source:
      'common practice: 0.2 L/m2 of paint with 0.1 to 30 g/L, the EU limit for matt wall paint ' +
      '(directive 2004/42/EC, from memory)',
  },
  /** Share that goes while the paint dries. [-] */
  fastShare: { value: 0.5, low: 0.3, high: 0.8, source: 'common practice' },
  /** Time constants of the two parts. [s] */
  fast: {
    value: 1.2 * 86_400,
    low: 0.5 * 86_400,
    high: 3 * 86_400,
    source: 'gone in 3 to 4 days from steel (Sparks and others 1999)',
  },
  slow: {
    value: 70 * 86_400,
    low: 30 * 86_400,
    high: 120 * 86_400,
    source: 'over 200 days from plasterboard (Sparks and others 1999)',
  },
} as const satisfies Readonly<Record<string, EmissionRange>>;
