import { COMMON, type Preset } from '../../units/preset.ts';
import { monthsOf, sixMonthsLater } from '../month-words.ts';

/** When homes of a country are heated: months as bits, and the limit of the outdoor mean. [°C] */
export interface UsualSeason {
  readonly months: number;
  readonly meanBelow: Preset;
}

export type SeasonSource = 'boiler' | 'direct electric' | 'heat pump' | 'district heat';

/**
 * The season that is usual where a home stands. Never in summer: south of the equator months are half
 * a year later.
 *
 * @param zone  IANA name of its time zone, from which its country follows
 */
export function usualSeason(
  zone: string | undefined,
  latitude: number,
  source: SeasonSource,
): UsualSeason {
  const { months, meanBelow } =
    COUNTRIES.find(({ zones }) => zones.includes(zone ?? '')) ?? ELSEWHERE;
  const { shift, why } = BY_SOURCE[source];
  const { value, low, high } = meanBelow;
  return {
    months: latitude < 0 ? sixMonthsLater(months) : months,
    meanBelow: {
      value: value + shift,
      low: low + shift,
      high: high + shift,
      source: shift === 0 ? meanBelow.source : `${meanBelow.source}; ${why}`,
    },
  };
}

/** Days that the outdoor mean is taken over. [d] */
export const SEASON_DAYS: Preset = { value: 3, low: 1, high: 7, source: COMMON };

/** How far a room is under its programme before who is awake in it is cold. [K] */
export const COLD_BY: Preset = {
  value: 2,
  low: 1,
  high: 4,
  source:
    'own judgement: classes of comfort in homes are 1 to 2 K apart (EN 16798-1:2019, from memory); households heat for some days in cold spells of early autumn before they begin for good (gas use, Britain, September 2013)',
};

/** How much of a day somebody is cold before the heating is switched on; own judgement. [s] */
export const COLD_FOR = 3600;

const limit = (value: number, low: number, high: number, source: string): Preset => ({
  value,
  low,
  high,
  source,
});

/** Kelvins by which heating begins earlier than a boiler's. */
const BY_SOURCE: Readonly<Record<SeasonSource, { readonly shift: number; readonly why: string }>> =
  {
    boiler: { shift: 0, why: '' },
    'district heat': { shift: 0, why: '' },
    'heat pump': {
      shift: 1,
      why: '1 K more for a heat pump, which is left to its controls (common practice)',
    },
    'direct electric': {
      shift: -1,
      why: '1 K less for electric heaters, which people switch on late (common practice)',
    },
  };

interface Country {
  readonly zones: readonly string[];
  readonly months: number;
  readonly meanBelow: Preset;
}

/** Whether a home in a time zone stands in Britain or Ireland. */
export const isBritishOrIrish = (zone: string): boolean => BRITISH_AND_IRISH.includes(zone);

const BRITISH_AND_IRISH: readonly string[] = [
  ...['Europe/London', 'Europe/Belfast', 'Europe/Dublin', 'Europe/Isle_of_Man'],
  ...['Europe/Jersey', 'Europe/Guernsey', 'GB', 'Eire', 'GB-Eire'],
];

const COUNTRIES: readonly Country[] = [
  {
    zones: BRITISH_AND_IRISH,
    months: monthsOf('Sep-May'),
    meanBelow: limit(
      12,
      10,
      15.5,
      'common practice: English households say they heat for 5 to 6 months (survey of 2011, from memory), temperatures of 750 homes show mid-October to April (Franks 2023), the assessment (SAP 10.2) takes 8; degree-days have base 15.5 °C',
    ),
  },
  {
    zones: ['Europe/Berlin', 'Europe/Busingen'],
    months: monthsOf('Sep-May'),
    meanBelow: limit(
      15,
      12,
      17,
      'heating limit of German degree-days (Destatis); well insulated homes need none above 12 °C',
    ),
  },
  {
    zones: ['Europe/Vienna', 'Europe/Zurich', 'Europe/Vaduz'],
    months: monthsOf('Sep-May'),
    meanBelow: limit(12, 10, 15, 'heating limit of degree-days 20/12 (Austria, Switzerland)'),
  },
  {
    zones: [
      ...['Europe/Stockholm', 'Europe/Helsinki', 'Europe/Mariehamn', 'Europe/Oslo'],
      ...['Europe/Copenhagen', 'Europe/Tallinn', 'Europe/Riga', 'Europe/Vilnius'],
    ],
    months: monthsOf('Sep-May'),
    meanBelow: limit(
      12,
      10,
      17,
      'northern degree-days leave out spring and autumn days above 10 to 13 °C, base 17 °C (from memory)',
    ),
  },
  {
    zones: ['Europe/Rome', 'Europe/San_Marino', 'Europe/Vatican'],
    months: monthsOf('Oct-Apr'),
    meanBelow: limit(
      15,
      12,
      18,
      'common practice; Italian law heats from mid-October to mid-April in the north, for less in the south (from memory)',
    ),
  },
  {
    zones: [
      ...['America/New_York', 'America/Detroit', 'America/Chicago', 'America/Denver'],
      ...['America/Boise', 'America/Phoenix', 'America/Los_Angeles', 'America/Anchorage'],
      ...['America/Halifax', 'America/Toronto', 'America/Winnipeg', 'America/Regina'],
      ...['America/Edmonton', 'America/Vancouver', 'America/St_Johns'],
    ],
    months: monthsOf('Sep-May'),
    meanBelow: limit(15, 12, 18.3, 'common practice; degree-days have base 65 °F (18.3 °C)'),
  },
];

const ELSEWHERE: Country = {
  zones: [],
  months: monthsOf('Sep-May'),
  meanBelow: limit(15, 12, 18, 'days that count in the heating degree-days of Eurostat'),
};
