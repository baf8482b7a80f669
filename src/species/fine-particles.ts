import { COMMON, type Preset, preset } from '../units/preset.ts';
import type { SpeciesFacts } from './species-facts.ts';
import { HOLDS_NONE, type SupplyFilter } from './supply-filter.ts';

const LIST = 'a list of 19 activities (Indoor Air 2023, article 8857446)';

/**
 * Particles under 2.5 µm, from cooking, candles, fires and outdoors.
 *
 * Deposition, published besides: 0.3 1/h for 0.3 to 0.5 µm with the fan off, in an occupied townhouse
 * and an empty test house (Howard-Reed, Wallace and Emmerich 2003, Atmospheric Environment 37, abstract).
 */
export const FINE_PARTICLES = {
  name: 'pm25',
  symbol: 'PM2.5',
  words: 'Fine particles',
  plainName: 'particles',
  alsoCalled: ['pm2.5', 'particles', 'dust', 'smoke'],
  unit: 'µg/m3',
  role: 'pollutant',
  outdoors: preset(
    8,
    4,
    20,
    `${COMMON}: towns of north-western Europe; the WHO guideline for a year is 5`,
  ),
  penetration: preset(
    0.8,
    0.6,
    1,
    'Handbook of Indoor Air Quality 2021: 0.78 ± 0.17 for 0.1 to 1 µm; PTEAM: 1',
  ),
  deposition: preset(
    0.3,
    0.1,
    0.5,
    'PTEAM 0.39 1/h (from memory); 0.1 and up in a study of two houses',
  ),
  band: {
    high: 15,
    hours: 24,
    reason:
      'WHO air quality guidelines 2021: 15 µg/m3 as a mean of 24 hours, on all but 3 or 4 days',
    counted: 'any time',
  },
  limits: { level: 1000, band: 1e5, weather: [0, 10_000], weatherHint: '' },
  sensor: {
    bias: preset(0, -5, 5),
    noise: preset(1, 0.5, 3),
    step: preset(1, 0.1, 1),
    lag: preset(1, 0, 5),
    every: preset(5, 1, 15),
  },
  sources: {
    activity: {
      key: 'particles',
      description: 'Fine particles that the activity gives off each time',
      max: 10_000,
      usual: {
        cooking: preset(
          11,
          5,
          60,
          `0.11 mg/min electric, 0.24 gas, 1.33 burnt in ${LIST}, over 45 min`,
        ),
        'light meal': preset(
          1.6,
          0.5,
          5,
          `toasting, 0.11 mg/min in ${LIST}; a factor of three each way`,
        ),
        candles: preset(18, 5, 110, `0.04, 0.15 and 0.91 mg/min each in ${LIST}, over two hours`),
      },
    },
    refuelling: {
      key: 'particles',
      description: 'Fine particles that the stove lets out at each refuelling',
      max: 10_000,
      usual: preset(
        1.5,
        0.3,
        10,
        'worked back from 20 stoves (Chakraborty and others 2020): 12 µg/m3 with a fire, 4 without',
      ),
    },
  },
  filter: { by: 'rate' },
  supplyFilter: {
    key: 'particles held',
    description:
      'Share of the fine particles outdoors that the filter of the supply air holds back',
    held: heldBy,
  },
} as const satisfies SpeciesFacts;

/**
 * By the group of the class: the efficiency itself where the group is named after these particles; where
 * it is named after finer ones, nearly all of the three tenths of their mass above 1 µm besides; less
 * where it is named after coarser ones, and then under the half from which the class would be another.
 */
function heldBy({ group, efficiency }: SupplyFilter): Preset {
  if (group === 'none') return HOLDS_NONE;
  if (group === 'coarse') {
    return preset(0.1, 0, 0.3, 'own judgement: a coarse filter holds little under 2.5 µm');
  }
  if (group === 'ePM2.5') {
    const [low, high] = [efficiency - 0.15, Math.min(1, efficiency + 0.05)];
    return preset(efficiency, low, high, 'ISO 16890, the class itself; less where filters leak by');
  }
  if (group === 'ePM10') {
    const value = efficiency - 0.3;
    return preset(
      Math.min(0.5, value),
      Math.max(0, value - 0.2),
      Math.min(0.5, value + 0.15),
      TRADE,
    );
  }
  const value = efficiency + 0.3 * (1 - efficiency);
  return preset(value, efficiency - 0.1, Math.min(1, value + 0.05), TRADE);
}

const TRADE =
  'trade table of classes (Eurovent 4/23 as quoted): ePM1 40 to 65 % go with 65 to 75 % under 2.5 µm, 80 to 90 with 85 to 95, ePM10 40 to 80 with 10 to 50';
