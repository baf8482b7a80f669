import type { Ledger } from '../../engine/ledger/ledger.ts';
import { figureText } from '../../units/figure-text.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import { ENERGY_WORDS, WATER_WORDS } from '../ledger-words.ts';
import { type Column, textTable } from './text-table.ts';

/**
 * Where the heat of the run went: paths down, rooms and the whole home across. [kWh]
 *
 * The last line is what walls and air hold more at the end than at the start; it is the sum of the
 * lines above it.
 */
export function energyLedgerTable(ledger: Ledger, rooms: readonly string[], width: number): string {
  return ledgerTable(
    ledger.energy,
    ENERGY_WORDS,
    ledger.stored.energy,
    1 / JOULES_PER_KWH,
    rooms,
    width,
  );
}

/** Where the vapour of the run went: paths down, rooms and home across; stored in air, furnishings, films. [kg] */
export function waterLedgerTable(ledger: Ledger, rooms: readonly string[], width: number): string {
  return ledgerTable(ledger.water, WATER_WORDS, ledger.stored.water, 1, rooms, width);
}

function ledgerTable<Term extends string>(
  booked: Readonly<Record<Term, Float64Array>>,
  words: Readonly<Record<Term, string>>,
  stored: Float64Array,
  factor: number,
  rooms: readonly string[],
  width: number,
): string {
  const terms = Object.keys(words) as Term[];
  const rows: Row[] = terms.map((term) => ({
    label: words[term],
    values: sumRooms(booked[term], rooms.length, factor),
  }));
  rows.push({ label: 'stored', values: sumRooms(stored, rooms.length, factor) });
  const told = rows.filter(({ values }) => values.some((value) => value !== 0));
  const columns: Column[] = rooms.map((room, i) => ({
    head: room,
    cells: told.map(({ values }) => figureText(values[i], 0)),
  }));
  const home: Column = {
    head: 'home',
    cells: told.map(({ values }) =>
      figureText(
        values.reduce((sum, v) => sum + v, 0),
        0,
      ),
    ),
  };
  const labels: Column = { head: '', cells: told.map(({ label }) => label), align: 'left' };
  return told.length === 0 ? '' : textTable([labels, home, ...columns], width);
}

interface Row {
  readonly label: string;
  /** One per room. */
  readonly values: readonly number[];
}

/** Month by month and room by room to room by room. */
function sumRooms(values: Float64Array, rooms: number, factor: number): number[] {
  const sums = Array<number>(rooms).fill(0);
  values.forEach((value, at) => {
    sums[at % rooms]! += value * factor;
  });
  return sums;
}
