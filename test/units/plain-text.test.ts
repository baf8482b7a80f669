import { expect, test } from 'vitest';
import { plainText } from '../../src/units/plain-text.ts';

test.each([
  ['19 °C or 21 °C?', '19 C or 21 C?'],
  ['176 µg/m3, 0 mm², −0.01 … 3', '176 ug/m3, 0 mm2, -0.01 ... 3'],
  ['130.87 ÷ 12 519', '130.87 / 12 519'],
  ['Küche, Straße, año, Łódź', 'Kuche, Strasse, ano, Lodz'],
  ['facing 180 °, 24° further, ½', 'facing 180 deg, 24 deg further, 1/2'],
  ['台所', '??'],
  ['a\nb\tc', 'a\nb\tc'],
])('%j is typed %j', (text, plain) => {
  expect(plainText(text)).toBe(plain);
  expect(plainText(text)).toMatch(/^\p{ASCII}*$/u);
});

test('columns stay below their heads', () => {
  const table = [
    'plan       mould           at       kWh',
    'as-lived     3.1 main bed…  60.0 °C    9',
    'Großraum     3.1 den        5.00 °C   10',
    'no           2.0 main bed…  7.00 °C  100',
  ];
  const typed = plainText(table.join('\n')).split('\n');
  expect(typed).toEqual([
    'plan       mould           at       kWh',
    'as-lived     3.1 main bed... 60.0 C    9',
    'Grossraum    3.1 den        5.00 C    10',
    'no           2.0 main bed... 7.00 C  100',
  ]);
});
