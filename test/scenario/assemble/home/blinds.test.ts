import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { BLINDS, uShareOf } from '../../../../src/scenario/presets/blinds.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from '../../problems-of.ts';

const said = (more: string) => readingProblems(homeWith(more)).join('\n');

function prepared(more: string, set: readonly string[] = []) {
  const scenario = readScenario(homeWith(more), 'h.yaml');
  return preparePlan(scenario, { plan: null, set, files: new Map() });
}

test('a home without the section has no blinds', () => {
  const { home, household, automation } = prepared('');
  expect([home.blinds, household.blinds, automation.blinds]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test('blinds by the clock hang over all panes of the rooms that are named', () => {
  const plan = prepared(
    'blinds: [{ rooms: [bedroom, living], kind: curtain, g share: 0.7, u share: 80 %, hours: { months: May-Sep, from: "09:00", to: "19:00" } }]',
    ['/home/rooms/bedroom/panes=[{ area: 1 }, { area: 2 }]'],
  );
  expect(plan.home.blinds).toEqual([
    { name: 'living window curtain', pane: 0, inside: true, gShare: 0.7, uShare: 0.8 },
    { name: 'bedroom window curtain', pane: 1, inside: true, gShare: 0.7, uShare: 0.8 },
    { name: 'bedroom window 2 curtain', pane: 2, inside: true, gShare: 0.7, uShare: 0.8 },
  ]);
  const spell = { days: 127, months: 0b0001_1111_0000, from: 540, to: 1140, value: 1 };
  expect(plan.household.blinds).toEqual([0, 1, 2].map(() => ({ base: 0, spells: [spell] })));
  const free = { sunAbove: -Infinity, roomAbove: -Infinity };
  expect(plan.automation.blinds).toEqual([free, free, free]);
  expect(plan.assumed.filter(({ path }) => path.startsWith('/blinds'))).toEqual([]);
});

test('levels close them at any hour where no hours are given', () => {
  const plan = prepared(
    'blinds: [{ pane: bedroom window, sun over: 150 W/m2, temperature over: 24 }]',
  );
  expect(plan.household.blinds).toEqual([{ base: 1, spells: [] }]);
  expect(plan.automation.blinds).toEqual([{ sunAbove: 150, roomAbove: 24 }]);
  expect(plan.home.blinds).toMatchObject([{ pane: 1, inside: true }]);
});

test('all rooms are those with panes; panes of one name have blinds of their own names', () => {
  const { home } = prepared('blinds: [{ rooms: all, kind: outside slats, hours: always }]', [
    '/home/rooms/living/panes=[]',
    '/home/rooms/bedroom/panes=[{ name: sash }, { name: sash }]',
  ]);
  expect(home.blinds?.map(({ name, pane }) => [name, pane])).toEqual([
    ['sash outside slats', 0],
    ['sash outside slats 2', 1],
  ]);
});

describe('what nobody gives', () => {
  test('is listed with its range, and can be given at its path', () => {
    const set = ['/home/build/window u-value=2.8'];
    const plan = prepared('blinds: [{ room: bedroom, hours: always }]', set);
    const rows = plan.assumed.filter(({ path }) => path.startsWith('/blinds'));
    // 1 / (1 + 2.8 x 0.06) and with 0.12 and 0.02, by hand.
    expect(rows).toMatchObject([
      { path: '/blinds/0/kind', value: 'inside blind', low: null },
      { path: '/blinds/0/g share', value: 0.75, low: 0.5, high: 0.9 },
      { path: '/blinds/0/u share', value: 0.856, low: 0.749, high: 0.947 },
    ]);
    const given = prepared('blinds: [{ room: bedroom, hours: always }]', [
      ...set,
      ...rows.map(({ path, value }) => `${path}=${value}`),
    ]);
    expect(given.assumed.filter(({ path }) => path.startsWith('/blinds'))).toEqual([]);
    expect(given.home.blinds).toEqual(plan.home.blinds);
  });

  test.each(Object.entries(BLINDS))('lies within its range: %s', (_, { gShare, resistance }) => {
    const uShare = uShareOf(resistance, 2.8);
    for (const { value, low, high, source } of [gShare, resistance, uShare]) {
      expect(low).toBeLessThan(value);
      expect(value).toBeLessThan(high);
      expect(source).not.toBe('');
    }
    expect(gShare.low).toBeGreaterThan(0);
    expect(Math.max(gShare.high, uShare.high)).toBeLessThanOrEqual(1);
  });
});

describe('what cannot be', () => {
  test.each([
    [
      'a pane that does not exist',
      'blinds: [{ pane: bedrom window, hours: always }]',
      'h.yaml:8:18: blinds #1.pane: expected a pane: living window, bedroom window, got "bedrom window" (did you mean "bedroom window"?)',
    ],
    [
      'rooms that do not exist',
      'blinds: [{ rooms: [bedrom], hours: always }, { room: livng, hours: always }]',
      'h.yaml:8:20: blinds #1.rooms #1: expected the name of a room: living, bedroom, got "bedrom" (did you mean "bedroom"?)\n' +
        'h.yaml:8:54: blinds #2.room: expected the name of a room: living, bedroom, got "livng" (did you mean "living"?)',
    ],
    [
      'shares outside 0 to 1',
      'blinds: [{ room: living, g share: 1.2, u share: -10 %, hours: always }]',
      'h.yaml:8:35: blinds #1.g share: expected a share of 1 from 0 to 1, got 1.2\n' +
        'h.yaml:8:49: blinds #1.u share: expected a share of 1 from 0 to 1, got "-10 %"',
    ],
    [
      'levels of the wrong unit',
      'blinds: [{ room: living, sun over: 24 °C, temperature over: 150 W/m2 }]',
      'h.yaml:8:36: blinds #1.sun over: expected a power per area in W/m2, got "24 °C", which is a temperature\n' +
        'h.yaml:8:61: blinds #1.temperature over: expected a temperature in °C or °F, such as 20 or "68 °F", got "150 W/m2", which is a power per area',
    ],
    [
      'a kind that is not known',
      'blinds: [{ room: living, kind: curtains, hours: always }]',
      'h.yaml:8:32: blinds #1.kind: expected one of: roller shutter, outside slats, outside screen, inside blind, curtain, got "curtains" (did you mean "curtain"?)',
    ],
    [
      'two over one pane',
      'blinds: [{ room: bedroom, hours: always }, { pane: bedroom window, hours: always }]',
      'h.yaml:8:52: blinds #2.pane: expected panes without other blinds, got bedroom window, which has those of #1',
    ],
    [
      'nothing that closes them',
      'blinds: [{ room: bedroom, kind: curtain }]',
      'h.yaml:8:10: blinds #1: expected at least one of: hours; sun over; temperature over, which close it, got none of them',
    ],
    [
      'no place, or two',
      'blinds: [{ hours: always }, { room: living, pane: bedroom window, hours: always }]',
      'h.yaml:8:10: blinds #1: expected exactly one of: pane; or room; or rooms, got none of them\n' +
        'h.yaml:8:29: blinds #2: expected exactly one of: pane; or room; or rooms, got pane with room',
    ],
    [
      'no room at all',
      'blinds: [{ rooms: [], hours: always }]',
      'h.yaml:8:19: blinds #1.rooms: expected at least one room, got an empty list',
    ],
    [
      'hours that overlap',
      'blinds: [{ room: living, hours: ["09:00-12:00", "11:00-15:00"] }]',
      'h.yaml:8:49: blinds #1.hours #2: expected a time apart from that of #1, got both on monday at 11:00',
    ],
  ])('%s', (_, more, expected) => {
    expect(said(more)).toBe(expected);
  });

  test('rooms without a pane', () => {
    const bare = (blinds: string) =>
      readingProblems(
        homeWith(`blinds: [${blinds}]`).replaceAll('floor area: 1', 'panes: [], floor area: 1'),
      );
    expect(bare('{ room: living, hours: always }, { rooms: [bedroom], hours: always }')).toEqual([
      'h.yaml:8:18: blinds #1.room: expected a room with a pane, got living, which has none',
      'h.yaml:8:53: blinds #2.rooms #1: expected a room with a pane, got bedroom, which has none',
    ]);
    expect(bare('{ rooms: all, hours: always }')).toEqual([
      'h.yaml:8:19: blinds #1.rooms: expected a room with a pane, got a home without any',
    ]);
  });
});
