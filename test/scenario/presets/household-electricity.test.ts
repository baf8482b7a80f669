import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { householdElectricity } from '../../../src/scenario/presets/household-electricity.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { readOnce } from '../read-once.ts';

const row = { topic: 'Presets', unit: 'kWh a year' } as const;

test('a usual household uses what a medium user does', () => {
  compareBand({
    ...{ ...row, what: 'electricity of 2.4 people in 90 m2', mark: 'published' },
    source: 'Ofgem, typical domestic consumption values, 2022 and 2026',
    ...{ low: 2500, high: 2900, got: householdElectricity(2.4, 90).value },
    because: 'medium users of 2026 and of 2022',
  });
  expect(householdElectricity(2.4, 90).value, 'midway').toBeCloseTo(2700, 9);
});

test('it grows with people times floor area as the assessment of homes has it', () => {
  compare({
    ...{ ...row, unit: '-', what: 'electricity of twice the people over that of a household' },
    ...{ source: 'SAP 2012 appendix L: power 0.4714', mark: 'from memory' },
    ...{ expected: 1.3864, got: householdElectricity(4.8, 90).value / 2700 },
    ...{ tolerance: { absolute: 0.0001 }, because: 'four digits of the power' },
  });
  expect(householdElectricity(2.4, 180)).toEqual(householdElectricity(4.8, 90));
});

test('an evening has two fifths of a day’s, what is always on three tenths', () => {
  const text = `title: Home
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
home: { rooms: { den: { floor area: 50, use: living } } }
household: { people: [{ who: adult, pattern: at home }], activities: [{ what: lights and appliances }, { what: standby }] }
`;
  const plan = preparePlan(readOnce(text, 'h.yaml'), { plan: null, set: [], files: new Map() });
  const [evening, always] = plan.household.activities;
  const day = householdElectricity(1, 50).value / 365;
  expect((evening!.electricity * 330 * 60) / 3.6e6).toBeCloseTo(0.4 * day, 5);
  expect((always!.electricity * 86_400) / 3.6e6).toBeCloseTo(0.3 * day, 5);
});
