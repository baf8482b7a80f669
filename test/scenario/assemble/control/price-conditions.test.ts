import { describe, expect, test } from 'vitest';
import { createController } from '../../../../src/control/create-controller.ts';
import { createDayInputs } from '../../../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../../../src/control/fill-day-inputs.ts';
import {
  createCommands,
  createObservation,
  followSchedules,
} from '../../../../src/control/observations.ts';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from '../../problems-of.ts';

const RULE = (levels: string) =>
  `rules: [{ name: cheap, when: [{ price: electricity, ${levels} }], response: [{ run: drier }] }]
devices: { drier: { kind: dehumidifier, room: bedroom, runs: by rules } }
`;
const NIGHT = 'money: { electricity: { day: 0.3, night: 0.1, night hours: "23:00-07:00" } }\n';
const prepared = (more: string, files: Record<string, string> = {}) =>
  preparePlan(readScenario(homeWith(more), 'h.yaml'), {
    ...{ plan: null, set: [], files: new Map(Object.entries(files)) },
  });

/** Hours of one winter day (UTC) in which the drier runs, in steps of half an hour. */
function runningHours(plan: ReturnType<typeof prepared>): number[] {
  const { home, household, automation } = plan;
  const [start, dt, steps] = [Date.UTC(2023, 0, 10) / 1000, 1800, 48];
  const rooms = home.rooms.length;
  const controller = createController(home, household, automation, dt);
  const day = createDayInputs(household, rooms, home.species.length, steps);
  const observed = createObservation(rooms, home.species.length, home.devices.length);
  const commands = createCommands(home);
  fillDayInputs(day, household, start, dt, steps);
  controller.beginDay(start, steps);
  return Array.from({ length: steps }, (_, s) => s).flatMap((s) => {
    followSchedules(commands, day, s);
    controller.act(day, s, observed, commands);
    return commands.devices[0]! > 0 ? [s / 2] : [];
  });
}

describe('a condition on the price of electricity', () => {
  test('goes by the night hours', () => {
    const hours = runningHours(prepared(NIGHT + RULE('under: 0.2')));
    expect(hours).toEqual([...Array.from({ length: 14 }, (_, k) => k / 2), ...[23, 23.5]]);
    expect(runningHours(prepared(NIGHT + RULE('over: 0.35')))).toEqual([]);
  });

  test('goes by the half-hours of a file, and its hysteresis', () => {
    const rows = Array.from({ length: 48 }, (_, k) => {
      const time = new Date(Date.UTC(2023, 0, 10) + k * 1_800_000).toISOString().slice(0, 16);
      return `${time}Z,${k === 8 ? 0.05 : k === 9 || k === 10 ? 0.12 : 0.25}`;
    });
    const files = { 'p.csv': `time,price\n${rows.join('\n')}\n` };
    const money = 'money: { electricity: { prices: p.csv } }\n';
    expect(runningHours(prepared(money + RULE('under: 0.1'), files))).toEqual([4]);
    expect(runningHours(prepared(money + RULE('under: 0.1, clear: 0.2'), files))).toEqual([
      4, 4.5, 5,
    ]);
  });

  test('alone takes the tariff along', () => {
    expect(prepared(NIGHT + RULE('under: 0.2')).automation.electricityTariff).toMatchObject({
      by: 'blocks',
    });
    expect(prepared(NIGHT).automation.electricityTariff).toBeUndefined();
  });

  test('two of which cannot hold at one time do not contradict each other', () => {
    const rules = (one: string, other: string) =>
      readingProblems(
        homeWith(`rules:
  - { name: a, when: [{ price: electricity, ${one} }], response: [{ run: drier }] }
  - { name: b, when: [{ price: electricity, ${other} }], response: [{ stop: drier }] }
devices: { drier: { kind: dehumidifier, room: bedroom } }
`),
      );
    expect(rules('under: 0.1', 'over: 0.2')).toEqual([]);
    expect(rules('under: 0.3', 'over: 0.2')[0]).toContain('rule "a", which may hold as well');
  });

  test('mistakes are answered in words', () => {
    const said = (levels: string) => readingProblems(homeWith(RULE(levels))).join('\n');
    expect(said('under: cheap')).toContain(
      'rules #1.when #1.under: expected a number, the price of a kWh, got "cheap"',
    );
    expect(said('clear: 0.1')).toContain('rules #1.when #1: expected a level: over, under or both');
    expect(said('under: 0.1, room: living')).toContain(
      'rules #1.when #1.room: expected no room beside a price, got "living"',
    );
    expect(said('under: 0.1, presence: nobody')).toContain(
      'exactly one of: reading; windows; presence; price; after, before or both',
    );
    expect(
      readingProblems(homeWith(RULE('under: 1').replace('electricity', 'gas'))).join(),
    ).toContain('rules #1.when #1.price: expected one of: electricity, got "gas"');
  });
});
