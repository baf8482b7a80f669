import { COMMON, type Preset } from '../../units/preset.ts';

/** Kept even where heating is off, in summer too. [°C] */
export const FROST_GUARD: Preset = {
  value: 5,
  low: 5,
  high: 7,
  source: 'common practice: the frost mark of thermostats and valves',
};

/** What the thermostat is set to. [°C] */
export const SETPOINT: Preset = {
  value: 20,
  low: 17,
  high: 22,
  source: 'common practice; winter means of 249 Leicester homes ran from 9.7 to 25.7 °C',
};

/** Useful heat over fuel, gross calorific value. [-] */
export const BOILER_EFFICIENCY: Preset = {
  value: 0.84,
  low: 0.75,
  high: 0.92,
  source: 'typical fossil system of the UK heat pump demonstration (742 homes)',
};

export const DISTRICT_EFFICIENCY: Preset = { value: 1, low: 0.95, high: 1, source: COMMON };

/**
 * Heat over electricity of an air-source heat pump by outdoor temperature [°C], radiators.
 * Shaped by common practice to a year of 2.8; the demonstration's coldest day had 2.44.
 */
export const COP = {
  points: [
    { outdoor: -10, cop: 1.9 },
    { outdoor: 0, cop: 2.5 },
    { outdoor: 7, cop: 2.9 },
    { outdoor: 15, cop: 3.5 },
  ],
  value: 2.8,
  low: 2.3,
  high: 3.5,
  source: 'UK heat pump demonstration (742 homes): median 2.80, 2.44 on the coldest day',
} as const;

/** Mean water temperature in radiators. [°C] */
export const WATER: Readonly<Record<'boiler' | 'heat pump' | 'district heat', Preset>> = {
  boiler: { value: 60, low: 45, high: 70, source: COMMON },
  'heat pump': { value: 42, low: 35, high: 50, source: COMMON },
  'district heat': { value: 55, low: 45, high: 70, source: COMMON },
};

/** Most that a source gives. [W] */
export const SOURCE_POWER: Readonly<Record<'boiler' | 'heat pump' | 'district heat', Preset>> = {
  boiler: { value: 24_000, low: 12_000, high: 35_000, source: COMMON },
  'heat pump': { value: 8000, low: 5000, high: 14_000, source: COMMON },
  'district heat': { value: 15_000, low: 10_000, high: 30_000, source: COMMON },
};

/** Radiators, a square metre of floor at 50 K over the room. [W/m2] */
export const RADIATOR: Preset = { value: 110, low: 70, high: 160, source: COMMON };
/** Electric heaters, a square metre of floor. [W/m2] */
export const ELECTRIC_HEATER: Preset = { value: 100, low: 60, high: 150, source: COMMON };
/** Rated excess of radiators. [K] */
export const RADIATOR_EXCESS: Preset = {
  value: 50,
  low: 50,
  high: 60,
  source: 'EN 442: 75/65/20 °C',
};
export const RADIATOR_EXPONENT: Preset = {
  value: 1.3,
  low: 1.2,
  high: 1.4,
  source: 'EN 442 tests',
};
export const RADIATOR_RADIANT: Preset = { value: 0.3, low: 0.15, high: 0.5, source: COMMON };
export const HEATER_RADIANT: Preset = { value: 0.2, low: 0.05, high: 0.5, source: COMMON };
/** Time constant of warming up. [min] */
export const RADIATOR_LAG: Preset = {
  value: 10,
  low: 5,
  high: 20,
  source: 'householders report 10 to 15 minutes until slow radiators show',
};
export const HEATER_LAG: Preset = { value: 3, low: 0, high: 10, source: COMMON };
