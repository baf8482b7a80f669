import { describe, expect, test } from 'vitest';
import { STREAM, stemsByName } from '../../src/control/random-streams.ts';
import { evenDraw, hashFrom } from '../../src/units/seeded-draw.ts';

const stems = (...names: string[]) => [...stemsByName(1, STREAM.airings, names)];

describe('draws go by name', () => {
  test('whatever else a list has, before it or behind it', () => {
    const [airs, tilts] = stems('airs', 'tilts');
    expect(stems('new', 'tilts', 'airs', 'old')).toEqual([
      expect.any(Number),
      tilts,
      airs,
      expect.any(Number),
    ]);
  });

  test('of one name in their order', () => {
    const [first, second] = stems('airs', 'airs');
    expect(first).not.toBe(second);
    expect(stems('airs', 'new', 'airs')).toEqual([first, expect.any(Number), second]);
  });

  test('and by purpose and seed', () => {
    const [airs] = stems('airs');
    expect(stemsByName(1, STREAM.windowRequests, ['airs'])[0]).not.toBe(airs);
    expect(stemsByName(2, STREAM.airings, ['airs'])[0]).not.toBe(airs);
  });

  test('names that differ by a letter, or by its place, know nothing of each other', () => {
    const names = ['air 1', 'air 2', '1 air', 'air  1', 'Air 1', 'air 1 ', ''];
    const all = stems(...names);
    expect(new Set(all).size).toBe(names.length);
    const COUNT = 20_000;
    for (const [k, one] of all.entries()) {
      for (const other of all.slice(k + 1)) {
        let together = 0;
        for (let b = 0; b < COUNT; b++) {
          together += (evenDraw(hashFrom(one, b)) - 0.5) * (evenDraw(hashFrom(other, b)) - 0.5);
        }
        // Standard deviation of the mean of a product of two: 1/(12 sqrt n).
        expect(Math.abs(together / COUNT)).toBeLessThan(4 / (12 * Math.sqrt(COUNT)));
      }
    }
  });
});
