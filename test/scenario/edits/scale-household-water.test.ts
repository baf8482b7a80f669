import { describe, expect, test } from 'vitest';
import { householdWater } from '../../../src/scenario/edits/scale-household-water.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { variantScenario } from '../../../src/studies/plan-variant.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

const ACTIVITIES =
  '[{ what: other, at: "08:00", water: 2 L }, ' +
  '{ what: laundry dried indoors, at: "09:00", days: [Mon, Thu], months: [Jan, Feb, Mar], water: 7 L }, ' +
  '{ what: plants, number: 4, water: 0.1 L }, { what: fridge }, { what: shower, at: ["07:00", "07:20"] }]';
const scenario = readOnce(homeWith(`household: { activities: ${ACTIVITIES} }`), 'h.yaml');
const raw = variantScenario(scenario, { plan: 'as-lived', set: [] });

describe('water of a household', () => {
  const water = householdWater(raw)!;

  test('by hand: 2, twice 7 a week in a quarter of the months, 4 plants, two showers of 0.42', () => {
    expect(water.litres_a_day).toBeCloseTo(2 + (2 * 7) / 7 / 4 + 0.4 + 2 * 0.42, 9);
  });

  test('all of it so many times as much, as settings that are understood', () => {
    const set = water.times(1.5);
    expect(set).toHaveLength(4); // the fridge gives none
    const wetter = householdWater(variantScenario(scenario, { plan: 'as-lived', set }))!;
    expect(wetter.litres_a_day).toBeCloseTo(1.5 * water.litres_a_day, 9);
    const rates = (words: readonly string[]) =>
      preparePlan(scenario, { plan: null, set: words, files: new Map() }).household.activities.map(
        ({ vapour, drying }) => vapour + drying,
      );
    expect(rates(set)).toEqual(rates([]).map((rate) => expect.closeTo(1.5 * rate, 12)));
  });

  test('unknown where the activities are the assumed ones, or give no water', () => {
    const text = (more: string) =>
      variantScenario(readOnce(homeWith(more), 'h.yaml'), { plan: 'as-lived', set: [] });
    expect(householdWater(text(''))).toBeNull();
    expect(householdWater(text('household: { activities: [{ what: fridge }] }'))).toBeNull();
    expect(householdWater({ title: 'no scenario' })).toBeNull();
  });
});
