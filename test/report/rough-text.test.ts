import { expect, test } from 'vitest';
import { roughText } from '../../src/report/rough-text.ts';

test.each([
  [0.128, '0.13'],
  [0.0186, '0.019'],
  [1.18, '1.2'],
  [37.1, '37'],
  [656.4, '656'],
  [0, '0'],
  [Number.NaN, '-'],
])('%s is off by %s', (value, text) => {
  expect(roughText(value)).toBe(text);
});
