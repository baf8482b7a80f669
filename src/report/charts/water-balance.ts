import type { Ledger, WaterTerm } from '../../engine/ledger/ledger.ts';
import { WATER_WORDS } from '../ledger-words.ts';

/** Water of a home by where it came from or went; positive into the rooms' air. [kg] */
export type WaterBalance = readonly { readonly way: string; readonly kg: number }[];

/**
 * The ledger's water over the period, all rooms together; ways that moved nothing are left out. The
 * sum of all is 0. Doorways are, because what leaves one room through them enters another.
 */
export function waterBalance({ water, stored }: Ledger): WaterBalance {
  const ways = (Object.entries(water) as [WaterTerm, Float64Array][]).map(([term, values]) => ({
    way: WATER_WORDS[term],
    kg: sumOf(values),
  }));
  return [...ways, { way: 'kept indoors', kg: 0 - sumOf(stored.water) }].filter(
    ({ kg }) => Math.abs(kg) >= LEAST,
  );
}

const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);

const LEAST = 0.05; // kg
