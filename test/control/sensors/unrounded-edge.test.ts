import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unroundedEdge } from '../../../src/control/sensors/unrounded-edge.ts';

test('an edge lies halfway to the next step, on the side that does not yet count', () => {
  // Computed by hand: halves round up, so 60.5 is read as 61 and 59.5 as 60.
  expect(unroundedEdge('above', 60, 1)).toBeCloseTo(60.5, 12);
  expect(60.5 > unroundedEdge('above', 60, 1)).toBe(true);
  expect(60.499_999 > unroundedEdge('above', 60, 1)).toBe(false);
  expect(unroundedEdge('below', 60, 1)).toBe(59.5);
  expect(unroundedEdge('above', 60.2, 0)).toBe(60.2);
  expect(unroundedEdge('below', Number.NEGATIVE_INFINITY, 1)).toBe(Number.NEGATIVE_INFINITY);
});

test('a reading is beyond the edge before rounding if, and only if, it is beyond the other after', () => {
  const level = fc.double({ min: -2000, max: 2000, noNaN: true });
  const step = fc.constantFrom(0.01, 0.1, 0.25, 0.5, 1, 5, 50);
  fc.assert(
    fc.property(level, level, step, fc.boolean(), (edge, far, by, onGrid) => {
      const at = onGrid ? Math.round(edge / by) * by : edge;
      const above = unroundedEdge('above', at, by);
      const below = unroundedEdge('below', at, by);
      for (const reading of [far, at, at + by / 2, at - by / 2, above, below, above + by * 1e-9]) {
        const rounded = Math.round(reading / by) * by;
        expect(reading > above).toBe(rounded > at);
        expect(reading < below).toBe(rounded < at);
      }
    }),
  );
});
