import { describe, expect, test } from 'vitest';
import { stepNotices } from '../../../src/measures/notices/step-notices.ts';
import type { DeviceMeasures } from '../../../src/measures/plan-measures.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { stepSensitive } from '../../../src/studies/step-sensitive.ts';
import { readOnce } from '../../scenario/read-once.ts';

describe('devices that readings switch', () => {
  /** Notices of one of two devices with so many hours and starts. */
  const told = (minutes: number, hours: number, starts: number) =>
    stepNotices(
      { devices: [1], byClock: [], byHabit: [] },
      { devices: [{ name: 'lamp' }, { name: 'fan' }] as never },
      { dt: 60 * minutes, control: { airings: [] } },
      { fan: { hours, starts } as DeviceMeasures, lamp: { hours, starts } as DeviceMeasures },
    ).map(({ text }) => text);

  test('runs of a step are told, with a step of a fifth at most that divides the hour', () => {
    expect(told(10, 4, 20)).toEqual([
      'The device "fan" runs for a step of 10 minutes at a time: its hours and its energy depend on ' +
        'the step. Try step: 2 min.',
    ]);
    expect(told(20, 8, 20)[0]).toContain('Try step: 4 min.');
    expect(told(60, 20, 20)[0]).toContain('Try step: 12 min.');
    expect(told(5, 2, 20)[0]).toContain('Try step: 1 min.');
  });

  test('not runs of a step and a half, few of them, or where no step is a fifth', () => {
    expect(told(10, 4.99, 20)).toHaveLength(1);
    expect(told(10, 5, 20)).toEqual([]);
    expect(told(10, 3.8, 19)).toEqual([]);
    expect(told(4, 1.4, 20)).toEqual([]);
    expect(told(10, 0, 0)).toEqual([]);
  });
});

describe('airing', () => {
  const told = (minutes: number, ...lengths: readonly number[]) =>
    stepNotices(
      { devices: [], byClock: lengths.map((length) => 60 * length), byHabit: [] },
      { devices: [] },
      { dt: 60 * minutes, control: { airings: [] } },
      {},
    ).map(({ text }) => text);

  test('shorter than the step is told, the shortest first', () => {
    expect(told(10, 10, 7, 5, 30)).toEqual([
      'Airing of 5 minutes in steps of 10: windows are modelled as open by 50 % for the whole step, ' +
        'which overstates the heat lost. Try step: 5 min.',
      'Airing of 7 minutes in steps of 10: windows are modelled as open by 70 % for the whole step, ' +
        'which overstates the heat lost. Try step: 6 min.',
    ]);
  });

  test('by habit is told where the habit was followed, a length once', () => {
    const opened = (...times: readonly number[]) =>
      stepNotices(
        { devices: [], byClock: [300], byHabit: [300, 240] },
        { devices: [] },
        {
          dt: 600,
          control: {
            airings: times.map((n) => ({ name: 'air', occasions: 9, opened: n })),
          },
        },
        {},
      ).map(({ text }) => text.slice(0, 19));
    expect(opened(3, 0)).toEqual(['Airing of 5 minutes']);
    expect(opened(0, 1)).toEqual(['Airing of 4 minutes', 'Airing of 5 minutes']);
  });

  test('of the length of the step or longer, or of no length, is not', () => {
    expect(told(10, 0, 10, 11)).toEqual([]);
  });
});

test('a plan has them from its devices by readings and by rules, its clock and its habits', () => {
  const text = `title: Home
weather: none.csv
site: { latitude: 54.2, longitude: -1.9, elevation: 35 m, timezone: Europe/London }
money: { currency: GBP, electricity: 0.2, gas: 0.07 }
home:
  rooms:
    den: { use: living, floor area: 20 }
    bath: { use: bathroom, floor area: 5 }
heating: { setpoint: 20 }
devices:
  always: { kind: extract fan, room: bath, runs: always }
  dry: { kind: dehumidifier, room: den, target: 55 % }
  long: { kind: dehumidifier, room: bath, target: 55 %, least run: 10 min }
  rests: { kind: dehumidifier, room: bath, target: 55 %, longest run: 15 min, least rest: 45 min }
  warm: { kind: heater, room: den, power: 1000 W, target: 20 }
household:
  people: [{ who: adult }]
  airing:
    - { room: den, at: ["07:00", "19:00"], lasts: 5 min }
    - { room: bath, after: shower, lasts: 3 min }
`;
  const scenario = readOnce(text, 'home.yaml');
  const plan = preparePlan(scenario, {
    plan: scenario.plans[0]!.name,
    ...{ set: [], files: new Map() },
  });
  const found = stepSensitive(plan);
  expect(found.devices.map((d) => plan.home.devices[d]!.name)).toEqual(['dry', 'warm']);
  expect([...found.byClock, ...found.byHabit].sort()).toEqual([180, 300]);
});
