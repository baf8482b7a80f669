import { expect, test } from 'vitest';
import { homeWith, readingProblems } from '../problems-of.ts';

test('names that could not be told apart from other words', () => {
  const rooms = '    outdoors: { floor area: 5 }\n    " den": { floor area: 5 }\n    "": 5';
  const plans = 'plans: { "a,b": { change: {} } }';
  const [first, ...more] = readingProblems(homeWith(`${rooms}\n${plans}`));
  expect(first).toBe(
    'h.yaml:8:5: home.rooms.outdoors: expected another name than all or outdoors or here, which mean more, got "outdoors"',
  );
  expect(more).toContain(
    'h.yaml:9:5: home.rooms. den: expected a name on one line, with no blanks at its ends, got " den"',
  );
  expect(more).toContain(
    'h.yaml:10:5: home.rooms."": expected a name on one line, with no blanks at its ends, got ""',
  );
  expect(more).toContain(
    'h.yaml:11:10: plans.a,b: expected a name without commas, which stand between names, got "a,b"',
  );
});

test('a plan whose change is a list is told once', () => {
  expect(readingProblems(homeWith('plans: { a: { change: {} }, b: { change: [1] } }'))).toEqual([
    'h.yaml:8:42: plans.b.change: expected a mapping shaped like this file, got a list of 1',
  ]);
});

test('activities that nobody does are told beside other mistakes', () => {
  const more = `household: { airing: [{ room: living, after: cookng }] }
devices: { fan: { kind: extract fan, room: bedroom, flow: -60, runs: with activities, with: [shover] } }`;
  const known =
    'shower, bath, cooking, light meal, dishes, laundry dried indoors, plants, fridge, lights and appliances, standby, candles, cleaning, tumble dryer, other';
  expect(readingProblems(homeWith(more))).toEqual([
    `h.yaml:8:46: household.airing #1.after: did you mean "cooking"? Expected an activity of the household: ${known}, got "cookng"`,
    'h.yaml:9:59: devices.fan.flow: expected a flow of air in m3/h above 0 and up to 5000, got -60',
    `h.yaml:9:93: devices.fan.with: did you mean "shower"? Expected an activity of the household: ${known}, got "shover"`,
  ]);
});
