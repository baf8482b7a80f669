import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readQuantity } from '../../src/units/quantity.ts';
import { UNITS } from '../../src/units/unit-table.ts';
import { compare } from '../reference/compare.ts';

const taken = (written: string | number, unit: string): number => {
  const read = readQuantity(written, unit);
  if ('refused' in read) throw new Error(JSON.stringify(read.refused));
  return read.value;
};
const refusalOf = (written: string | number, unit: string) => {
  const read = readQuantity(written, unit);
  if ('value' in read) throw new Error(`took ${written} as ${read.value} ${unit}`);
  return read.refused;
};

test('a plain number, and text of one, already has the documented unit', () => {
  expect(taken(21, '°C')).toBe(21);
  expect(taken('21', '°C')).toBe(21);
  expect(taken('-3.5', '°C')).toBe(-3.5);
});

test.each([
  ['66 °F', '°C', 18.8888888888889],
  ['68 F', '°C', 20],
  ['1.2 kW', 'W', 1200],
  ['12 L/day', 'L/day', 12],
  ['10 min', 'min', 10],
  ['1 h 30 min', 'min', 90],
  ['8 years', 'year', 8],
  ['0.3 W/m2K', 'W/m2K', 0.3],
  ['0.3 W/(m² K)', 'W/m2K', 0.3],
  ['0.3 W/m²·K', 'W/m2K', 0.3],
  ['80 mm', 'm', 0.08],
  ['5 ft 8 in', 'm', 1.7272],
  ['8000 mm2', 'm2', 0.008],
  ['86 %', '-', 0.86],
  ['0.5 ach', '1/h', 0.5],
  ['0.5 1/h', '1/h', 0.5],
  ['30 L/s', 'm3/h', 108],
  ['240 g/h', 'L/day', 5.76],
  ['1.2e3 W', 'W', 1200],
  ['−4 °C', '°C', -4],
])('%s is %s: %d', (written, unit, expected) => {
  expect(taken(written, unit)).toBeCloseTo(expected, 12);
});

test('conversions agree with the definitions of the units', () => {
  const exact = { topic: 'Units', mark: 'published arithmetic' as const };
  const because = 'exact by definition; rounding of the arithmetic';
  const figure = (what: string, unit: string, expected: number, got: number, source: string) =>
    compare({
      ...exact,
      what,
      unit,
      expected,
      got,
      source,
      tolerance: { relative: 1e-12 },
      because,
    });
  const nist = 'NIST Special Publication 811, appendix B';
  figure('25 US pints a day', 'L/day', 11.829411825, taken('25 pint/day', 'L/day'), nist);
  figure('1 UK pint', 'L', 0.56826125, taken('1 UK pint', 'L'), nist);
  figure('100 square feet', 'm2', 9.290304, taken('100 ft2', 'm2'), nist);
  figure('1 cubic foot a minute', 'm3/s', 4.719474432e-4, taken('1 cfm', 'm3/s'), nist);
  figure('1 kWh', 'MJ', 3.6, taken('1 kWh', 'MJ'), nist);
});

describe('refuses in words', () => {
  test('another kind of quantity', () => {
    expect(refusalOf('5 kg', 'm2')).toEqual({
      expected: 'an area in m2, such as 12 or "130 ft2"',
      got: '"5 kg", which is a mass',
      hint: '',
    });
  });

  test('a temperature difference where a temperature belongs, and the other way', () => {
    expect(refusalOf('21 K', '°C')).toEqual({
      expected: 'a temperature in °C or °F, such as 20 or "68 °F"',
      got: '"21 K", which is a temperature difference',
      hint: 'K is a difference here; a temperature is written 21 °C',
    });
    expect(refusalOf('2 °C', 'K').hint).toBe(
      '°C is a temperature here; a difference is written 2 K',
    );
  });

  test('degrees of nothing for a temperature, and metres for minutes, with what may be meant', () => {
    expect(refusalOf('20°', '°C').hint).toBe('write "20 °C" or "20 °F"');
    expect(refusalOf('30m', 'min').hint).toBe('write "30 min"');
    expect(refusalOf('30 m', 'm2').hint).toBe('');
  });

  test('a unit that nobody knows, with the nearest or all known ones', () => {
    expect(refusalOf('12 kWatt', 'W').got).toBe('"12 kWatt", whose unit is not known');
    expect(refusalOf('12 L/dya', 'L/day').hint).toBe('did you mean "12 L/day"?');
    expect(refusalOf('3 barn', 'm2').hint).toBe('known here: m2, cm2, mm2, ft2, in2');
  });

  test.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])(
    'a unit named like what every object has: %s',
    (unit) => {
      expect(readQuantity(`5 ${unit}`, 'm2')).toHaveProperty('refused');
    },
  );

  test('decimal commas, fractions, two numbers, no number', () => {
    expect(refusalOf('1,2 kW', 'W').hint).toBe('write 1.2 with a point');
    expect(refusalOf('-0,305 kW', 'W').hint).toBe('write -0.305 with a point');
    // Thousands, or three decimals: nobody knows.
    expect(refusalOf('1,200 W', 'W').hint).toBe(
      'decimals are written with a point, thousands without a comma',
    );
    for (const text of ['1/2 m', '12 m2 3 m2', '', 'kW', 'warm', '3 m 4']) {
      expect(() => refusalOf(text, text === '12 m2 3 m2' ? 'm2' : 'm')).not.toThrow();
    }
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%s', (number) => {
    expect(refusalOf(number, 'W').got).toBe(String(number));
  });
});

test('a field with an unknown documented unit is a mistake of ours', () => {
  expect(() => readQuantity(1, 'furlong')).toThrow('no unit is called "furlong"');
});

test('every unit reads itself, and converts back and forth within its kind', () => {
  const names = Object.keys(UNITS);
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.constantFrom(...names),
      fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
      (from, to, value) => {
        expect(taken(`${value} ${from}`, from)).toBe(value);
        const across = readQuantity(`${value} ${from}`, to);
        if (UNITS[from]!.dimension !== UNITS[to]!.dimension) {
          expect('refused' in across).toBe(true);
        } else if ('value' in across) {
          const back = taken(`${across.value} ${to}`, from);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
        }
      },
    ),
  );
});
