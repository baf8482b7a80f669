import { expect, test } from 'vitest';
import { heatAdjustables } from '../../../src/scenario/edits/adjustables.ts';

/** A scenario of three rooms, of which some are cooled. */
const withCooling = (cooling: unknown) => ({
  ...{ title: 'A', weather: 'w.csv', site: { latitude: 54, longitude: -2 } },
  home: {
    rooms: Object.fromEntries(['den', 'bed', 'hall'].map((name) => [name, { 'floor area': 14 }])),
  },
  cooling,
});

/** What a fit looks for of cooling, where rooms that are logged may have been cooled. */
function sought(
  cooling: unknown,
  doubts: Parameters<typeof heatAdjustables>[2] = [],
  cooled = true,
) {
  const logged = { humid: [], warm: [], metered: [], mild: false, species: [], cooled };
  return heatAdjustables(withCooling(cooling), [], doubts, logged).filter(({ name }) =>
    name.includes('cooling'),
  );
}
const SETPOINT = '/cooling/setpoint';

test('of setpoints that are stated one error is looked for, by which all of them are lower', () => {
  const rooms = { den: 22, bed: { setpoint: 23 }, hall: {} };
  const [error, ...more] = sought({ source: 'ideal', setpoint: 24, rooms });
  expect(more).toEqual([]);
  expect(error).toMatchObject({ name: 'thermostat error of cooling', unit: 'K', before: 0 });
  expect(error!.places.map(({ path, at }) => [path, at(1.5)])).toEqual([
    [SETPOINT, 22.5],
    ['/cooling/rooms/den', 20.5],
    ['/cooling/rooms/bed/setpoint', 21.5],
  ]);
});

test('a setpoint that is doubted is looked for itself, and nothing without warm days or a number', () => {
  const doubts = [{ path: SETPOINT, low: 22, high: 27 }];
  const [setpoint, ...more] = sought({ source: 'ideal', setpoint: 24, rooms: 'all' }, doubts);
  expect(more).toEqual([]);
  expect(setpoint).toMatchObject({ name: 'cooling setpoint', low: 22, high: 27, before: 24 });
  expect(setpoint!.places.map(({ path, at }) => [path, at(25)])).toEqual([[SETPOINT, 25]]);
  expect(sought({ source: 'ideal', setpoint: 24, rooms: 'all' }, doubts, false)).toEqual([]);
  expect(sought({ source: 'ideal', rooms: 'all' })).toEqual([]);
});
