import type { Ledger } from '../../engine/ledger.ts';
import { ledgerSum } from '../ledger-sum.ts';

/**
 * The months that heat was wanted in: those that need at least a twentieth of the heat of the month
 * that needs most. Every month where none is heated.
 *
 * @returns rows of the ledger
 */
export function heatingSeason(ledger: Ledger): readonly number[] {
  const every = ledger.months.map((_, row) => row);
  const heat = every.map((row) => ledgerSum(ledger.energy.heating, [row], ledger));
  const most = Math.max(0, ...heat);
  return most > 0 ? every.filter((row) => heat[row]! >= LEAST_SHARE * most) : every;
}

const LEAST_SHARE = 0.05;
