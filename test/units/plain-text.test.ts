import { expect, test } from 'vitest';
import { plainText } from '../../src/units/plain-text.ts';

test.each([
  ['19 °C or 21 °C?', '19 C or 21 C?'],
  ['176 µg/m3, 0 mm², −0.01 … 3', '176 ug/m3, 0 mm2, -0.01 ... 3'],
  ['130.87 ÷ 12 519', '130.87 / 12 519'],
  ['Küche, Straße, año, Łódź', 'Kuche, Strasse, ano, Lodz'],
  ['台所', '??'],
  ['a\nb\tc', 'a\nb\tc'],
])('%j is typed %j', (text, plain) => {
  expect(plainText(text)).toBe(plain);
  expect(plainText(text)).toMatch(/^\p{ASCII}*$/u);
});
