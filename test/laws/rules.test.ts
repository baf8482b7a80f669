import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Automation,
  type Condition,
  type DeviceControl,
  OPEN_GATE,
  PERFECT_SENSOR,
  type PresenceSensor,
  type Rule,
  type RuleAction,
} from '../../src/control/automation.ts';
import type { RuleReport } from '../../src/control/control-report.ts';
import type { Household } from '../../src/control/household.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { Home } from '../../src/home/home.ts';
import { noAutomation } from '../control/no-automation.ts';
import { always, NEW_YEAR } from '../engine/homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../engine/random-home.ts';

const weather = swingingWeather();
const ROOMS = 3;
const DRYER = 0;

/** A home drawn at random with a dehumidifier in its first room, in which somebody always is. */
function drawn(seed: number): { readonly home: Home; readonly household: Household } {
  const home: Home = {
    ...randomHome(ROOMS, seed),
    devices: [
      {
        name: 'dryer',
        room: 0,
        does: {
          kind: 'dehumidifier',
          type: 'compressor',
          ratedWater: 12 / 86_400,
          ratedPower: 260,
          ratedTemperature: 27,
          ratedHumidity: 60,
          standby: 0,
          tank: Number.POSITIVE_INFINITY,
        },
      },
    ],
  };
  const household = randomHousehold(home, seed);
  const [somebody] = household.people;
  const stays = home.rooms.map((_, room) => ({
    ...somebody!,
    name: `always in ${room}`,
    schedule: [{ days: 127, from: 0, to: 1440, room, asleep: false }],
  }));
  return { home, household: { ...household, people: stays } };
}

const byRule: DeviceControl = {
  device: DRYER,
  by: { kind: 'rule' },
  gate: OPEN_GATE,
  permitted: always(1),
  leastRun: 0,
  leastRest: 0,
  drierBy: null,
  mostRun: Number.POSITIVE_INFINITY,
  emptiedByPeople: false,
};
const SEES_ALL: PresenceSensor = { holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 };

function ruled(rules: readonly Rule[], more: Partial<Automation> = {}): Automation {
  const sensors = { presenceSensors: Array.from({ length: ROOMS }, () => SEES_ALL) };
  return { ...noAutomation(ROOMS), ...sensors, deviceControls: [byRule], rules, ...more };
}

interface Followed {
  readonly values: readonly number[];
  readonly heatedOpen: number;
  readonly open: number;
  readonly residuals: readonly number[];
  readonly rules: readonly RuleReport[];
}

function follow(seed: number, automation: Automation, days = 8, lag?: number): Followed {
  const values: number[] = [];
  let heatedOpen = 0;
  let open = 0;
  const { home: asDrawn, household } = drawn(seed);
  const emitters = asDrawn.emitters.map((e) => (lag === undefined ? e : { ...e, lag }));
  const whole = { home: { ...asDrawn, emitters }, household, automation, weather, dt: 600 };
  const run = simulate({ ...whole, start: NEW_YEAR, hours: 24 * days, spinUpDays: 1 }, [
    ({ room, home, steps, rooms }) => {
      for (let s = 0; s < steps; s++) values.push(home.devices[0]!.share[s]!);
      for (let k = 0; k < steps * rooms; k++) {
        values.push(room.airTemperature[k]!, room.relativeHumidity[k]!, room.species[0]![k]!);
        values.push(room.heating[k]!, room.windowOpen[k]!);
        heatedOpen += room.heating[k]! * room.windowOpen[k]!;
        open += room.windowOpen[k]!;
      }
    },
  ]);
  const { energy, water, air, species } = run.ledger.residual;
  const residuals = [energy, water, air, ...species];
  return { values, heatedOpen, open, residuals, rules: run.control!.rules };
}

const damp = (value: number, clear = value): Condition => ({
  quantity: 'relative humidity',
  room: 0,
  is: 'above',
  ...{ value, clear, sensor: PERFECT_SENSOR },
});
const ALWAYS: Condition = { ...damp(-1), quantity: 'relative humidity' };
const AIRED: Condition = { ...damp(0.5), quantity: 'window', room: 0 };

const rule = (
  all: readonly Condition[],
  actions: readonly RuleAction[],
  more?: Partial<Rule>,
): Rule => ({
  ...{ name: 'rule', all, onDelay: 0, gate: OPEN_GATE, actions },
  ...more,
});
const TELL: RuleAction = { do: 'tell', what: 'it is damp' };
const DRY: RuleAction = { do: 'device', device: DRYER, on: true };
const AIR: RuleAction = {
  ...{ do: 'window', openings: [0], openShare: 1, lasts: 900, probability: 1, delay: 300 },
};
const COOL: RuleAction = { do: 'setpoint', room: 0, setpoint: 17 };

/** A level that the first room is above about half of the time. */
function typical(seed: number): number {
  const { values } = follow(seed, ruled([]), 4);
  const { home } = drawn(seed);
  expect(home.rooms).toHaveLength(ROOMS);
  const perDay = 144 * (1 + 5 * ROOMS);
  const humid: number[] = [];
  for (let d = 0; d < 4; d++) {
    for (let s = 0; s < 144; s++) humid.push(values[d * perDay + 144 + s * 5 * ROOMS + 1]!);
  }
  return humid.sort((a, b) => a - b)[humid.length >> 1]!;
}

const seeds = fc.integer({ min: 1, max: 1e6 });
const holds = (law: (seed: number) => void, numRuns = 5): void => {
  fc.assert(fc.property(seeds, law), { numRuns, seed: 11 });
};

describe('what changes nothing', () => {
  test('a rule that only tells', () => {
    holds((seed) => {
      const told = follow(seed, ruled([rule([damp(typical(seed))], [TELL])]));
      expect(told.rules[0]!.fired).toBeGreaterThan(0);
      expect(told.values).toEqual(follow(seed, ruled([])).values);
    });
  });

  test('a rule whose gate never opens', () => {
    holds((seed) => {
      const gate = { present: 'at home', windowsShut: false } as const;
      const shut = ruled([rule([ALWAYS], [DRY, AIR, COOL], { gate })], {
        presenceSensors: Array.from({ length: ROOMS }, () => null),
      });
      expect(follow(seed, shut).values).toEqual(follow(seed, ruled([])).values);
    });
  });

  test('a gate that is always open', () => {
    holds((seed) => {
      const actions = [DRY, AIR, COOL];
      const all = [damp(typical(seed))];
      const plain = follow(seed, ruled([rule(all, actions)]));
      const gate = { present: 'in the room', windowsShut: false } as const;
      const gated = follow(seed, ruled([rule(all, actions, { gate })]));
      expect(gated.values).toEqual(plain.values);
      expect(gated.rules).toEqual(plain.rules);
      // And the rule does something, or nothing would be shown by that.
      expect(plain.values).not.toEqual(follow(seed, ruled([])).values);
    });
  });

  test('a window that nobody opens, and the same rule a second time', () => {
    holds((seed) => {
      const all = [damp(typical(seed))];
      const nobody = { ...AIR, probability: 0 };
      expect(follow(seed, ruled([rule(all, [nobody])])).values).toEqual(
        follow(seed, ruled([])).values,
      );
      const once = rule(all, [DRY, COOL]);
      expect(follow(seed, ruled([once, once])).values).toEqual(follow(seed, ruled([once])).values);
    });
  });

  test('other luck, where nothing is left to luck', () => {
    holds((seed) => {
      const rules = [rule([damp(typical(seed))], [DRY, AIR, COOL])];
      expect(follow(seed, ruled(rules, { seed: 99 })).values).toEqual(
        follow(seed, ruled(rules)).values,
      );
    });
  });
});

test('a device run by a rule that always holds is one that always runs', () => {
  holds((seed) => {
    const always_ = { ...byRule, by: { kind: 'always' } } as const;
    expect(follow(seed, ruled([rule([ALWAYS], [DRY])])).values).toEqual(
      follow(seed, ruled([], { deviceControls: [always_] })).values,
    );
  });
});

test('a longer on delay or a lower clear level never fires more often', () => {
  holds((seed) => {
    const level = typical(seed);
    const fired = (clear: number, onDelay: number): number =>
      follow(seed, ruled([rule([damp(level, clear)], [TELL], { onDelay })])).rules[0]!.fired;
    const counts = [0, 600, 1800, 7200, 86_400].map((onDelay) => fired(level, onDelay));
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
    const cleared = [0, 2, 5, 50].map((below) => fired(level - below, 0));
    expect(cleared).toEqual([...cleared].sort((a, b) => b - a));
    expect(cleared[0]).toBeGreaterThan(cleared[3]!);
  }, 3);
});

test('counts of a rule contain each other, and the books close with all rules at work', () => {
  holds((seed) => {
    const level = typical(seed);
    const mostly = { ...AIR, probability: 0.6 };
    const { rules, residuals } = follow(
      seed,
      ruled([
        rule([damp(level)], [TELL, mostly]),
        rule([damp(level + 3)], [DRY]),
        rule([AIRED], [COOL]),
      ]),
    );
    for (const r of rules) {
      expect(r.someoneHome).toBeLessThanOrEqual(r.fired);
      expect(r.someoneAwake).toBeLessThanOrEqual(r.someoneHome);
      expect(r.couldAct).toBeLessThanOrEqual(r.fired);
      expect(r.someoneAwake).toBeLessThanOrEqual(r.couldAct);
      expect(r.actedOn).toBeLessThanOrEqual(r.couldAct);
      expect(r.duplicates).toBeLessThanOrEqual(r.fired);
    }
    for (const residual of residuals) expect(residual).toBeLessThan(1e-9);
  });
});

describe('windows', () => {
  test('a rule that turns heating off while they stand open lets no heat flow then', () => {
    holds((seed) => {
      const off = (room: number): Rule =>
        rule([{ ...AIRED, room }], [{ do: 'setpoint', room, setpoint: Number.NEGATIVE_INFINITY }]);
      const everyRoom = Array.from({ length: ROOMS }, (_, room) => off(room));
      // Emitters that hold no warmth, which would come out while the window is open.
      expect(follow(seed, ruled(everyRoom), 8, 0).heatedOpen).toBe(0);
      expect(follow(seed, ruled([]), 8, 0).heatedOpen).toBeGreaterThan(0);
    });
  });

  test('a rule that has them shut leaves them open less, one that has them opened more', () => {
    holds((seed) => {
      const usual = follow(seed, ruled([])).open;
      const shut = rule([AIRED], [{ ...AIR, openShare: 0, lasts: 3600, delay: 0 }]);
      expect(follow(seed, ruled([shut])).open).toBeLessThan(usual);
      const opened = rule([damp(typical(seed))], [AIR]);
      expect(follow(seed, ruled([opened])).open).toBeGreaterThan(usual);
    });
  });
});
