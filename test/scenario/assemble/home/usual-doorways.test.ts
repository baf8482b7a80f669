import { expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

/** Doorways that nobody gave, by the names of their rooms, and what is said of them. */
function doorways(rooms: string) {
  const text = `title: t\nweather: w.csv\nsite: { latitude: 54, longitude: 0, timezone: UTC, elevation: 9 }\nhome: { rooms: { ${rooms} } }\n`;
  const scenario = readScenario(text, 'h.yaml');
  const { home, assumed } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  const said = assumed.find(({ path }) => path === '/home/doorways');
  return { names: home.doorways.map(({ name }) => name), said: said?.value };
}

test('rooms open to the hall of their storey, halls to the first', () => {
  const rooms = `kitchen: { floor area: 9 }, hall: { floor area: 6 },
    bedroom: { floor area: 12, over: kitchen }, landing: { floor area: 4, over: hall },
    loft room: { floor area: 8, use: bedroom, over: bedroom }`;
  expect(doorways(rooms)).toEqual({
    names: ['kitchen - hall', 'bedroom - landing', 'landing - hall', 'loft room - hall'],
    said: 'every room opens to the hall of its storey, halls to hall',
  });
});

test('where there is one hall or none, rooms open to it or to the first room', () => {
  const upstairs = 'bedroom: { floor area: 12, over: kitchen }';
  expect(doorways(`kitchen: { floor area: 9 }, hall: { floor area: 6 }, ${upstairs}`)).toEqual({
    names: ['kitchen - hall', 'bedroom - hall'],
    said: 'every room opens to hall',
  });
  expect(doorways(`kitchen: { floor area: 9 }, ${upstairs}`)).toEqual({
    names: ['bedroom - kitchen'],
    said: 'every room opens to kitchen',
  });
});

test('the door of a bedroom is shut for the night, from ten to seven, others stay open', () => {
  const text = `title: t\nweather: w.csv\nsite: { latitude: 54, longitude: 0, timezone: UTC, elevation: 9 }\nhome: { rooms: { kitchen: { floor area: 9 }, hall: { floor area: 6 }, bedroom: { floor area: 12 } } }\n`;
  const scenario = readScenario(text, 'h.yaml');
  const { household } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  expect(household.doorways).toMatchObject([
    { base: 1, spells: [] },
    { base: 1, spells: [{ from: 22 * 60, to: (24 + 7) * 60, value: 0 }] },
  ]);
});
