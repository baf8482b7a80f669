import { expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

/** Heights of the floors of rooms over that of the ground floor, by name. [m] */
function elevations(rooms: string) {
  const text = `title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30 }
home: { build: { floor depth: 0.3 }, rooms: { ${rooms} } }
`;
  const scenario = readScenario(text, 'h.yaml');
  const { home } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  return Object.fromEntries(home.rooms.map(({ name, elevation }) => [name, elevation!]));
}

const LIVING = 'living: { floor area: 20, height: 2.4 }, hall: { floor area: 5, height: 2.6 }';

test('a storey lies over the highest room below it and its floor, a cellar under its own', () => {
  const found = elevations(
    `${LIVING}, cellar: { use: storage, floor area: 20, height: 2.1, storey: -1 }, bedroom: { floor area: 20, height: 2.4, storey: 1 }`,
  );
  expect(found['living']).toBe(0);
  expect(found['bedroom']).toBeCloseTo(2.6 + 0.3, 12);
  expect(found['cellar']).toBeCloseTo(-2.1 - 0.3, 12);
});

test('a storey without rooms is as high as the highest room of the home', () => {
  const { bedroom } = elevations(`${LIVING}, bedroom: { floor area: 20, height: 2.2, storey: 2 }`);
  expect(bedroom).toBeCloseTo(2 * (2.6 + 0.3), 12);
});
