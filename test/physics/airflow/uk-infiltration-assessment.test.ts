import { describe, expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import {
  type UkDwelling,
  ukInfiltrationAssessment,
} from '../../reference/physics/airflow/uk-infiltration-assessment.ts';

const BUILT: UkDwelling = {
  volume: 250,
  openings: { 'intermittent fans': 2 },
  shelteredSides: 2,
  tightness: {
    by: 'build',
    storeys: 2,
    structure: 'masonry',
    floor: 'solid',
    lobby: true,
    draughtStripped: 0.9,
  },
};
const TESTED: UkDwelling = { ...BUILT, tightness: { by: 'test', q50: 5 } };

function check(what: string, expected: number, got: number): void {
  compare({
    topic: 'Infiltration',
    what: `UK assessment: ${what}`,
    unit: '1/h',
    source: 'SAP 10.2 section 2, worked by hand',
    mark: 'closed form',
    expected,
    got,
    tolerance: { absolute: 0.0005 },
    because: 'half the last digit printed',
  });
}

describe('ukInfiltrationAssessment', () => {
  test('a masonry house of 250 m3 by its build', () => {
    const { unsheltered, sheltered, effective } = ukInfiltrationAssessment(BUILT);
    check('two-storey masonry house', 0.6, unsheltered);
    check('the same, two sides sheltered', 0.51, sheltered);
    check('the same in January, 5.1 m/s', 0.711, effective[0]!);
    check('the same in September, 4.0 m/s', 0.63, effective[8]!);
    check('the same in August, 3.7 m/s', 0.611, effective[7]!);
    expect(effective).toHaveLength(12);
  });

  test('the same house after a pressure test', () => {
    const { unsheltered, sheltered, effective } = ukInfiltrationAssessment(TESTED);
    check('tested house, q50 5', 0.33, unsheltered);
    check('tested house, two sides sheltered', 0.2805, sheltered);
    check('tested house in January', 0.564, effective[0]!);
  });

  test('windows see to half an air change, and above one they add nothing', () => {
    const tight = ukInfiltrationAssessment({
      ...TESTED,
      openings: {},
      tightness: { by: 'test', q50: 0 },
    });
    expect(tight.effective).toEqual(Array(12).fill(0.5));
    const leaky = ukInfiltrationAssessment({
      ...TESTED,
      shelteredSides: 0,
      tightness: { by: 'test', q50: 40 },
    });
    expect(leaky.effective[0]).toBeCloseTo((leaky.sheltered * 5.1) / 4, 12);
  });

  test('every opening, storey, loose floor and missing lobby leaks', () => {
    const base = ukInfiltrationAssessment(BUILT).unsheltered;
    const chimney = { ...BUILT, openings: { ...BUILT.openings, 'open chimneys': 1 } };
    expect(ukInfiltrationAssessment(chimney).unsheltered - base).toBeCloseTo(80 / 250, 12);
    const changes = [
      [{ storeys: 3 }, 0.1],
      [{ structure: 'timber or steel' }, -0.1],
      [{ floor: 'suspended timber, sealed' }, 0.1],
      [{ floor: 'suspended timber, unsealed' }, 0.2],
      [{ lobby: false }, 0.05],
      [{ draughtStripped: 0.4 }, 0.1],
    ] as const;
    for (const [change, more] of changes) {
      const changed = { ...BUILT, tightness: { ...BUILT.tightness, ...change } } as UkDwelling;
      expect(ukInfiltrationAssessment(changed).unsheltered - base).toBeCloseTo(more, 12);
    }
  });

  test('refuses what no dwelling has, in words', () => {
    expect(() => ukInfiltrationAssessment({ ...BUILT, shelteredSides: 5 })).toThrow(
      'ukInfiltrationAssessment: sheltered sides must be between 0 and 4, got 5',
    );
    expect(() =>
      ukInfiltrationAssessment({ ...BUILT, openings: { 'passive vents': Number.NaN } }),
    ).toThrow('ukInfiltrationAssessment: number of passive vents must be between 0 and 100');
    expect(() => ukInfiltrationAssessment({ ...BUILT, volume: Number.NaN })).toThrow(RangeError);
    expect(() =>
      ukInfiltrationAssessment({ ...BUILT, tightness: { by: 'test', q50: Number.NaN } }),
    ).toThrow(RangeError);
  });
});
