import { COMMON, preset } from '../units/preset.ts';
import type { SpeciesFacts } from './species-facts.ts';

const SKIN = preset(
  743,
  280,
  1200,
  'whole body of 14 people, 743 µg/h, standard deviation 465 (He and others 2019)',
);

/** The sum of volatile organic compounds, from cooking, cleaning, paint, scent and bodies. */
export const ORGANIC_VAPOURS = {
  name: 'tvoc',
  symbol: 'TVOC',
  words: 'Volatile organic compounds',
  plainName: 'TVOC',
  alsoCalled: ['voc', 'vocs', 'odour', 'smell'],
  unit: 'µg/m3',
  role: 'pollutant',
  outdoors: preset(20, 5, 100, `${COMMON}: a town without much traffic`),
  penetration: preset(1, 0.9, 1),
  deposition: preset(0, 0, 0.3, `${COMMON}: carpets give back what they take up`),
  materials: preset(
    100,
    20,
    500,
    'own judgement: six compounds gave 135 µg/(m2 h) in new flats in Korea; old homes give less of each, and more kinds',
  ),
  band: {
    high: 1000,
    hours: 0,
    reason: 'German environment agency scale: up to 1 mg/m3 still unobjectionable',
    counted: 'occupied',
  },
  limits: { level: 10_000, band: 1e6, weather: [0, 100_000], weatherHint: '' },
  sensor: {
    bias: preset(0, -300, 300, `${COMMON}: cheap ones tell more from less, hardly how much`),
    noise: preset(30, 10, 100),
    step: preset(1, 1, 50),
    lag: preset(3, 1, 10),
    every: preset(5, 1, 15),
  },
  sources: {
    activity: {
      key: 'tvoc',
      description: 'Organic vapours that the activity gives off each time',
      max: 1e5,
      // Laundry counts as washed without scent.
      usual: {
        cooking: preset(
          100,
          20,
          350,
          `${COMMON}: up to what frying gives at least, a third of it as a mean over a meal`,
        ),
        'light meal': preset(7, 1, 20, `${COMMON}: a fifth of cooking`),
        candles: preset(1.5, 0.15, 7, `${COMMON}: plain at the low end, scented at the high`),
        cleaning: preset(
          100,
          10,
          380,
          'worked back from Singer and others 2006: undiluted cleaners, a tenth when diluted',
        ),
      },
    },
    body: {
      key: 'tvoc',
      description: 'Organic vapours given off',
      max: 1e5,
      awake: SKIN,
      asleep: SKIN,
    },
    paint: {
      key: 'tvoc',
      description: 'Organic vapours that the paint gives off in all',
      max: 10_000,
      usual: preset(
        0.2,
        0.02,
        6,
        `${COMMON}: 0.2 L/m2 of 0.1 to 30 g/L, the EU limit for matt wall paint since 2010`,
      ),
    },
    refuelling: {
      key: 'tvoc',
      description: 'Organic vapours that the stove lets out at each refuelling',
      max: 10_000,
      usual: preset(3, 0.5, 20, `${COMMON}: twice the mass of particles`),
    },
  },
  filter: {
    by: 'share',
    key: 'tvoc share',
    description: 'Share of the clean-air rate that holds for volatile organic compounds',
    usual: preset(0, 0, 0.3, `${COMMON}: a thin carbon layer does little`),
  },
} as const satisfies SpeciesFacts;
