import { describe, expect, test } from 'vitest';
import { allOnHoliday } from '../../../../src/control/schedules/on-holiday.ts';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from '../../problems-of.ts';

const HOME = (more: string) =>
  homeWith(more).replace(
    '    bedroom:',
    '    kitchen: { floor area: 9 }\n    study: { floor area: 8 }\n    bedroom:',
  );
const prepared = (more: string) =>
  preparePlan(readScenario(HOME(more), 'h.yaml'), { plan: null, set: [], files: new Map() });
const peopleOf = (more: string) => prepared(`household: { ${more} }`).household.people;
const said = (more: string) => readingProblems(HOME(`household: { ${more} }`));
const [LIVING, STUDY] = [0, 2];
const WEEKDAYS = 0b0011111;
const WEEKENDS = 0b1100000;

describe('the room used by day', () => {
  const evenings = (person: string) =>
    peopleOf(`people: [${person}]`)[0]!
      .schedule.filter(({ from }) => from >= 18 * 60 && from < 20 * 60)
      .map(({ room, days }) => [room, days]);

  test('differs by day of the week, and is as usual on days that are not named', () => {
    expect(evenings('{ lives in: [{ days: weekdays, room: study }] }')).toEqual([
      [STUDY, WEEKDAYS],
      [LIVING, WEEKENDS],
    ]);
    expect(
      evenings('{ lives in: [{ days: Fri, room: study }, { days: weekends, room: bedroom }] }'),
    ).toEqual([
      [STUDY, 0b0010000],
      [LIVING, 0b0001111],
      [3, WEEKENDS],
    ]);
    expect(evenings('{ lives in: study }')).toEqual([
      [STUDY, WEEKDAYS],
      [STUDY, WEEKENDS],
    ]);
  });

  test('mistakes are answered in words', () => {
    expect(
      said(
        'people: [{ lives in: [{ days: Mon, room: living }, { days: weekdays, room: study }] }]',
      ),
    ).toEqual([
      'h.yaml:10:65: household.people #1.lives in #2: expected every day of the week in one room, got a day named before',
    ]);
    expect(said('people: [{ lives in: [{ room: studdy }] }]')).toEqual([
      'h.yaml:10:44: household.people #1.lives in #1.room: expected the name of a room: living, kitchen, study, bedroom, got "studdy" (did you mean "study"?)',
    ]);
    expect(said('people: [{ lives in: 3 }]')[0]).toContain(
      'household.people #1.lives in: expected the name of a room, or a list of { days, room }, got 3',
    );
  });
});

describe('a room to work in', () => {
  test('makes a person work at home there', () => {
    const [worker] = peopleOf('people: [{ works in: bedroom }]');
    const desk = worker!.schedule.filter(({ asleep, from }) => !asleep && from === 8 * 60 + 30);
    expect(desk.map(({ room, days }) => [room, days])).toContainEqual([3, WEEKDAYS]);
    // Without it the study is the desk.
    const [usual] = peopleOf('people: [{ pattern: works at home }]');
    expect(usual!.schedule.find(({ from }) => from === 8 * 60 + 30)?.room).toBe(STUDY);
  });

  test('beside another pattern, or a schedule, is refused', () => {
    expect(said('people: [{ pattern: at home, works in: study }]')).toEqual([
      'h.yaml:10:53: household.people #1.works in: expected a room to work in only beside the pattern works at home, got "at home"',
    ]);
    expect(
      said(
        'people: [{ schedule: [{ room: living, from: "08:00", to: "09:00" }], works in: study }]',
      )[0],
    ).toContain('only beside the pattern works at home, got a schedule');
    expect(said('people: [{ works in: office }]')[0]).toContain('expected the name of a room');
  });
});

describe('guests', () => {
  const PARTY =
    'guests: [{ number: 3, days: Sat, months: Dec, room: kitchen, from: "19:00", to: "01:00" }]';

  test('are people at their time, in their room', () => {
    const people = peopleOf(`people: [{}], ${PARTY}`);
    expect(people.map(({ guest }) => guest === true)).toEqual([false, true, true, true]);
    expect(people[1]!.schedule).toEqual([
      { days: 0b0100000, months: 1 << 11, from: 1140, to: 1500, room: 1, asleep: false },
    ]);
    expect(people[1]!.awake).toEqual(people[0]!.awake);
    const [child] = peopleOf('people: [], guests: [{ who: child, from: "14:00", to: "18:00" }]');
    expect(child!.schedule[0]!.room).toBe(LIVING);
    expect(child!.awake.sensible).toBeLessThan(people[0]!.awake.sensible);
  });

  test('stay away on holidays, and do not keep a home from being on holiday', () => {
    const { household } = prepared(
      `household: { people: [{}], holidays: [{ from: 12-01, to: 12-31 }], ${PARTY} }`,
    );
    expect(household.people[1]!.holidays).toEqual([{ from: 1201, to: 1231 }]);
    const december = Date.UTC(2023, 11, 9) / 86_400_000;
    expect(allOnHoliday(household, december)).toBe(true);
    expect(allOnHoliday({ ...household, people: household.people.slice(1) }, december)).toBe(false);
  });

  test('mistakes are answered in words', () => {
    expect(said('guests: [{ room: attic, from: "19:00", to: "23:00" }]')[0]).toContain(
      'household.guests #1.room: expected the name of a room: living, kitchen, study, bedroom, got "attic"',
    );
    expect(said('guests: [{ from: "19:00" }]')[0]).toContain(
      'household.guests #1.to: expected a local time such as "06:30"',
    );
    expect(said('guests: [{ number: 0, from: "19:00", to: "20:00" }]')[0]).toContain(
      'household.guests #1.number: expected a whole number from 1 to 50, got 0',
    );
  });
});

test('a tumble dryer gives its electricity as heat, less that of the little water it lets by', () => {
  const { household, assumed } = prepared(
    'household: { activities: [{ what: tumble dryer, days: Sun }] }',
  );
  const [dryer] = household.activities;
  // 2.2 kWh over two hours, and 0.3 L at 2.454 MJ/kg, by hand.
  expect(dryer!.electricity).toBeCloseTo(1100, 6);
  expect(dryer!.heat).toBeCloseTo(1100 - (0.3 * 2.454e6) / 7200, 6);
  expect(dryer!.vapour).toBeCloseTo(0.3 / 7200, 12);
  expect(dryer!.drying).toBe(0);
  expect(assumed.find(({ path }) => path.endsWith('activities/0/energy'))).toMatchObject({
    low: 1.5,
    high: 5.3,
  });
});

describe('a purifier', () => {
  const device = (more: string) => `devices: { cleaner: { kind: purifier, room: living${more} } }`;
  const controlOf = (more: string) => prepared(device(more)).automation.deviceControls[0]!.by;

  test('runs by TVOC, with levels from its band where none are given', () => {
    expect(controlOf(', runs: by tvoc, target: 400, deadband: 100')).toMatchObject({
      kind: 'reading',
      on: { quantity: 'tvoc', room: 0, is: 'above', value: 450, clear: 350 },
    });
    // The band is up to 1000 µg/m3: half of it, give or take a tenth.
    expect(controlOf(', runs: by tvoc')).toMatchObject({ on: { value: 600, clear: 400 } });
    expect(controlOf(', runs: by particles')).toMatchObject({ on: { quantity: 'pm25' } });
    expect(controlOf(', runs: by rules')).toEqual({ kind: 'rule' });
    expect(controlOf('')).toEqual({ kind: 'always' });
  });

  test('needs the sensor that it runs by', () => {
    expect(readingProblems(HOME(`${device(', runs: by tvoc')}\nsensors: { tvoc: none }`))).toEqual([
      'h.yaml:10:59: devices.cleaner.runs: expected a tvoc sensor in living, got none there',
    ]);
  });
});
