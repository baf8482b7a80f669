import { describe, expect, test } from 'vitest';
import { scaleElectricityPrice } from '../../../src/scenario/edits/scale-electricity-price.ts';
import { prepareVariant, variantScenario } from '../../../src/studies/plan-variant.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

const FILES = new Map([
  ['p.csv', 'time,price\n2023-01-01T00:00Z,0.1\n2023-01-01T00:30Z,0.3\n2023-01-01T01:00Z,0.2\n'],
]);

/** Settings for electricity so many times as dear, and the tariff before and after them. */
function dearer(electricity: string | null, times: number) {
  const money = electricity === null ? '' : `money: { electricity: ${electricity} }`;
  const scenario = readOnce(homeWith(money), 'h.yaml');
  const prepared = (set: readonly string[]) =>
    prepareVariant(scenario, FILES, { plan: 'as-lived', set });
  const raw = variantScenario(scenario, { plan: 'as-lived', set: [] });
  const set = scaleElectricityPrice(raw, prepared([]), times);
  const fuel = (words: readonly string[]) => prepared(words).prices.fuels.electricity!;
  return { set, before: fuel([]), after: fuel(set ?? []) };
}

describe('electricity so many times as dear', () => {
  test('a price alone', () => {
    const { set, before, after } = dearer('0.25', 2);
    expect(set).toEqual(['/money/electricity=0.5']);
    expect(after).toEqual({ ...before, tariff: { by: 'flat', price: 0.5 } });
  });

  test('a price beside a standing charge, which stays', () => {
    const { set, before, after } = dearer('{ price: 0.25, standing: 0.4 }', 0.25);
    expect(set).toEqual(['/money/electricity/price=0.0625']);
    expect([before.standing, after.standing]).toEqual([0.4, 0.4]);
    expect(after.tariff).toEqual({ by: 'flat', price: 0.0625 });
  });

  test('day and night, at the hours they have', () => {
    const tariff = '{ day: 0.25, night: 0.125, night hours: ["00:30-05:30"], standing: 0.5 }';
    const { set, before, after } = dearer(tariff, 4);
    expect(set).toEqual(['/money/electricity/day=1', '/money/electricity/night=0.5']);
    if (before.tariff.by !== 'blocks' || after.tariff.by !== 'blocks') throw new Error('flat');
    expect(after.tariff.price).toBe(4 * before.tariff.price);
    const night = before.tariff.blocks.map((block) => ({ ...block, price: 0.5 }));
    expect(after.tariff.blocks).toEqual(night);
  });

  test('blocks, at the hours they have', () => {
    const block = '{ price: 0.125, days: weekends, from: "01:00", to: "05:00" }';
    const { set, before, after } = dearer(`{ price: 0.25, blocks: [${block}] }`, 4);
    expect(set).toEqual(['/money/electricity/price=1', '/money/electricity/blocks/0/price=0.5']);
    if (before.tariff.by !== 'blocks' || after.tariff.by !== 'blocks') throw new Error('flat');
    expect(after.tariff).toEqual({
      ...before.tariff,
      price: 1,
      blocks: [{ ...before.tariff.blocks[0]!, price: 0.5 }],
    });
  });

  test.each([null, '{ standing: 0.4 }'])('the price that was filled in for %s', (electricity) => {
    const { set, before, after } = dearer(electricity, 2);
    if (before.tariff.by !== 'flat') throw new Error('not flat');
    expect(set).toEqual([`/money/electricity/price=${2 * before.tariff.price}`]);
    expect(after).toEqual({ ...before, tariff: { by: 'flat', price: 2 * before.tariff.price } });
  });

  test('prices in a file are out of reach of settings', () => {
    expect(dearer('{ prices: p.csv }', 2).set).toBeNull();
  });

  test('once as dear is as it is', () => {
    const { before, after } = dearer('{ day: 0.31, night: 0.11, night hours: ["01:00-06:00"] }', 1);
    expect(after).toEqual(before);
  });
});
