import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

function asked(people: string, airing: string, beside = ''): string[] {
  const more = `household: { people: ${people}, airing: [${airing}]${beside} }`;
  const scenario = readOnce(homeWith(more), 'h.yaml');
  const { cautions } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  return cautions.filter(({ id }) => id === 'nobody-airs').map(({ text }) => text);
}

/** At home from 17:00 to 08:00 on weekdays, and all of Sunday. */
const WORKER = `[{ name: one, schedule: [
  { room: bedroom, days: weekdays, from: "17:00", to: "08:00" },
  { room: bedroom, days: Sun, from: "00:00", to: "24:00" }] }]`;
const text = (time: string, days: string, windows = 'bedroom') =>
  `Airing of ${windows} at ${time} finds nobody at home ${days}; the windows stay shut then. Is another time meant, or a motor that opens them (by: motor)?`;

test('airing by the clock in an empty home is asked about, with its days', () => {
  const at = (time: string, days = '') => asked(WORKER, `{ room: bedroom, at: "${time}"${days} }`);
  expect(at('12:00')).toEqual([
    text('12:00', 'on Monday, Tuesday, Wednesday, Thursday, Friday and Saturday'),
  ]);
  expect(at('12:00', ', days: weekdays')).toEqual([text('12:00', 'on weekdays')]);
  expect(at('12:00', ', days: [Sat, Sun]')).toEqual([text('12:00', 'on Saturday')]);
  expect(at('12:00', ', days: Sun')).toEqual([]);
  // Saturday has the end of Friday's night, whose day begins at midnight.
  expect(at('07:59', ', days: Sat')).toEqual([]);
  expect(at('07:59', ', days: Mon')).toEqual([text('07:59', 'on Monday')]);
});

test('a guest opens no windows', () => {
  const guest = ', guests: [{ days: Tue, from: "10:00", to: "14:00" }]';
  expect(asked(WORKER, '{ room: bedroom, at: "12:00", days: Tue }', guest)).toEqual([
    text('12:00', 'on Tuesday'),
  ]);
});

test('who left a quarter of an hour ago has opened the window', () => {
  const at = (time: string) => asked(WORKER, `{ room: bedroom, at: "${time}", days: Tue }`);
  expect(at('08:14')).toEqual([]);
  expect(at('08:15')).toEqual([text('08:15', 'on Tuesday')]);
  expect(at('16:59')).toEqual([text('16:59', 'on Tuesday')]);
  expect(at('17:00')).toEqual([]);
});

test('times of one habit go together where their days do, rooms and openings by their names', () => {
  expect(
    asked(WORKER, '{ rooms: all, at: ["10:00", "07:00", "11:30"], days: [Tue, Sat] }'),
  ).toEqual([text('10:00 and 11:30', 'on Tuesday and Saturday', 'all rooms')]);
});

test('a home in which nobody lives is none of that, nor habits that wait for somebody', () => {
  expect(asked('[]', '{ room: bedroom, at: "12:00" }')).toEqual([]);
  expect(
    asked(WORKER, '{ room: bedroom, when: [{ room: bedroom, reading: co2, over: 1000 }] }'),
  ).toEqual([]);
  expect(asked(WORKER, 'usual')).toEqual([]);
  expect(asked(WORKER, '{ room: bedroom, at: "12:00", by: motor }')).toEqual([]);
});
