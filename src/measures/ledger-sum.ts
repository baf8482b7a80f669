import type { Ledger } from '../engine/ledger/ledger.ts';

/** Sum of a ledger's array over some of its months and all rooms, or one. */
export function ledgerSum(
  values: Float64Array,
  rows: readonly number[],
  { rooms }: Pick<Ledger, 'rooms'>,
  room?: number,
): number {
  let sum = 0;
  for (const row of rows) {
    if (room !== undefined) sum += values[row * rooms + room]!;
    else for (let i = 0; i < rooms; i++) sum += values[row * rooms + i]!;
  }
  return sum;
}
