import { expect, test } from 'vitest';
import { defaultBands } from '../../src/home/bands.ts';

test('lived-in rooms, rooms passed through, stores, and where an infant sleeps', () => {
  const range = (...args: Parameters<typeof defaultBands>) => {
    const { low, high } = defaultBands(...args).temperature;
    return [low, high];
  };
  expect(range('living', null)).toEqual([18, 26]);
  expect(range('bedroom', null)).toEqual([18, 26]);
  expect(range('hall', null)).toEqual([16, 26]);
  expect(range('bedroom', 12)).toEqual([16, 20]);
  // While nobody heats, what is cool enough for people at risk from heat.
  expect(defaultBands('bedroom', 12).temperature.mild).toEqual({ high: 26, from: 12, hours: 72 });
  expect(defaultBands('bedroom', null).temperature.mild).toBeUndefined();
});

test('every band prints its reason', () => {
  for (const use of ['living', 'bathroom', 'storage'] as const) {
    const { temperature, humidity, species } = defaultBands(use, null);
    for (const band of [temperature, humidity, ...Object.values(species)]) {
      expect(band.reason).not.toBe('');
      expect(band.low).toBeLessThan(band.high);
    }
  }
});
