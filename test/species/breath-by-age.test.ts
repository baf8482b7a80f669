import { describe, expect, test } from 'vitest';
import { breathShare } from '../../src/scenario/presets/people.ts';
import {
  breathBetween,
  breathOfAge,
  GROWN,
  USUAL_ACTIVITY,
} from '../../src/species/breath-by-age.ts';
import { CARBON_DIOXIDE } from '../../src/species/carbon-dioxide.ts';
import { compare } from '../reference/compare.ts';
import {
  basalMetabolicRate,
  carbonDioxidePerPerson,
} from '../reference/physics/air-quality/carbon-dioxide-per-person.ts';

const TABLE = 'Persily and de Jonge 2017, Indoor Air 27, table 4 (two secondary copies agree)';
const TOPIC = 'Air quality';

/** The table counts at 0 °C and 101 kPa, the program at 20 °C and 101.325 kPa. */
const asPrinted = (perHour: number): number =>
  (perHour / 3.6) * (273.15 / 293.15) * (101.325 / 101);

describe('breath by age', () => {
  test.each([
    [0.5, 0.0014, 0.0014],
    [2, 0.0024, 0.0022],
    [4, 0.003, 0.0028],
    [8, 0.004, 0.0037],
    [13, 0.0054, 0.0047],
    [18, 0.006, 0.0047],
    [25, 0.0064, 0.005],
    [35, 0.0061, 0.0047],
    [45, 0.0062, 0.0048],
    [55, 0.0062, 0.0048],
    [65, 0.0053, 0.0044],
    [75, 0.0051, 0.0042],
    [85, 0.0048, 0.004],
  ])('at %d years, 1.6 met', (age, man, woman) => {
    compare({
      topic: TOPIC,
      what: `CO2 at ${age} years and 1.6 met, mean of the sexes`,
      ...{ unit: 'L/s', source: TABLE, mark: 'published' },
      ...{ expected: (man + woman) / 2, got: asPrinted(breathOfAge(age, 1.6)) },
      tolerance: { absolute: 0.00009 },
      because:
        'rounding of both columns: ours comes from the one for 2 met, 0.8 times half a digit',
    });
  });

  test('a man and a woman of 65 kg and more by the equation behind the table', () => {
    const of = (sex: 'male' | 'female', mass: number) =>
      carbonDioxidePerPerson(1, basalMetabolicRate(sex, 25, mass), 20);
    compare({
      topic: TOPIC,
      what: 'CO2 at 25 years and 1 met, by basal metabolic rate',
      ...{ unit: 'L/s', source: 'Persily and de Jonge 2017, equation; Schofield 1985' },
      ...{ mark: 'from memory', expected: (of('male', 84.9) + of('female', 72.9)) / 2 },
      ...{ got: breathOfAge(25, 1) / 3.6, tolerance: { relative: 0.02 } },
      because: 'rounding of the table, and masses from memory (84.9 and 72.9 kg)',
    });
  });

  test.each(['awake', 'asleep'] as const)('a grown person %s', (state) => {
    const given = CARBON_DIOXIDE.sources.body[state].value;
    const { from, below } = GROWN;
    // Printed to 0.1 L/h.
    expect(given).toBeCloseTo(breathBetween(from, below, USUAL_ACTIVITY[state]), 4);
  });

  test('who is told by kind breathes like the ages of that kind', () => {
    expect(breathShare('adult', undefined)).toBe(1);
    expect(breathShare('adult', 8)).toBe(breathShare('child', undefined));
    // By hand from the rows at 2 met: (1.8 + 1.7)/2 over the mean of 4 rows of grown people, 6.9.
    expect(breathShare('infant', undefined)).toBeCloseTo(1.75 / 6.9, 12);
    expect(breathShare('child', undefined)).toBeCloseTo(4.8 / 6.9, 12);
    expect(breathShare('frail adult', undefined)).toBeCloseTo(5.675 / 6.9, 12);
  });
});
