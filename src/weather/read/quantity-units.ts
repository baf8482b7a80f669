import { QUANTITIES, type Quantity } from '../quantity.ts';

/** Turns a number as the file writes it into the quantity's own unit. */
export type Conversion = (value: number) => number;

/** How to convert from a unit, or null for a unit the quantity cannot have. */
export function conversionFrom(quantity: Quantity, unit: string): Conversion | null {
  const family = FAMILIES[QUANTITIES[quantity].unit] ?? {};
  const name = plain(unit);
  return Object.hasOwn(family, name) ? family[name]! : null;
}

/** Units that a quantity can be given in, as they are usually written. */
export function unitsOf(quantity: Quantity): string[] {
  return Object.keys(FAMILIES[QUANTITIES[quantity].unit] ?? {});
}

/** The many ways of writing one unit, as one. */
function plain(unit: string): string {
  const text = unit
    .trim()
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll(/^deg(ree)?s?\s*(?=[CFK]?$)/gi, '°')
    .replaceAll('μ', 'µ'); // Greek letter for micro sign
  const small = text.toLowerCase();
  return Object.hasOwn(SPELLINGS, small) ? SPELLINGS[small]! : text;
}

const scale =
  (factor: number): Conversion =>
  (value) =>
    value * factor;

const same: Conversion = (value) => value;

/** Units that a quantity may be given in, by the unit used inside, each with its conversion. */
const FAMILIES: Readonly<Record<string, Readonly<Record<string, Conversion>>>> = {
  '°C': {
    '°C': same,
    '°F': (value) => (value - 32) / 1.8,
    K: (value) => value - 273.15,
    '0.1 °C': scale(0.1),
  },
  '%': { '%': same, share: scale(100), oktas: scale(12.5), tenths: scale(10) },
  Pa: {
    Pa: same,
    hPa: scale(100),
    kPa: scale(1000),
    mbar: scale(100),
    mmHg: scale(133.322387415), // conventional, 13595.1 kg/m3 x 9.80665 m/s2
    inHg: scale(3386.388640341),
  },
  'm/s': {
    'm/s': same,
    'km/h': scale(1 / 3.6),
    mph: scale(0.44704),
    knots: scale(1852 / 3600),
    'ft/s': scale(0.3048),
  },
  '°': { '°': same },
  'W/m2': { 'W/m2': same, 'kW/m2': scale(1000), 'kJ/(m2 h)': scale(1 / 3.6) },
  'µg/m3': { 'µg/m3': same, 'mg/m3': scale(1000) },
  ppm: { ppm: same },
  'grains/m3': { 'grains/m3': same },
};

const SPELLINGS: Readonly<Record<string, string>> = {
  c: '°C',
  '°c': '°C',
  f: '°F',
  '°f': '°F',
  k: 'K',
  '°k': 'K',
  percent: '%',
  'per cent': '%',
  '1': 'share',
  '-': 'share',
  okta: 'oktas',
  eighths: 'oktas',
  pa: 'Pa',
  hpa: 'hPa',
  kpa: 'kPa',
  mb: 'mbar',
  millibar: 'mbar',
  mmhg: 'mmHg',
  inhg: 'inHg',
  'm/s': 'm/s',
  'm s-1': 'm/s',
  kmh: 'km/h',
  kph: 'km/h',
  'mi/h': 'mph',
  kn: 'knots',
  kt: 'knots',
  knot: 'knots',
  'w/m^2': 'W/m2',
  'w/m2': 'W/m2',
  'w m-2': 'W/m2',
  'kw/m2': 'kW/m2',
  'kj/m2/h': 'kJ/(m2 h)',
  'ug/m3': 'µg/m3',
  ppm: 'ppm',
  deg: '°',
};
