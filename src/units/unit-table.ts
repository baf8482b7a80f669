import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from './time-units.ts';

/**
 * The units that a person may write, and what each measures.
 *
 * A unit's value in the base unit of its dimension is `value * factor + offset`. Base units are SI
 * except where the table says so; only temperatures have an offset. "K" is a temperature difference
 * here and "°C" is a temperature: the two are never taken for each other.
 */
export interface UnitMeaning {
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset?: number;
}

type Dimension = keyof typeof DIMENSIONS;

/** What each dimension is called in a sentence. */
export const DIMENSIONS = {
  temperature: 'a temperature',
  difference: 'a temperature difference',
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  mass: 'a mass',
  time: 'a length of time',
  power: 'a power',
  energy: 'an energy',
  'power per area': 'a power per area',
  transmittance: 'a heat transmittance',
  conductivity: 'a thermal conductivity',
  density: 'a density',
  'specific heat': 'a specific heat',
  'areal heat capacity': 'a heat capacity per area',
  'air flow': 'a flow of air',
  'water rate': 'an amount of water per time',
  'air changes': 'a number of air changes per hour',
  'mass per energy': 'a mass per energy',
  ratio: 'a share',
  angle: 'an angle',
  'parts per million': 'a concentration in parts per million',
  'particle concentration': 'a concentration in mass per volume',
  'number of grains': 'a number of grains',
  'number concentration': 'a number of grains per volume',
} as const;

const YEAR = 365 * SECONDS_PER_DAY; // 365 days: lengths of life and payback, not calendars
const FOOT = 0.3048; // exact, international foot
const INCH = FOOT / 12;
const US_PINT = 0.473176473; // L, exact by definition of the US gallon
const IMPERIAL_PINT = 0.56826125; // L, exact, UK Weights and Measures Act 1985
const BTU = 1055.05585262; // J, International Table
const POUND = 0.45359237; // kg, exact

/** Unit as `plainUnit` leaves it, and its meaning. */
export const UNITS: Readonly<Record<string, UnitMeaning>> = {
  '°C': { dimension: 'temperature', factor: 1 },
  '°F': { dimension: 'temperature', factor: 5 / 9, offset: -160 / 9 },

  K: { dimension: 'difference', factor: 1 },
  '°R': { dimension: 'difference', factor: 5 / 9 },

  m: { dimension: 'length', factor: 1 },
  cm: { dimension: 'length', factor: 0.01 },
  mm: { dimension: 'length', factor: 0.001 },
  km: { dimension: 'length', factor: 1000 },
  ft: { dimension: 'length', factor: FOOT },
  in: { dimension: 'length', factor: INCH },

  m2: { dimension: 'area', factor: 1 },
  cm2: { dimension: 'area', factor: 1e-4 },
  mm2: { dimension: 'area', factor: 1e-6 },
  ft2: { dimension: 'area', factor: FOOT * FOOT },
  in2: { dimension: 'area', factor: INCH * INCH },

  m3: { dimension: 'volume', factor: 1 },
  L: { dimension: 'volume', factor: 1e-3 },
  mL: { dimension: 'volume', factor: 1e-6 },
  ft3: { dimension: 'volume', factor: FOOT ** 3 },
  pint: { dimension: 'volume', factor: US_PINT * 1e-3 },
  imperialpint: { dimension: 'volume', factor: IMPERIAL_PINT * 1e-3 },

  kg: { dimension: 'mass', factor: 1 },
  g: { dimension: 'mass', factor: 1e-3 },
  mg: { dimension: 'mass', factor: 1e-6 },
  µg: { dimension: 'mass', factor: 1e-9 },
  lb: { dimension: 'mass', factor: POUND },

  s: { dimension: 'time', factor: 1 },
  min: { dimension: 'time', factor: 60 },
  h: { dimension: 'time', factor: SECONDS_PER_HOUR },
  day: { dimension: 'time', factor: SECONDS_PER_DAY },
  week: { dimension: 'time', factor: 7 * SECONDS_PER_DAY },
  year: { dimension: 'time', factor: YEAR },

  W: { dimension: 'power', factor: 1 },
  kW: { dimension: 'power', factor: 1000 },
  MW: { dimension: 'power', factor: 1e6 },
  'BTU/h': { dimension: 'power', factor: BTU / SECONDS_PER_HOUR },

  J: { dimension: 'energy', factor: 1 },
  kJ: { dimension: 'energy', factor: 1e3 },
  MJ: { dimension: 'energy', factor: 1e6 },
  GJ: { dimension: 'energy', factor: 1e9 },
  Wh: { dimension: 'energy', factor: SECONDS_PER_HOUR },
  kWh: { dimension: 'energy', factor: 1e3 * SECONDS_PER_HOUR },

  'W/m2': { dimension: 'power per area', factor: 1 },
  'W/m2K': { dimension: 'transmittance', factor: 1 },
  'BTU/hft2°F': {
    dimension: 'transmittance',
    factor: BTU / SECONDS_PER_HOUR / (FOOT * FOOT) / (5 / 9),
  },
  'W/mK': { dimension: 'conductivity', factor: 1 },
  'kg/m3': { dimension: 'density', factor: 1 },
  'g/m3': { dimension: 'density', factor: 1e-3 },
  'J/kgK': { dimension: 'specific heat', factor: 1 },
  'kJ/kgK': { dimension: 'specific heat', factor: 1000 },
  'J/m2K': { dimension: 'areal heat capacity', factor: 1 },
  'kJ/m2K': { dimension: 'areal heat capacity', factor: 1000 },
  'Wh/m2K': { dimension: 'areal heat capacity', factor: SECONDS_PER_HOUR },

  'm3/s': { dimension: 'air flow', factor: 1 },
  'm3/h': { dimension: 'air flow', factor: 1 / SECONDS_PER_HOUR },
  'L/s': { dimension: 'air flow', factor: 1e-3 },
  cfm: { dimension: 'air flow', factor: FOOT ** 3 / 60 },

  // Water by its volume or its mass, one litre a kilogram; base unit kg/s.
  'L/day': { dimension: 'water rate', factor: 1 / SECONDS_PER_DAY },
  'L/h': { dimension: 'water rate', factor: 1 / SECONDS_PER_HOUR },
  'mL/h': { dimension: 'water rate', factor: 1e-3 / SECONDS_PER_HOUR },
  'kg/day': { dimension: 'water rate', factor: 1 / SECONDS_PER_DAY },
  'kg/h': { dimension: 'water rate', factor: 1 / SECONDS_PER_HOUR },
  'g/h': { dimension: 'water rate', factor: 1e-3 / SECONDS_PER_HOUR },
  'pint/day': { dimension: 'water rate', factor: US_PINT / SECONDS_PER_DAY },
  'imperialpint/day': { dimension: 'water rate', factor: IMPERIAL_PINT / SECONDS_PER_DAY },

  '1/h': { dimension: 'air changes', factor: 1 },
  ach: { dimension: 'air changes', factor: 1 },
  'kg/kWh': { dimension: 'mass per energy', factor: 1 },
  'g/kWh': { dimension: 'mass per energy', factor: 1e-3 },

  '-': { dimension: 'ratio', factor: 1 },
  '%': { dimension: 'ratio', factor: 0.01 },
  deg: { dimension: 'angle', factor: 1 },
  '°': { dimension: 'angle', factor: 1 },
  ppm: { dimension: 'parts per million', factor: 1 },
  ppb: { dimension: 'parts per million', factor: 1e-3 },
  'µg/m3': { dimension: 'particle concentration', factor: 1 },
  'mg/m3': { dimension: 'particle concentration', factor: 1000 },
  'ng/m3': { dimension: 'particle concentration', factor: 1e-3 },
  grains: { dimension: 'number of grains', factor: 1 },
  'grains/m3': { dimension: 'number concentration', factor: 1 },
};

/** Other ways to write a unit of the table, as `plainUnit` leaves them. */
export const SPELLINGS: Readonly<Record<string, string>> = {
  '': '-',
  C: '°C',
  degC: '°C',
  celsius: '°C',
  '℃': '°C',
  F: '°F',
  degF: '°F',
  fahrenheit: '°F',
  '℉': '°F',
  kelvin: 'K',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  feet: 'ft',
  foot: 'ft',
  inch: 'in',
  inches: 'in',
  sqm: 'm2',
  qm: 'm2',
  sqft: 'ft2',
  l: 'L',
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  ml: 'mL',
  pints: 'pint',
  pt: 'pint',
  USpint: 'pint',
  USpints: 'pint',
  imperialpints: 'imperialpint',
  UKpint: 'imperialpint',
  UKpints: 'imperialpint',
  second: 's',
  seconds: 's',
  sec: 's',
  minute: 'min',
  minutes: 'min',
  mins: 'min',
  hour: 'h',
  hours: 'h',
  hr: 'h',
  hrs: 'h',
  days: 'day',
  d: 'day',
  weeks: 'week',
  years: 'year',
  yr: 'year',
  yrs: 'year',
  y: 'year',
  a: 'year',
  watt: 'W',
  watts: 'W',
  'm3/hour': 'm3/h',
  'litres/s': 'L/s',
  'L/sec': 'L/s',
  'L/d': 'L/day',
  'l/d': 'L/day',
  'l/day': 'L/day',
  'l/h': 'L/h',
  'l/s': 'L/s',
  'ml/h': 'mL/h',
  'litres/day': 'L/day',
  'liters/day': 'L/day',
  'pints/day': 'pint/day',
  'pt/day': 'pint/day',
  'pt/d': 'pint/day',
  'UKpint/day': 'imperialpint/day',
  'UKpints/day': 'imperialpint/day',
  'h-1': '1/h',
  '/h': '1/h',
  'airchanges/hour': '1/h',
  '1/hour': '1/h',
  percent: '%',
  degrees: 'deg',
  degree: 'deg',
  'ug/m3': 'µg/m3',
  ug: 'µg',
};
