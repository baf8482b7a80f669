import { describe, expect, test } from 'vitest';
import { compareBand } from '../reference/compare.ts';
import { type HomeFigures, homeFigures } from './home-figures.ts';

const TOPIC = 'Demonstration homes beside surveys of lived-in homes';

/** Each home as it is lived in, with the room that surveys would call its living room and bedroom. */
const HOMES = [
  {
    ...{ home: 'terrace', file: 'terrace.yaml', bedroom: 'main bedroom', excess: 4.9 },
    excessSource: '90th percentile of detached houses in Finland, 3.4 to 4.9 g/m3 (Kalamees 2006)',
  },
  {
    ...{ home: 'flat', file: 'flat.yaml', bedroom: 'bedroom', excess: 6 },
    excessSource: '90th percentile of flats in Estonia, 6 g/m3 (Kalamees and others 2012)',
  },
  {
    ...{ home: 'stove cottage', file: 'stove-cottage.yaml', bedroom: 'bedroom', excess: 4.9 },
    excessSource: '90th percentile of detached houses in Finland, 3.4 to 4.9 g/m3 (Kalamees 2006)',
  },
] as const;

describe.each(HOMES)(
  'the $home as it is lived in',
  ({ home, file, bedroom, excess, excessSource }) => {
    const figures: HomeFigures = homeFigures(file, 'as-lived');
    const of = (values: readonly number[], room: string): number =>
      values[figures.rooms.indexOf(room)]!;
    const row = { topic: TOPIC, mark: 'published' } as const;

    test('uses the electricity of a household', () => {
      compareBand({
        ...{
          ...row,
          what: `${home}, electricity besides heating`,
          unit: 'kWh a year',
        },
        source:
          'Ofgem, typical domestic consumption values: low from July 2026, high from April 2020',
        ...{ low: 1600, high: 4300 },
        got: figures.electricity,
        because: 'from a low user of 2026 to a high one of 2020',
      });
    });

    test('is as warm as homes are at 5 °C outdoors', () => {
      for (const [room, mean] of [
        ['living', 19],
        [bedroom, 18.3],
      ] as const) {
        compareBand({
          ...{ ...row, what: `${home}, ${room} at 5 °C outdoors`, unit: '°C' },
          source: 'Warm Front study of 821 homes (Oreszczyn and others 2006)',
          ...{ low: mean - 2.5, high: mean + 2.5, got: of(figures.atFive, room) },
          because: 'mean of all homes, give or take a standard deviation of 2.5 K (from memory)',
        });
      }
    });

    test('has the vapour of homes that are lived in', () => {
      compareBand({
        ...{
          ...row,
          what: `${home}, vapour indoors beyond outdoors at 5 °C or less`,
          unit: 'g/m3',
        },
        ...{ source: excessSource, low: 0.5, high: excess, got: figures.vapourExcess },
        because: 'nine homes of ten are drier, few are much drier than half a gram',
      });
    });

    test('has the carbon dioxide of bedrooms at night', () => {
      compareBand({
        ...{
          ...row,
          what: `${home}, CO2 in the ${bedroom} at night, October to March`,
          unit: 'ppm',
        },
        source: 'bedrooms of new Scottish homes (Sharpe and others 2014)',
        ...{ low: 972, high: 2000, got: of(figures.nightCo2, bedroom) },
        because:
          'mean with windows open 972, mean of homes with door, window and vents shut up to 2000',
      });
    });

    test('has the fine particles of homes where nobody smokes', () => {
      compareBand({
        ...{ ...row, what: `${home}, PM2.5 in the living room, median of the year`, unit: 'µg/m3' },
        source: 'Scottish homes without smokers (Semple and others 2015)',
        ...{ low: 2, high: 6.5, got: of(figures.particles, 'living') },
        because: 'half of all homes lie between',
      });
    });

    test('takes the heat of a home', () => {
      const [low, high] = file === 'flat.yaml' ? [800, 4000] : [5500, 14_500];
      const source =
        file === 'flat.yaml'
          ? 'Ofgem, users of 2200 to 6700 kWh with a night tariff'
          : 'gas users of 8000 to 17000 kWh (Ofgem, typical domestic consumption values from April 2020)';
      compareBand({
        ...{ ...row, what: `${home}, energy for heat`, unit: 'kWh a year' },
        ...(file === 'flat.yaml' && { mark: 'from memory' as const }),
        ...{ source, low, high, got: figures.heatFuel },
        because: 'low and high user, less 2500 kWh of hot water and cooking (common practice)',
      });
      expect(figures.rooms).toContain('living');
    });
  },
);
