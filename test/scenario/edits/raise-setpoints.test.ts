import { describe, expect, test } from 'vitest';
import { raiseRoomSetpoint, raiseSetpoints } from '../../../src/scenario/edits/raise-setpoints.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { settingsFromPatch } from '../../../src/scenario/yaml/settings-from-patch.ts';
import { variantScenario } from '../../../src/studies/plan-variant.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

const PROGRAMMES = [
  'heating: {}',
  'heating: { setpoint: 19 }',
  'heating: { setpoint: "66.2 °F", hours: ["06:00-09:00"], setback: 15 }',
  'heating: { setpoint: 20, night: { setpoint: 16, from: "22:00", to: "06:00" } }',
  'heating: { setpoint: [{ days: weekdays, from: "06:00", to: "08:00", setpoint: 19 }, { from: "17:00", to: "22:00", setpoint: 21 }], setback: 14 }',
  'heating: { setpoint: 20, setback: 12, hours: ["06:00-09:00"], rooms: { bedroom: 17 } }',
  'heating: { setpoint: 20, night: { setpoint: 16, from: "22:00", to: "06:00" }, rooms: { bedroom: { setpoint: 18, hours: always } } }',
];

/** Settings of each room by the clock, as the thermostats get them. */
function lines(text: string, set: readonly string[] = []) {
  const scenario = readOnce(homeWith(text), 'h.yaml');
  const { household } = preparePlan(scenario, { plan: null, set, files: new Map() });
  return household.setpoints;
}

const raised = (schedule: ReturnType<typeof lines>[number], kelvin: number, frost = 5) => ({
  // The frost guard, which holds where no setback is given, stays.
  base: schedule.base === frost ? frost : schedule.base + kelvin,
  spells: schedule.spells.map((spell) => ({
    ...spell,
    value: spell.value === frost ? frost : spell.value + kelvin,
  })),
});
const rawOf = (text: string) =>
  variantScenario(readOnce(homeWith(text), 'h.yaml'), { plan: 'as-lived', set: [] });

describe('every thermostat higher', () => {
  test.each(PROGRAMMES)('%s', (text) => {
    const set = settingsFromPatch(raiseSetpoints(rawOf(text), 2));
    expect(lines(text, set)).toEqual(lines(text).map((schedule) => raised(schedule, 2)));
  });

  test.each([
    ['12', 14],
    ['{ setpoint: 12, dates: [{ from: 12-27, to: 12-30 }] }', { setpoint: 14 }],
  ])('a holiday setback of %s too', (written, expected) => {
    const text = `heating: { setpoint: 20, holiday setback: ${written} }`;
    const away = `${text}\nhousehold: { holidays: [{ from: 08-01, to: 08-02 }] }`;
    const edit = raiseSetpoints(rawOf(away), 2) as { heating: Record<string, unknown> };
    const got = edit.heating['holiday setback'];
    if (typeof expected === 'number') expect(got).toBe(expected);
    else expect(got).toMatchObject(expected);
  });

  test('rooms that are off stay off, and without a source there is nothing', () => {
    const off = 'heating: { setpoint: 19, rooms: { bedroom: off } }';
    const [living, bedroom] = lines(off, settingsFromPatch(raiseSetpoints(rawOf(off), 2)));
    expect([living!.base, bedroom!.base]).toEqual([21, 5]);
    expect(raiseSetpoints(rawOf('heating: { source: none }'), 2)).toBeNull();
  });
});

describe('one room warmer', () => {
  test.each(PROGRAMMES)('%s', (text) => {
    const set = settingsFromPatch(raiseRoomSetpoint(rawOf(text), 'bedroom', 1.25));
    const [living, bedroom] = lines(text);
    expect(lines(text, set)).toEqual([living, raised(bedroom!, 1.25)]);
  });

  test('nothing for a room that is off', () => {
    expect(
      raiseRoomSetpoint(rawOf('heating: { rooms: { bedroom: off } }'), 'bedroom', 1),
    ).toBeNull();
  });
});

test('a change as settings: names with slashes, lists whole, null removing', () => {
  const change = { home: { rooms: { 'up/down': { panes: [{ area: 1 }], use: null } } }, empty: {} };
  expect(settingsFromPatch(change)).toEqual([
    '/home/rooms/up~1down/panes=[{"area":1}]',
    '/home/rooms/up~1down/use=null',
  ]);
});
