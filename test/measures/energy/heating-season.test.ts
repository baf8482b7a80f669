import { expect, test } from 'vitest';
import { heatingSeason } from '../../../src/measures/energy/heating-season.ts';
import { ledger } from '../hand-made.ts';

/** A ledger of months, the heat of each given by room. */
function heated(...months: readonly (readonly [number, number])[]) {
  const books = ledger(
    2,
    months.map((_, k) => k),
  );
  months.forEach((rooms, row) => {
    rooms.forEach((heat, i) => {
      books.energy.heating[row * 2 + i] = heat;
    });
  });
  return heatingSeason(books);
}

test('months that need a twentieth of the most or more, all rooms together', () => {
  expect(heated([600, 400], [20, 30], [20, 29], [0, 0], [49, 0], [0, 51])).toEqual([0, 1, 5]);
});

test('every month where none is heated', () => {
  expect(heated([0, 0], [0, 0])).toEqual([0, 1]);
});
