import { expect, test } from 'vitest';
import { rangeText } from '../../src/units/range-text.ts';

const none = Number.POSITIVE_INFINITY;

test.each([
  [18, 26, '18 to 26 °C'],
  [18, none, '18 °C or more'],
  [-none, 26, '26 °C or less'],
  [-none, none, 'of any height'],
])('what is fine from %s to %s: %s', (low, high, words) => {
  expect(rangeText({ low, high }, ' °C')).toBe(words);
});

test('another upper edge in mild weather stands behind it', () => {
  const range = { low: 16, high: 20, mild: { high: 26 } };
  expect(rangeText(range, ' °C')).toBe('16 to 20 °C (26 °C in mild weather)');
  expect(rangeText(range, ' °C', 'from 12 °C outdoors on')).toBe(
    '16 to 20 °C (26 °C from 12 °C outdoors on)',
  );
});
