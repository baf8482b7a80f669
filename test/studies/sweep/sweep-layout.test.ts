import { expect, test } from 'vitest';
import { readAxes } from '../../../src/studies/sweep/axis.ts';
import {
  inPart,
  runsOf,
  type SweepLayout,
  sweepRun,
} from '../../../src/studies/sweep/sweep-layout.ts';
import { gridPoints, sampledPoints } from '../../../src/studies/sweep/sweep-points.ts';

const axes = readAxes(['/a=1 to 2 by 1', '/b=5, 6, 7']);
const layout: SweepLayout = {
  homes: [
    { name: 'first', set: ['/c=1'] },
    { name: 'second', set: ['/c=2'] },
  ],
  axes,
  points: gridPoints(axes),
  plans: ['p', 'q'],
  set: ['/d=0'],
};

test('homes in turn, within each its settings, within each of those the plans', () => {
  expect(runsOf(layout)).toBe(2 * 2 * 3 * 2);
  expect(sweepRun(layout, 1)).toEqual({
    ...{ number: 1, home: 'first', plan: 'p', values: { '/a': 1, '/b': 5 } },
    variant: { plan: 'p', set: ['/d=0', '/c=1', '/a=1', '/b=5'] },
  });
  const all = Array.from({ length: 24 }, (_, k) => sweepRun(layout, k + 1));
  expect(all.slice(0, 8).map(({ plan, values }) => [plan, ...Object.values(values)])).toEqual([
    ...[
      ['p', 1, 5],
      ['q', 1, 5],
      ['p', 1, 6],
      ['q', 1, 6],
    ],
    ...[
      ['p', 1, 7],
      ['q', 1, 7],
      ['p', 2, 5],
      ['q', 2, 5],
    ],
  ]);
  expect(new Set(all.map(({ variant }) => JSON.stringify(variant))).size).toBe(24);
  expect(all.filter(({ home }) => home === 'second')).toHaveLength(12);
});

test('parts share the runs out, each run in one of them', () => {
  for (let parts = 1; parts <= 5; parts++) {
    for (let number = 1; number <= 24; number++) {
      const holding = [1, 2, 3, 4, 5].filter(
        (part) => part <= parts && inPart(number, part, parts),
      );
      expect(holding).toHaveLength(1);
    }
  }
});

test('a sample takes each value of a list as often', () => {
  const { count, at } = sampledPoints(axes, 12, 4);
  const points = Array.from({ length: count }, (_, k) => at(k));
  const often = (d: number, value: number) => points.filter((point) => point[d] === value).length;
  expect([often(0, 1), often(0, 2), often(1, 5), often(1, 6), often(1, 7)]).toEqual([
    6, 6, 4, 4, 4,
  ]);
});
