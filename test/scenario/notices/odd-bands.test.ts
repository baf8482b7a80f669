import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

/** Questions about the bands of a home of a living room and a bedroom. */
function asked(bands: string, ofBedroom = '', more = ''): string[] {
  const text = homeWith(`${bands === '' ? '' : `bands: { ${bands} }`}\n${more}`).replace(
    'bedroom: { floor area: 12 }',
    `bedroom: { floor area: 12${ofBedroom === '' ? '' : `, bands: { ${ofBedroom} }`} }`,
  );
  const scenario = readOnce(text, 'h.yaml');
  const { cautions } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  return cautions.filter(({ id }) => id.startsWith('odd-')).map((one) => `${one.id}: ${one.text}`);
}

describe('bands in another unit', () => {
  const SHARE =
    'goes by 0.60 % relative humidity, drier than any home. If that is a share of 1, write 60.';

  test('are asked about once for all rooms', () => {
    expect(asked('humidity: { high: 0.6 }')).toEqual([`odd-level: The band of humidity ${SHARE}`]);
    expect(asked('humidity: { low: 0.4, high: 60 }')).toEqual([
      'odd-level: The band of humidity goes by 0.40 % relative humidity, drier than any home. If that is a share of 1, write 40.',
    ]);
    expect(asked('co2: { high: 0.1 }')).toEqual([
      'odd-level: The band of CO2 goes by 0.10 ppm of CO2, less than any air holds. If that is %, write 1000.',
    ]);
  });

  test('of carbon dioxide up to 1 %, which is 10 000 ppm', () => {
    expect(asked('co2: { high: 1 }')).toEqual([
      'odd-level: The band of CO2 goes by 1 ppm of CO2, less than any air holds. If that is %, write 10000.',
    ]);
  });

  test('of one room name it', () => {
    expect(asked('', 'humidity: { low: 0, high: 0.6 }')).toEqual([
      `odd-level: The band of humidity (bedroom) ${SHARE}`,
    ]);
  });
});

test('a band that ends below the edge where it usually begins is asked about', () => {
  expect(asked('humidity: { high: 35 }')).toEqual([
    'odd-band: The band of humidity ends at 35 %, below the 40 % at which it begins, so that nothing counts as fine. Give both edges.',
  ]);
  // 60 °F are 15.555... °C.
  expect(asked('temperature: { high: 60 °F }')).toEqual([
    'odd-band: The band of temperature ends at 15.56 °C, below the 18 °C at which it begins, so that nothing counts as fine. Give both edges.',
  ]);
  // A living room and a bedroom begin at 18 °C.
  expect(asked('temperature: { low: 18 }', 'temperature: { high: 17 }')).toEqual([
    'odd-band: The band of temperature (bedroom) ends at 17 °C, below the 18 °C at which it begins, so that nothing counts as fine. Give both edges.',
  ]);
});

test('a band of an own species is told in its unit', () => {
  const radon = 'radon: { unit: Bq/m3, outdoors: 10, label: Radon, band: { high: 300 } }';
  expect(asked('radon: { low: 400 }', '', `air: { own species: { ${radon} } }`)).toEqual([
    'odd-band: The band of Radon ends at 300 Bq/m3, below the 400 Bq/m3 at which it begins, so that nothing counts as fine. Give both edges.',
  ]);
});

test.each([
  '',
  'humidity: { high: 55 }',
  'humidity: { low: 0, high: 35 }',
  'humidity: { low: 20 % }',
  'humidity: { low: 60 }', // with the usual upper edge nothing but 60 % is fine, as somebody says
  'temperature: { low: 16, high: 24 }',
  'temperature: { high: 50 }',
  'co2: { high: 800 }',
])('%s can be meant', (bands) => {
  expect(asked(bands)).toEqual([]);
});
