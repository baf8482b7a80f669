import { type Preset, preset } from '../units/preset.ts';
import type { SpeciesFacts } from './species-facts.ts';
import { type FilterGroup, HOLDS_NONE } from './supply-filter.ts';

const JUDGED = 'own judgement';

/**
 * Grass pollen: coarse grains that come in by windows and settle; carried where the scenario asks for it.
 *
 * Deposition, published: 5.2 1/h for particles of more than 10 µm with the fan off (Howard-Reed, Wallace
 * and Emmerich 2003, Atmospheric Environment 37, abstract).
 */
export const COARSE_GRAINS = {
  name: 'pollen',
  symbol: 'pollen',
  words: 'Grass pollen',
  plainName: 'pollen',
  alsoCalled: ['pollens', 'grass pollen'],
  unit: 'grains/m3',
  role: 'pollutant',
  onRequest: true,
  outdoors: preset(9, 2, 30, `${JUDGED}: mean of a year with its season from May to August`),
  outdoorsByMonth: [0, 0, 0, 0, 10, 50, 40, 8, 0, 0, 0, 0],
  penetration: preset(0.2, 0, 0.5, `${JUDGED}: grains of 20 to 40 µm are caught in cracks`),
  windowPenetration: preset(
    1,
    0.1,
    1,
    `${JUDGED}: nothing holds grains back but a screen, which may catch most`,
  ),
  deposition: preset(
    4,
    1,
    10,
    `${JUDGED}: grains alone would settle at 20 to 50 1/h, floors raise them again`,
  ),
  band: {
    high: 30,
    hours: 24,
    reason: 'UK scale, as in NHS guidance: low under 30 grains/m3, the mean of a day',
    counted: 'any time',
  },
  limits: { level: 10_000, band: 1e5, weather: [0, 20_000], weatherHint: '' },
  sensor: {
    bias: preset(0, -10, 10),
    noise: preset(5, 1, 20),
    step: preset(1, 1, 10),
    lag: preset(5, 1, 15),
    every: preset(60, 15, 120),
  },
  sources: {},
  filter: {
    by: 'share',
    key: 'pollen share',
    description: 'Share of the clean-air rate that holds for pollen',
    usual: preset(1, 0.7, 1),
  },
  supplyFilter: {
    key: 'pollen held',
    description: 'Share of the pollen outdoors that the filter of the supply air holds back',
    held: ({ group }) => HELD[group],
  },
} as const satisfies SpeciesFacts;

const WHOLE = `${JUDGED}: ISO 16890 asks for half and more of what is finer than a grain; fragments of grains pass`;
/** Of whole grains, by the group of a filter's class. [-] */
const HELD: Readonly<Record<FilterGroup, Preset>> = {
  none: HOLDS_NONE,
  coarse: preset(
    0.8,
    0.5,
    0.95,
    `${JUDGED}: grains of 20 to 40 µm are as coarse as much of the test dust`,
  ),
  ePM10: preset(0.95, 0.85, 1, WHOLE),
  'ePM2.5': preset(0.98, 0.9, 1, WHOLE),
  ePM1: preset(0.98, 0.9, 1, WHOLE),
};
