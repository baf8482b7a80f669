import { expect, test } from 'vitest';
import { evenDraw, hashFrom, stemOf } from '../../src/units/seeded-draw.ts';

const drawFrom = (seed: number, a: number, b: number): number =>
  evenDraw(hashFrom(stemOf(seed, a), b));

const COUNT = 20_000;
const numbers = Array.from({ length: COUNT }, (_, b) => b);
const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / COUNT;

// Of a mean of n even draws the standard deviation is 1/sqrt(12 n); four of them are let through.
const OFF = 4 / Math.sqrt(12 * COUNT);

test('draws are even from 0 to 1 along seeds, things and times', () => {
  for (const draw of [
    (b: number) => drawFrom(1, 2, b),
    (a: number) => drawFrom(1, a, 2),
    (seed: number) => drawFrom(seed, 1, 2),
    (both: number) => drawFrom(3, both, both),
  ]) {
    const drawn = numbers.map(draw);
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...drawn)).toBeLessThan(1);
    expect(Math.abs(mean(drawn) - 0.5)).toBeLessThan(OFF);
    const tenths = new Array<number>(10).fill(0);
    for (const x of drawn) tenths[Math.floor(x * 10)]! += 1;
    for (const n of tenths) expect(Math.abs(n / COUNT - 0.1)).toBeLessThan(0.01);
  }
});

test('neighbouring draws know nothing of each other', () => {
  const together = mean(
    numbers.map((b) => (drawFrom(1, 2, b) - 0.5) * (drawFrom(1, 2, b + 1) - 0.5)),
  );
  const across = mean(numbers.map((b) => (drawFrom(1, 2, b) - 0.5) * (drawFrom(1, 3, b) - 0.5)));
  // Standard deviation of the mean of a product of two: 1/(12 sqrt n).
  expect(Math.abs(together)).toBeLessThan(4 / (12 * Math.sqrt(COUNT)));
  expect(Math.abs(across)).toBeLessThan(4 / (12 * Math.sqrt(COUNT)));
});

test('a draw depends on all three numbers and on their order, and on nothing else', () => {
  expect(drawFrom(1, 2, 3)).toBe(drawFrom(1, 2, 3));
  const all = [drawFrom(1, 2, 3), drawFrom(3, 2, 1), drawFrom(2, 1, 3), drawFrom(1, 3, 2)];
  expect(new Set(all).size).toBe(4);
  expect(new Set(numbers.map((b) => drawFrom(7, 7, b))).size).toBeGreaterThan(COUNT - 5);
});

test('each of the 32 bits of a hash is set half the time, and a draw is made of them all', () => {
  const hashes = numbers.map((b) => hashFrom(stemOf(5, 10), b));
  for (let bit = 0; bit < 32; bit++) {
    const share = mean(hashes.map((hash) => (hash >>> bit) & 1));
    expect(Math.abs(share - 0.5)).toBeLessThan(4 / Math.sqrt(4 * COUNT));
  }
  expect(numbers.map((b) => drawFrom(5, 10, b) * 2 ** 32)).toEqual(hashes.map((h) => h >>> 0));
});
