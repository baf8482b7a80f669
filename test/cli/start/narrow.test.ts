import { expect, test } from 'vitest';
import { findOut, telling } from '../../../src/cli/start/narrow.ts';

test.each([
  ['/household/activities/1/water', '; count showers, loads of laundry and meals'],
  ['/household/bodies/awake/water', ''],
  ['/heating/water temperature', ''],
  ['/home/build/window u-value', '; look at the glass, its edge strip and what stands before it'],
  ['/home/build/window head', ''],
  ['/home/build/roof pitch', ''],
  ['/home/rooms/den/panes/0/area', '; measure the window'],
  ['/home/build/loft', '; look how thick the wool in the loft is'],
  ['/money/gas/price', '; look at a bill'],
])('how to find out %s', (pointer, words) => expect(findOut(pointer)).toBe(words));

test('of assumptions three are told, and none that moves nothing', () => {
  const moves = (at_low: number, at_high: number) => ({ at_low, at_high });
  const [clear, some, none] = [moves(7080, 6905), moves(7000, 7080), moves(7061, 7080)];
  expect(telling([clear, some, none], 7080)).toEqual([clear, some]);
  expect(telling([clear, none, some, clear, some], 7080)).toEqual([clear, some, clear]);
  expect(telling([none], 7080)).toEqual([]);
  expect(telling([moves(0.1, 0.4)], 0.1)).toEqual([]); // printed alike
  expect(telling([moves(0, 1)], 0)).toHaveLength(1);
});
