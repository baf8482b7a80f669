import { expect, test } from 'vitest';
import type { TraceView } from '../../../src/engine/record/trace.ts';
import { createLowestAir } from '../../../src/measures/notices/lowest-air.ts';

test('the lowest temperature of each room is kept, over all that is observed', () => {
  const lowest = createLowestAir(2);
  const see = (...airTemperature: number[]) =>
    lowest.observe({
      steps: airTemperature.length / 2,
      room: { airTemperature: Float64Array.from(airTemperature) },
    } as unknown as TraceView);
  see(20, 11, 18, 12);
  see(19, 10, 21, 13, 18.5, 14);
  expect([lowest.result(0), lowest.result(1)]).toEqual([18, 10]);
});
