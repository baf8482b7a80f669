import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cosineOf, powerOf, sineOf } from '../../src/units/portable-math.ts';
import { filesUnder } from '../reference/imports.ts';

// Judged by the engine's own functions, whose last bit may be another one.
const angles = Array.from({ length: 4001 }, (_, k) => (k - 2000) * 0.0123);

describe('functions that agree everywhere', () => {
  test('sine and cosine are those of the engine, but for the last bits', () => {
    for (const angle of [...angles, 0, Math.PI / 2, Math.PI, -Math.PI, 2 * Math.PI]) {
      expect(Math.abs(sineOf(angle) - Math.sin(angle)), `${angle}`).toBeLessThan(1e-15);
      expect(Math.abs(cosineOf(angle) - Math.cos(angle)), `${angle}`).toBeLessThan(1e-15);
    }
    expect([sineOf(0), cosineOf(0), cosineOf(Math.PI)]).toEqual([0, 1, -1]);
  });

  test('a power is that of the engine, but for the last bits', () => {
    for (let k = 1; k < 500; k++) {
      for (const exponent of [0.471, 0.5, 0.65, 1.3, 3.4, -1.6364, 5.2559]) {
        const base = k * 0.37;
        const whole = base ** exponent;
        expect(Math.abs(powerOf(base, exponent) / whole - 1)).toBeLessThan(1e-14);
      }
    }
    expect([powerOf(0, 1.3), powerOf(0, 0), powerOf(0, -1), powerOf(1, 7), powerOf(5, 0)]).toEqual([
      ...[0, 1, Number.POSITIVE_INFINITY, 1, 1],
    ]);
  });

  test('nothing that runs a home uses functions in which engines differ', () => {
    // The report's pictures may: what they draw is rounded to a tenth of a pixel.
    const used = filesUnder('src')
      .filter((file) => !/^src\/(report|cli|studies)\//.test(file))
      .filter((file) =>
        /Math\.(sin|cos|pow)\b/.test(
          readFileSync(file, 'utf8').replaceAll(/\/\*[\s\S]*?\*\//g, ''),
        ),
      );
    expect(used).toEqual([]);
  });
});
