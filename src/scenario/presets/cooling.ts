import { COMMON, type Preset, preset } from '../../units/preset.ts';

/** What cooling is set to. [°C] */
export const COOLING_SETPOINT: Preset = {
  value: 26,
  low: 23,
  high: 28,
  source: 'EN 16798-1:2019, category II, from memory',
};

/** Most that a unit removes from its room, with the heat of the water. [W] */
export const UNIT_POWER: Readonly<Record<'split' | 'single duct', Preset>> = {
  split: preset(2500, 2000, 5000),
  'single duct': preset(2500, 1500, 3500),
};

/** Most that emitters fed with cool water remove for a square metre of floor. [W/m2] */
export const EMITTER_COOLING: Preset = preset(25, 10, 40);

/**
 * Heat removed for each unit of electricity. `share` is that of the ideal, and `evaporator` [°C]
 * where heat is taken up; a unit with one duct gives its heat to room air, so its EER knows no
 * weather.
 */
export const EER = {
  split: {
    ...{ share: 0.35, evaporator: 10, value: 3.3, low: 2.5, high: 5 },
    source: '35 % of the ideal, coil at 10 °C: 4.0 at 25 °C outdoors, 2.8 at 35 °C; from memory',
  },
  'reversible heat pump': {
    ...{ share: 0.35, evaporator: 14, value: 3.9, low: 3, high: 5 },
    source: '35 % of the ideal, water of 18 °C: 4.8 at 25 °C outdoors, 3.2 at 35 °C; from memory',
  },
  'single duct': preset(2.6, 2, 3.1, 'energy label of the EU, lower edge of class A, from memory'),
} as const;

/** Coils of room units: surface [°C], share that bypasses it [-], air for each watt [m3/h]. */
export const COIL = {
  temperature: preset(10, 7, 14),
  bypassFactor: preset(0.15, 0.05, 0.3),
  airflowPerWatt: preset(0.16, 0.13, 0.2, `${COMMON}: 400 m3/h for 2.5 kW`),
};

/** Room air that a unit with one duct blows outdoors. [m3/h] */
export const DUCT_EXHAUST: Preset = preset(350, 250, 450);
