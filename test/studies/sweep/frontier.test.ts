import { describe, expect, test } from 'vitest';
import { type Bargain, frontier, knee } from '../../../src/studies/sweep/frontier.ts';
import { seededRandom } from '../../../src/units/seeded-random.ts';

const runs = (list: readonly (readonly [money: number, hours: number])[]): Bargain[] =>
  list.map(([money, hours], k) => ({ run: k + 1, money, hours }));

/** By the definition: each against each. */
const byForce = (list: readonly Bargain[]) =>
  list.filter(
    (one) =>
      !list.some(
        (other) =>
          other.money <= one.money &&
          other.hours <= one.hours &&
          (other.money < one.money || other.hours < one.hours),
      ),
  );

test('equals a search of each against each', () => {
  const random = seededRandom(3);
  for (let round = 0; round < 50; round++) {
    // Few whole numbers, so that many runs are equal in one or both.
    const drawn = () => Math.floor(random() * 12);
    const list = runs(Array.from({ length: 60 }, () => [drawn(), drawn()] as const));
    const numbers = (found: readonly Bargain[]) =>
      found.map(({ run }) => run).sort((a, b) => a - b);
    expect(numbers(frontier(list))).toEqual(numbers(byForce(list)));
  }
});

test('leaves out what is no number', () => {
  expect(
    frontier(
      runs([
        [NaN, 1],
        [3, 4],
      ]),
    ).map(({ run }) => run),
  ).toEqual([2]);
  expect(frontier([])).toEqual([]);
});

describe('the bend', () => {
  test('is farthest below the line between the ends, by hand', () => {
    // From (0, 100) to (10, 0); (1, 40) lies 1 - 0.1 - 0.4 = 0.5 below, (4, 20) 1 - 0.4 - 0.2 = 0.4.
    const found = knee(
      frontier(
        runs([
          [0, 100],
          [1, 40],
          [4, 20],
          [10, 0],
        ]),
      ),
    );
    expect(found?.at.run).toBe(2);
    expect(found?.before).toBeCloseTo(1 / 60, 12);
    expect(found?.after).toBeCloseTo(9 / 40, 12);
  });

  test('does not depend on the units', () => {
    const scaled = runs([
      [0, 100],
      [1, 40],
      [4, 20],
      [10, 0],
    ]).map((run) => ({
      ...run,
      money: 90 * run.money + 7,
      hours: run.hours / 3,
    }));
    expect(knee(frontier(scaled))?.at.run).toBe(2);
  });

  test.each([
    ['one run', [[1, 1]]],
    [
      'two',
      [
        [0, 5],
        [5, 0],
      ],
    ],
    [
      'a straight line',
      [
        [0, 2],
        [1, 1],
        [2, 0],
      ],
    ],
    [
      'a bulge',
      [
        [0, 10],
        [6, 9],
        [10, 0],
      ],
    ],
  ] as [string, [number, number][]][])('%s has none', (_, list) => {
    expect(knee(frontier(runs(list)))).toBeNull();
  });
});
