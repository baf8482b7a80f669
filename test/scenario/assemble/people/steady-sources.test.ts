import { expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

const planOf = (rooms: string, household = '') => {
  const text = `title: A
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 0, timezone: UTC }
home: { rooms: { den: { floor area: 9${rooms} } } }
household: { people: [{ who: adult }], activities: [{ what: shower, room: den, water: 0.6 L, lasts: 10 min }]${household} }`;
  return preparePlan(readScenario(text, 'h.yaml'), {
    ...{ plan: 'as-lived', set: [], files: new Map() },
  });
};

test('steady moisture and heat are given to the room at all hours, without electricity', () => {
  const { activities } = planOf(', steady moisture: 36 g/h, steady heat: 50 W').household;
  expect(activities).toHaveLength(2);
  // 36 g/h is 1e-5 kg/s
  expect(activities[1]).toMatchObject({ room: 0, heat: 50, electricity: 0, drying: 0 });
  expect(activities[1]!.vapour).toBeCloseTo(1e-5, 12);
  expect(activities[1]!.when).toEqual([{ days: 0b1111111, from: 0, to: 1440 }]);
  expect(planOf('').household.activities).toHaveLength(1);
});

test('the moisture factor scales water of people and activities and nothing else', () => {
  const [usual, moist] = [planOf('').household, planOf('', ', moisture factor: 1.5').household];
  // 0.6 L in 600 s is 1e-3 kg/s
  expect(usual.activities[0]!.vapour).toBeCloseTo(1e-3, 12);
  expect(moist.activities[0]!.vapour).toBeCloseTo(1.5e-3, 12);
  expect(moist.people[0]!.awake.vapour).toBeCloseTo(1.5 * usual.people[0]!.awake.vapour, 12);
  expect(moist.people[0]!.awake.sensible).toBe(usual.people[0]!.awake.sensible);
});
