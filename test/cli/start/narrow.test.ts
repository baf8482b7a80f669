import { expect, test } from 'vitest';
import { findOut, telling } from '../../../src/cli/start/narrow.ts';

test.each([
  ['/household/activities/1/water', '; count showers, loads of laundry and meals'],
  ['/household/bodies/awake/water', ''],
  ['/heating/water temperature', ''],
  ['/home/build/window u-value', '; look at the glass, its edge strip and what stands before it'],
  ['/home/build/window head', ''],
  ['/home/build/roof pitch', ''],
  ['/home/build/loft', '; look how thick the wool in the loft is'],
  ['/money/gas/price', '; look at a bill'],
])('how to find out %s', (pointer, words) => expect(findOut(pointer)).toBe(words));

test('of assumptions three are told, and none that moves nothing', () => {
  const moves = (at_low: number, at_high: number) => ({ at_low, at_high });
  const [clear, some, none] = [moves(7080, 6905), moves(7061, 7080), moves(7080.1, 7079.9)];
  expect(telling([clear, some, none])).toEqual([clear, some]);
  expect(telling([clear, none, some, clear, some])).toEqual([clear, some, clear]);
  expect(telling([none])).toEqual([]);
});
