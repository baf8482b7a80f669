import { byName } from '../species/species-lists.ts';
import { SPECIES } from '../species/species-table.ts';

/** The range of a quantity that counts as fine in a room, with its reason. */
export interface Band {
  /** Lower edge, -Infinity for none. */
  readonly low: number;
  /** Upper edge, Infinity for none. */
  readonly high: number;
  /** Who says so: a source, or "common practice". */
  readonly reason: string;
  /** What the upper edge of a temperature is instead in mild weather; always the same where absent. */
  readonly mild?: MildEdge;
}

/** An upper edge for days on which nobody heats; which days those are is the same in all rooms of a home. */
export interface MildEdge {
  /** [°C] */
  readonly high: number;
  /** Outdoor mean of the last `hours` from which it holds. [°C] */
  readonly from: number;
  /** [h] */
  readonly hours: number;
}

/** Bands of one room. Temperatures are operative. */
export interface RoomBands {
  /** [°C] */
  readonly temperature: Band;
  /** [%] */
  readonly humidity: Band;
  /** Bands by species name, in the species' unit; `hours` is the averaging time, 0 for none. */
  readonly species: Readonly<Record<string, Band & { readonly hours: number }>>;
}

/** What a room is for, as far as bands care. */
export type BandUse =
  | 'living'
  | 'kitchen'
  | 'dining'
  | 'bedroom'
  | 'bathroom'
  | 'hall'
  | 'study'
  | 'utility'
  | 'storage';

/**
 * The bands of a room for which nobody set any.
 *
 * @param use  what the room is for
 * @param infant  where an infant sleeps, the outdoor mean from which homes are not heated [°C]: below
 * it the guide of 16 to 20 °C comes before the use; null where none does
 */
export function defaultBands(use: BandUse, infant: number | null): RoomBands {
  const guided = { ...INFANT, mild: { ...INFANT_IN_MILD_WEATHER, from: infant ?? 0 } };
  const temperature = infant !== null ? guided : PASSED_THROUGH.has(use) ? LITTLE_USED : LIVED_IN;
  const humidity = use === 'storage' ? STORED : HUMIDITY;
  return {
    temperature,
    humidity,
    species: byName(SPECIES, ({ band: { high, hours, reason } }) => ({
      low: NONE,
      high,
      hours,
      reason,
    })),
  };
}

const LIVED_IN: Band = {
  low: 18,
  high: 26,
  reason:
    'WHO Housing and Health Guidelines 2018: 18 °C or more; EN 16798-1 (from memory): up to 26 °C',
};
const INFANT: Band = {
  low: 16,
  high: 20,
  reason:
    'UK charities and NHS for rooms where an infant sleeps: a guide only, advice differs; while it is mild ' +
    'outdoors, so that nobody heats, up to 26 °C, as cool rooms of people at risk from heat (Heatwave Plan for England, action card for care homes)',
};
/** Hours as those over which the heating season takes its mean. */
const INFANT_IN_MILD_WEATHER = { high: 26, hours: 72 };
const LITTLE_USED: Band = {
  low: 16,
  high: 26,
  reason: 'German environment agency: 16 °C or more in rooms little used; EN 16798-1: up to 26 °C',
};
const HUMIDITY: Band = {
  low: 40,
  high: 60,
  reason: 'Sterling, Arundel and Sterling, ASHRAE Transactions 91(1), 1985; common practice',
};
const STORED: Band = { low: 0, high: 70, reason: 'common practice for stores' };
const NONE = Number.NEGATIVE_INFINITY;
const PASSED_THROUGH: ReadonlySet<BandUse> = new Set(['hall', 'utility', 'storage']);
