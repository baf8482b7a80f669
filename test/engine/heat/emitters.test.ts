import { expect, test } from 'vitest';
import { emitterLimits } from '../../../src/engine/heat/emitters.ts';
import { layOutModel } from '../../../src/engine/layout/model.ts';
import { ROOM } from '../../../src/engine/layout/state-layout.ts';
import { bareHome, bareRoom, ideallyHeated } from '../homes.ts';

const WATER = 70; // °C

/** The most that a radiator of 1000 W at an excess of 50 K can give, asked of one model again and again. */
function radiator(exponent: number) {
  const bare = ideallyHeated(bareHome([bareRoom('room', 30)]), 1000);
  const m = layOutModel(
    {
      ...bare,
      sources: [{ ...bare.sources[0]!, waterTemperature: WATER }],
      emitters: [{ ...bare.emitters[0]!, ratedExcess: 50, exponent }],
    },
    101_325,
    600,
  );
  return (excess: number): number => {
    m.rooms[ROOM.guess] = WATER - excess;
    emitterLimits(m);
    return m.rooms[ROOM.high]!;
  };
}

test.each([1.1, 1.3, 1.58, 2])(
  'where the excess drifts, exponent %d keeps within a millionth of its law',
  (exponent) => {
    const output = radiator(exponent);
    let worst = 0;
    for (let excess = 60; excess > 5; excess *= 0.9998) {
      const exact = 1000 * (excess / 50) ** exponent; // EN 442
      worst = Math.max(worst, Math.abs(output(excess) / exact - 1));
    }
    expect(worst).toBeLessThan(1e-6);
  },
);

test('a jump of the excess is followed at once', () => {
  const output = radiator(1.3);
  for (const excess of [50, 25, 24.9, 60, 0.001]) {
    expect(Math.abs(output(excess) / (1000 * (excess / 50) ** 1.3) - 1)).toBeLessThan(1e-6);
  }
  expect(output(0)).toBe(0);
  expect(output(-3)).toBe(0);
  expect(output(50)).toBeCloseTo(1000, 9);
});
