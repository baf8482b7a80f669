import { expect, test } from 'vitest';
import { withMinus } from '../../src/units/minus-sign.ts';

test.each([
  ['-36.03', '−36.03'],
  ['-.5', '−.5'],
  ['-63 (-67 to -51)', '−63 (−67 to −51)'],
  ['+8', '+8'],
])('"%s" is written "%s"', (text, written) => {
  expect(withMinus(text)).toBe(written);
});

test.each(['-', 'dry-bedroom', '16798-1', '2023-01-05', 'room - 2', '1e-13'])(
  'the hyphen of "%s" stays',
  (text) => {
    expect(withMinus(text)).toBe(text);
  },
);
