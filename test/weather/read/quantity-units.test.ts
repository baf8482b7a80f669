import { describe, expect, test } from 'vitest';
import { QUANTITY_NAMES } from '../../../src/weather/quantity.ts';
import { conversionFrom, unitsOf } from '../../../src/weather/read/quantity-units.ts';
import { compare } from '../../reference/compare.ts';

/** Where each definition was read. */
const DEFINED: Readonly<Record<string, string>> = {
  '°F': '212 °F are 100 °C, -40 is the same on both scales (diffmetric.com/guide/temperature-scales)',
  K: '0 °C are 273.15 K (diffmetric.com/guide/temperature-scales)',
  knots: '1 knot is 1.852 km/h, 1 m/s is 3.6 km/h (NOAA, aoml.noaa.gov/hrd/tcfaq/A14.html)',
  mph: '1 mile an hour is 0.44704 m/s (aerodynamics4students.com, conversion factors)',
  'km/h': '1 m/s is 3.6 km/h (NOAA, aoml.noaa.gov/hrd/tcfaq/A14.html)',
  inHg: '1 in of Hg is 3.38639 kPa (ucdsb.on.ca, Stretton, conversion factors)',
  mmHg: '760 mm Hg are 1 atm, 101.325 kPa (physics tables of C. Graney; ucdsb.on.ca, Stretton)',
  oktas: '4 oktas are 4/8 of the sky (WMO, worldweather.wmo.int/oktas.htm)',
};

describe('conversionFrom', () => {
  test.each([
    ['temperature', '°F', 212, 100, '°C', 1e-12],
    ['temperature', '°F', -40, -40, '°C', 1e-12],
    ['temperature', 'K', 273.15, 0, '°C', 1e-12],
    ['wind speed', 'knots', 1, 0.514444, 'm/s', 1e-6],
    ['wind speed', 'mph', 1, 0.44704, 'm/s', 1e-12],
    ['wind speed', 'km/h', 36, 10, 'm/s', 1e-12],
    ['pressure', 'inHg', 29.9213, 101_325, 'Pa', 0.5],
    ['pressure', 'mmHg', 760, 101_325, 'Pa', 0.02],
    ['cloud cover', 'oktas', 4, 50, '%', 1e-12],
    ['tvoc', 'mg/m3', 0.3, 300, 'µg/m3', 1e-9],
    ['global horizontal', 'kJ/(m2 h)', 3600, 1000, 'W/m2', 1e-9],
  ] as const)('%s: 1 %s', (quantity, unit, written, expected, own, absolute) => {
    compare({
      topic: 'Weather files',
      what: `${quantity}: ${written} ${unit}`,
      unit: own,
      source: DEFINED[unit] ?? 'prefixes of the SI and the hour of 3600 s',
      mark: DEFINED[unit] === undefined ? 'closed form' : 'published',
      expected,
      got: conversionFrom(quantity, unit)!(written),
      tolerance: { absolute },
      because: 'digits of the definition',
    });
  });

  test('knows the usual spellings', () => {
    for (const [quantity, ...spellings] of [
      ['temperature', 'C', 'degC', '°c', 'deg C', 'degrees C'],
      ['wind speed', 'm/s', 'M/S', 'm s-1'],
      ['pm25', 'ug/m3', 'µg/m³', 'μg/m3'],
      ['global horizontal', 'W/m²', 'W/m^2', 'w/m2'],
      ['wind direction', '°', 'deg', 'degrees'],
      ['relative humidity', '%', 'percent'],
      ['co2', 'ppm', 'PPM'],
    ] as const) {
      for (const spelling of spellings) {
        expect(conversionFrom(quantity, spelling)?.(7), `${quantity} ${spelling}`).toBe(7);
      }
    }
  });

  test('has none for a unit of something else', () => {
    expect(conversionFrom('temperature', '%')).toBe(null);
    expect(conversionFrom('wind speed', 'toString')).toBe(null);
  });

  test('every quantity can be given in its own unit', () => {
    for (const quantity of QUANTITY_NAMES) {
      for (const unit of unitsOf(quantity)) expect(conversionFrom(quantity, unit)).not.toBe(null);
      expect(conversionFrom(quantity, unitsOf(quantity)[0]!)!(5)).toBe(5);
    }
  });
});
