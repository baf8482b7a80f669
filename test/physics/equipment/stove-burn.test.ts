import { describe, expect, test } from 'vitest';
import { stoveHeatOver, woodRate } from '../../../src/physics/equipment/stove-burn.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { stoveHeat } from '../../reference/physics/equipment/stove-heat.ts';
import { woodEnergy } from '../../reference/physics/equipment/wood-energy.ts';

const NAN = Number.NaN;
const TOPIC = 'Wood stoves';
const [BATCH, ENERGY, EFFICIENCY, INTERVAL] = [1.5, 15e6, 0.75, 2700] as const;
const at = (since: number): number => stoveHeat(BATCH, ENERGY, EFFICIENCY, INTERVAL, since);
const over = (from: number, to: number): number =>
  stoveHeatOver(BATCH, ENERGY, EFFICIENCY, INTERVAL, from, to);

describe('stoveHeatOver', () => {
  test('a batch gives its energy times the efficiency', () => {
    compare({
      topic: TOPIC,
      what: 'heat of 1.5 kg of wood of 15 MJ/kg at 75 %',
      unit: 'kWh',
      source: 'first law',
      mark: 'closed form',
      expected: (1.5 * 15 * 0.75) / 3.6,
      got: (over(0, INTERVAL) * INTERVAL) / 3.6e6,
      tolerance: { relative: 1e-12 },
      because: 'an identity',
    });
  });

  test.each([60, 100, 600, 1800, 5000])('in steps of %s s it adds up to the same', (step) => {
    let sum = 0;
    for (let t = 0; t < 2 * INTERVAL; t += step) sum += over(t, t + step) * step;
    expect(sum / (BATCH * ENERGY * EFFICIENCY)).toBeCloseTo(1, 12);
  });

  test('the mean over a moment is the heat at that moment', () => {
    for (const t of [100, 900, 1500, 2600]) expect(over(t - 0.5, t + 0.5)).toBeCloseTo(at(t), 1);
  });

  test('rises to one peak a third of the way and falls to embers', () => {
    const mean = over(0, INTERVAL);
    const minute = (t: number): number => over(t, t + 60);
    for (let t = 60; t < 900; t += 60) expect(minute(t)).toBeGreaterThan(minute(t - 60));
    for (let t = 960; t < INTERVAL; t += 60) expect(minute(t)).toBeLessThan(minute(t - 60));
    expect(over(899, 901) / mean).toBeCloseTo(1.544, 3);
    expect(over(INTERVAL - 1e-3, INTERVAL) / mean).toBeCloseTo(0.3, 6);
  });

  test('nothing burns before the first log or after the last', () => {
    expect(over(-600, 0)).toBe(0);
    expect(over(INTERVAL, INTERVAL + 600)).toBe(0);
    expect(over(-600, 600)).toBeCloseTo(over(0, 600) / 2, 9);
  });

  test('half way through, 11/16 of what flames give is gone', () => {
    compare({
      topic: TOPIC,
      what: 'share of a batch burnt half way through its interval',
      unit: '-',
      source: 'beta distribution with parameters 2 and 3, and embers throughout',
      mark: 'closed form',
      expected: 0.3 * 0.5 + (0.7 * 11) / 16,
      got: woodRate(1, INTERVAL, 0, INTERVAL / 2) * (INTERVAL / 2),
      tolerance: { relative: 1e-12 },
      because: 'an identity',
    });
  });

  test('the wood burnt is the heat over energy and efficiency', () => {
    const wood = woodRate(BATCH, INTERVAL, 300, 900);
    expect(wood * ENERGY * EFFICIENCY).toBeCloseTo(over(300, 900), 8);
  });

  test.each([
    ['no wood', () => stoveHeatOver(NAN, ENERGY, 0.7, 3600, 0, 60)],
    ['energy in kWh', () => stoveHeatOver(1, -4.2, 0.7, 3600, 0, 60)],
    ['efficiency in percent', () => stoveHeatOver(1, ENERGY, 70, 3600, 0, 60)],
    ['no interval', () => stoveHeatOver(1, ENERGY, 0.7, 0, 0, 60)],
    ['no beginning', () => stoveHeatOver(1, ENERGY, 0.7, 3600, NAN, 60)],
    ['no end', () => stoveHeatOver(1, ENERGY, 0.7, 3600, 0, NAN)],
    ['negative wood', () => woodRate(-1, 3600, 0, 60)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));

  test('refuses a while that ends before it begins, in words', () => {
    expect(() => over(600, 600)).toThrow(
      'stove: a while must end after it begins, got 600 to 600 s',
    );
  });
});

describe('woodEnergy', () => {
  // Oak to pine; the row of 15 % birch to spruce, from another manual.
  test.each([
    [0.1, 4.5, 4.75],
    [0.15, 4.01, 4.49],
    [0.2, 3.92, 4.14],
    [0.3, 3.33, 3.53],
    [0.5, 2.19, 2.33],
  ])('logs with %s of water', (moisture, low, high) => {
    compareBand({
      topic: TOPIC,
      what: `energy in firewood with ${100 * moisture} % of water`,
      unit: 'kWh/kg',
      source:
        'tables of net calorific value by wood and water in manuals of wood boilers (Technologie- und Förderzentrum, Straubing)',
      mark: 'published',
      low,
      high,
      got: woodEnergy(moisture) / 3.6e6,
      because: 'the kinds of wood that people burn',
    });
  });

  test('wet wood has less, in a straight line', () => {
    expect(woodEnergy(0)).toBe(18.5e6);
    expect(woodEnergy(0.5)).toBeLessThan(woodEnergy(0.2));
    expect(woodEnergy(0.3)).toBeCloseTo((woodEnergy(0.2) + woodEnergy(0.4)) / 2, 6);
    for (const m of [NAN, -0.1, 18]) expect(() => woodEnergy(m)).toThrow(RangeError);
  });
});
