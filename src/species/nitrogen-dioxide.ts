import { COMMON, preset } from '../units/preset.ts';
import type { SpeciesFacts } from './species-facts.ts';

/**
 * From gas flames and traffic; carried where the scenario asks for it.
 *
 * Loss to surfaces, published: 0.94 1/h with a standard deviation of 0.49 in 26 Korean homes, beside air
 * changes of 0.70 1/h (koreascience.or.kr, JAKO200111920794692, 2001); others have taken 0.8 1/h of such
 * homes and 1.05 1/h of Australian ones.
 */
export const NITROGEN_DIOXIDE = {
  name: 'no2',
  symbol: 'NO2',
  words: 'Nitrogen dioxide',
  plainName: 'NO2',
  alsoCalled: ['nitrogen dioxide', 'nox'],
  unit: 'µg/m3',
  role: 'pollutant',
  onRequest: true,
  outdoors: preset(15, 5, 35, `${COMMON}: towns of north-western Europe`),
  penetration: preset(0.9, 0.7, 1),
  deposition: preset(0.9, 0.3, 1.9, 'loss to surfaces, 0.94 ± 0.49 1/h in 26 homes (Korea, 2001)'),
  band: {
    high: 25,
    hours: 24,
    reason: 'WHO air quality guidelines 2021: 25 µg/m3 as a mean of 24 hours',
    counted: 'any time',
  },
  limits: { level: 1000, band: 1e5, weather: [0, 5000], weatherHint: '' },
  sensor: {
    bias: preset(0, -20, 20),
    noise: preset(5, 1, 20),
    step: preset(1, 1, 10),
    lag: preset(3, 1, 10),
    every: preset(5, 1, 15),
  },
  // Lebel and others 2022, 32 homes: 7.8 ng/J, 7.1 to 8.4.
  perGas: 28.08,
  sources: {
    activity: {
      key: 'no2',
      description: 'Nitrogen dioxide that the activity gives off each time, besides that of gas',
      max: 10_000,
      usual: {},
    },
  },
} as const satisfies SpeciesFacts;
