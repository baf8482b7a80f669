import { describe, expect, test } from 'vitest';
import { turningPoints } from '../../../src/report/page/turning-points.ts';
import type { Flip } from '../../../src/studies/doubts/flip.ts';
import { readMarkup } from './read-markup.ts';

const GAS: Flip = {
  ...{ path: null, input: 'the price of gas', unit: 'GBP/kWh', today: 0.08, low: 0.02, high: 0.32 },
  ...{ value: 0.2, becomes: 'too little', likely: true, tried: true, relative: false },
  note: 'the kWh of the runs priced again',
};
const markupOf = (...flips: readonly Flip[]): string => {
  const { markup } = turningPoints(flips);
  readMarkup(markup);
  return markup;
};
const textOf = (...flips: readonly Flip[]): string =>
  markupOf(...flips)
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
/** Where a line holds and where it is lost, from 4 on the left by today at 180 to 356. */
const linesOf = (flip: Flip) =>
  ['holds', 'lost'].map(
    (name) => new RegExp(`class="${name}" d="M([^"]*)"`).exec(markupOf(flip))![1],
  );

describe('what would turn it round', () => {
  test('is told by its value, on which side, and what it becomes then', () => {
    expect(textOf(GAS)).toContain(
      'the price of gas above 0.2 GBP/kWh: too little 0.02 today 0.08 GBP/kWh 0.32',
    );
    const far = { ...GAS, value: 0.05, likely: false, becomes: null };
    expect(textOf(far)).toContain('the price of gas below 0.05 GBP/kWh (far off) 0.02 today');
    expect(textOf(GAS)).not.toContain('far off');
    expect(textOf(GAS)).not.toContain('Nowhere');
  });

  test('large sums in groups of digits', () => {
    const price = { input: 'the price of what is bought', unit: 'JPY', value: 350_000 };
    const markup = markupOf({ ...GAS, ...price, today: 27_000, low: 9000, high: 900_000 });
    for (const sum of ['350\u202f000', '27\u202f000', '900\u202f000']) {
      expect(markup).toContain(sum);
    }
    expect(markup).toContain('9000');
  });

  test('the line is whole where the answer holds: each half by its own scale', () => {
    // Half way from today's 0.08 to 0.32, and half way to 0.02.
    expect(linesOf({ ...GAS, value: 0.2 })).toEqual(['4 8H268.0', '268.0 8H356']);
    expect(linesOf({ ...GAS, value: 0.05 })).toEqual(['92.0 8H356', '4 8H92.0']);
  });

  test('what turns nothing is told with how far it was tried', () => {
    const water = { ...GAS, input: 'water', unit: 'L/day', value: null, becomes: null };
    const still = { ...water, input: 'all thermostats', tried: false };
    const text = textOf(GAS, water, still);
    expect(text).toContain('Nowhere, as far as was tried:');
    expect(text).toContain('water: 0.02 to 0.32 L/day, today 0.08');
    expect(text).toContain('all thermostats: not tried, today 0.08 L/day');
    expect(text.match(/the price of gas/g)).toHaveLength(2); // with how it was tried
    expect(textOf(water)).toMatch(/^No single thing turns it round One thing at a time/);
  });
});
