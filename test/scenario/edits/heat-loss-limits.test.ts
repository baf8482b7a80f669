import { expect, test } from 'vitest';
import type { Assumed } from '../../../src/home/notices.ts';
import { heatAdjustables } from '../../../src/scenario/edits/adjustables.ts';

test('a factor of U-values moves none beyond what a scenario may say', () => {
  const of = (part: string, value: number) =>
    ({ path: `/home/build/${part} u-value`, value, low: 0.1, high: 6, source: 'x' }) as Assumed;
  const assumed = [of('wall', 0.5), of('window', 2.9), of('floor', 1)];
  const logged = { humid: [], warm: [], metered: [], mild: false, species: [] };
  const loss = heatAdjustables({}, assumed, [], logged).find(({ kind }) => kind === 'heat loss')!;
  const at = (factor: number) => loss.places.map((place) => place.at(factor));
  expect(at(1.5)).toEqual([0.75, 2.9 * 1.5, 1.5]);
  // 5.5 W/m2K of walls and windows, 4.5 of floors: "maximum" in docs/scenario.schema.json
  expect(at(6)).toEqual([3, 5.5, 4.5]);
});
