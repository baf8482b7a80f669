import type { Fuel } from '../../home/home.ts';
import { COMMON, type Preset } from '../../units/preset.ts';

const price = (value: number): Preset => ({
  value,
  low: value * 0.6,
  high: value * 1.6,
  source: 'invented, of the size of a bill: read yours',
});

/** Price of a kWh of fuel. [currency/kWh] */
export const PRICE: Readonly<Record<Fuel, Preset>> = {
  gas: price(0.07),
  oil: price(0.08),
  lpg: price(0.11),
  wood: price(0.08),
  electricity: price(0.27),
  'district heat': price(0.1),
};

const FACTORS = 'UK government conversion factors, about 2023 (from memory)';

/** CO2 equivalent of a kWh, gross. [kg/kWh] */
export const CARBON: Readonly<Record<Fuel, Preset>> = {
  gas: { value: 0.183, low: 0.18, high: 0.21, source: FACTORS },
  oil: { value: 0.247, low: 0.24, high: 0.3, source: FACTORS },
  lpg: { value: 0.214, low: 0.21, high: 0.24, source: FACTORS },
  wood: {
    value: 0.011,
    low: 0.01,
    high: 0.4,
    source: `${FACTORS}; high: with what the stack gives`,
  },
  electricity: {
    value: 0.207,
    low: 0.05,
    high: 0.4,
    source: 'UK government conversion factors of 2023: 0.207074',
  },
  'district heat': { value: 0.18, low: 0.05, high: 0.25, source: FACTORS },
};

/** What money a year later is worth less. [1/year] */
export const DISCOUNT: Preset = { value: 0.03, low: 0, high: 0.08, source: COMMON };
