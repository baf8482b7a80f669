import { describe, expect, test } from 'vitest';
import { type ShellPart, splitLeakage } from '../../../src/physics/airflow/leakage-split.ts';
import { partyWallShare } from '../../../src/physics/airflow/party-wall-share.ts';
import { compare, compareBand } from '../../reference/compare.ts';

describe('splitLeakage', () => {
  const HOUSE: readonly ShellPart[] = [
    { kind: 'wall', area: 35, bottom: 0, height: 5 },
    { kind: 'wall', area: 35, bottom: 0, height: 5 },
    { kind: 'roof', area: 30, bottom: 5, height: 0 },
  ];

  test('follows areas, and quarters of the height', () => {
    // 70 m2 of wall and 30 m2 of roof, by hand: four cracks of 0.175 and one of 0.3.
    expect(splitLeakage(HOUSE).map(({ part, height }) => [part, height])).toEqual([
      ...[
        [0, 1.25],
        [0, 3.75],
        [1, 1.25],
        [1, 3.75],
        [2, 5],
      ],
    ]);
    const shares = splitLeakage(HOUSE).map(({ share }) => share);
    for (const [k, expected] of [0.175, 0.175, 0.175, 0.175, 0.3].entries()) {
      expect(shares[k]).toBeCloseTo(expected, 12);
    }
  });

  test('shares out all and no more, floors and rooms upstairs too', () => {
    const parts: ShellPart[] = [
      ...HOUSE,
      { kind: 'floor', area: 40, bottom: 0, height: 0 },
      { kind: 'wall', area: 12, bottom: 2.6, height: 2.4 },
      { kind: 'floor', area: 0, bottom: 0, height: 0 },
    ];
    const cracks = splitLeakage(parts);
    expect(cracks.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(cracks.filter(({ part }) => part === 4).map(({ height }) => height)).toEqual([
      2.6 + 0.25 * 2.4,
      2.6 + 0.75 * 2.4,
    ]);
    expect(cracks.at(-1)).toEqual({ part: 5, share: 0, height: 0 });
  });

  test('lets a wall breathe by warmth nearly as evenly spread cracks do', () => {
    // Volume of air that enters a wall of height 1 whose pressure runs from -1/2 to 1/2:
    // the integral of x^n from 0 to 1/2 against half of 0.25^n.
    const n = 0.65;
    const even = 0.5 ** (n + 1) / (n + 1);
    compareBand({
      ...{ topic: 'Leakage over a home', what: 'two cracks for a wall, over evenly spread leaks' },
      ...{
        unit: '-',
        source: 'integral of the power law',
        mark: 'closed form',
        low: 1,
        high: 1.06,
      },
      got: (splitLeakage(HOUSE)[0]!.share * 0.25 ** n) / (splitLeakage(HOUSE)[0]!.share * 2 * even),
      because: 'the page says a few per cent',
    });
  });

  test('refuses a shell without area', () => {
    expect(() => splitLeakage([{ kind: 'wall', area: 0, bottom: 0, height: 5 }])).toThrow(
      'splitLeakage: no part of the shell has an area',
    );
    expect(() => splitLeakage([])).toThrow('no part of the shell has an area');
  });
});

describe('partyWallShare', () => {
  test.each([
    ['mid-terrace', 80, 38],
    ['end of terrace', 40, 19],
  ])('%s', (what, party, expected) => {
    compare({
      ...{ topic: 'Leakage over a home', what: `party walls of a house, ${what}`, unit: '%' },
      ...{ source: 'areas of a house 5 m wide, 8 m deep and 5 m high', mark: 'closed form' },
      ...{ expected, got: 100 * partyWallShare(party, 210 - party).value },
      ...{ tolerance: { absolute: 0.5 }, because: 'rounding of the figure' },
    });
  });

  test('lies between its low and high, and is nothing without neighbours', () => {
    const { value, low, high } = partyWallShare(80, 130);
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    expect(high).toBeLessThan(1);
    expect(partyWallShare(0, 130)).toEqual({ value: 0, low: 0, high: 0 });
    expect(partyWallShare(90, 130).value).toBeGreaterThan(value);
  });
});
