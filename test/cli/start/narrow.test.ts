import { expect, test } from 'vitest';
import { findOut } from '../../../src/cli/start/narrow.ts';

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
