import { type Preset, preset } from '../units/preset.ts';

/** A filter in the supply air of ventilation, by its class of ISO 16890. */
export interface SupplyFilter {
  readonly group: FilterGroup;
  /** Efficiency of the class, for the particles that its group is named after [-]; 0 for coarse ones and none. */
  readonly efficiency: number;
}

/** Groups of ISO 16890: up to 1, 2.5 and 10 µm, half or more of which they hold, and what holds less. */
export type FilterGroup = 'none' | 'coarse' | 'ePM1' | 'ePM2.5' | 'ePM10';

/** What a filter holds of a species [-], by its class, with the range of filters of that class. */
export type HeldBy = (filter: SupplyFilter) => Preset;

/** What nothing holds, or what is not told of a filter. */
export const HOLDS_NONE: Preset = preset(0, 0, 0, 'no filter');

/**
 * A class as people write it: "ePM1 50 %", "ISO ePM2,5 65%", "coarse", "ISO Coarse 60 %" or "none".
 * The arrestance of a coarse filter, which is that of a test dust, counts for nothing.
 *
 * @returns null for any other text, and for less than the 50 % that a group takes
 */
export function supplyFilterOf(text: string): SupplyFilter | null {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/^iso\s+/, '');
  if (plain === 'none') return { group: 'none', efficiency: 0 };
  if (/^coarse(\s+\d{1,3}\s*%)?$/.test(plain)) return { group: 'coarse', efficiency: 0 };
  const [, size, percent] = /^epm\s?(1|2[.,]5|10)\s+(\d{2,3})\s*%$/.exec(plain) ?? [];
  const group = GROUPS[size?.replace(',', '.') ?? ''];
  const efficiency = Number(percent) / 100;
  if (group === undefined || !(efficiency >= 0.5 && efficiency <= 1)) return null;
  return { group, efficiency };
}

const GROUPS: Readonly<Record<string, FilterGroup>> = { 1: 'ePM1', 2.5: 'ePM2.5', 10: 'ePM10' };
