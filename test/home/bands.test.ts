import { expect, test } from 'vitest';
import { defaultBands } from '../../src/home/bands.ts';

test('lived-in rooms, rooms passed through, stores, and where an infant sleeps', () => {
  const range = (...args: Parameters<typeof defaultBands>) => {
    const { low, high } = defaultBands(...args).temperature;
    return [low, high];
  };
  expect(range('living', false)).toEqual([18, 26]);
  expect(range('bedroom', false)).toEqual([18, 26]);
  expect(range('hall', false)).toEqual([16, 26]);
  expect(range('bedroom', true)).toEqual([16, 20]);
});

test('every band prints its reason', () => {
  for (const use of ['living', 'bathroom', 'storage'] as const) {
    const { temperature, humidity, species } = defaultBands(use, false);
    for (const band of [temperature, humidity, ...Object.values(species)]) {
      expect(band.reason).not.toBe('');
      expect(band.low).toBeLessThan(band.high);
    }
  }
});
