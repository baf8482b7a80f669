import { describe, expect, test } from 'vitest';
import { compareBand } from '../reference/compare.ts';
import { demoRun } from './demo-run.ts';

const TOPIC = 'Heating by presence, through the simulator';
const LADDER =
  'trials and simulations of presence control: 28 % and, reactive, 6.8 % (Lu and others 2010), 11.8 % (Beizaee 2015), 3.5 % (68 lived-in homes, Loughborough)';
const LADDER_TOP = 28;
/** Learned schedules, the highest rung that is no bare simulation. */
const MIDDLE = 15;

interface Outcome {
  readonly heat: number;
  readonly coldHours: number;
  readonly coldArrivals: number;
}

const done = new Map<string, Outcome>();

/**
 * Heat of a year, and how cold people found their rooms; each case once. Heated whenever it is cold, so
 * that cold is what control by presence leaves, not what a heating season does.
 */
function terrace(plan: string, set: readonly string[] = []): Outcome {
  const key = [plan, ...set].join(' ');
  const before = done.get(key);
  if (before !== undefined) return before;
  const { measures } = demoRun('terrace.yaml', plan, [...VALVES, ...set]);
  const rooms = Object.values(measures.rooms);
  const outcome = {
    heat: measures.heating.useful_kwh,
    coldHours: rooms.reduce((sum, room) => sum + room.cold_arrival_hours, 0),
    coldArrivals: rooms.reduce((sum, room) => sum + room.cold_arrivals, 0),
  };
  done.set(key, outcome);
  return outcome;
}

/** A valve with a thermostat of its own in each room, all at 21 °C, all year. */
const VALVES = [
  '/heating/thermostat=null',
  '/heating/rooms/main bedroom=21',
  '/heating/rooms/small bedroom=21',
  '/heating/season=all year',
];
const ALWAYS = ['/heating/hours=always'];

const saved = (base: Outcome, plan: Outcome): number => 100 * (1 - plan.heat / base.heat);

const CLOCK = ['/heating/hours=["06:30-09:00","16:00-22:30"]', '/heating/setback=16'];
const COOLER_ROOMS = ['main bedroom', 'small bedroom', 'kitchen', 'hall', 'landing', 'bathroom'];
/** A living room at 21 °C and the others at 18, mornings and evenings: what homes do without sensors. */
const AS_MOST_DO = [...CLOCK, ...COOLER_ROOMS.map((room) => `/heating/rooms/${room}=18`)];
const AT_HOME = '/heating/gate=when somebody is home';

const row = { topic: TOPIC, unit: '%', source: LADDER, mark: 'published', low: 0 } as const;

describe('against heating day and night', () => {
  test.each([
    ['without warming ahead', 'when-home'],
    ['warming up ahead, learned', 'when-home-lead'],
  ])('%s', (how, plan) => {
    compareBand({
      ...row,
      what: `heat saved in the terrace by presence in each room, ${how}, against 21 °C day and night`,
      high: LADDER_TOP,
      got: saved(terrace('as-lived', ALWAYS), terrace(plan)),
      because:
        'the baseline heats every room at all hours, asleep and out, and the boiler works no worse for it: trials in lived-in homes start from clocks and find less',
    });
  });

  test('what warming ahead gives up of the saving it returns in warm arrivals', () => {
    const [plain, lead] = [terrace('when-home'), terrace('when-home-lead')];
    expect(terrace('as-lived', ALWAYS).coldArrivals).toBeLessThan(plain.coldArrivals / 100);
    expect(lead.heat).toBeGreaterThan(plain.heat);
    expect(lead.heat).toBeLessThan(terrace('as-lived', ALWAYS).heat);
    expect(lead.coldHours).toBeLessThan(plain.coldHours / 2);
    expect(lead.coldArrivals).toBeLessThan(plain.coldArrivals / 2);
  });
});

describe('against a clock, mornings and evenings', () => {
  test.each([
    ['without warming ahead', 'when-home'],
    ['warming up ahead, learned', 'when-home-lead'],
  ])('the living room at 21 °C, others at 18: %s', (how, plan) => {
    compareBand({
      ...row,
      what: `heat saved in the terrace by presence in each room, ${how}, against a clock with 21 °C in the living room and 18 °C elsewhere`,
      high: MIDDLE,
      got: saved(terrace('as-lived', AS_MOST_DO), terrace(plan, AS_MOST_DO)),
      because: 'a baseline as in the trials: their rungs are 3.5, 6.8 and 11.8 %, up to 15',
    });
  });

  test('21 °C everywhere, warming ahead: at like comfort the saving is of the trials', () => {
    const [base, lead] = [terrace('as-lived', CLOCK), terrace('when-home-lead', CLOCK)];
    compareBand({
      ...row,
      what: 'heat saved in the terrace by presence in each room, warming up ahead, against a clock with 21 °C everywhere',
      high: MIDDLE,
      got: saved(base, lead),
      because:
        'as many hours of cold after coming in as under the clock, within a fifth: 3.5 to 15 %',
    });
    expect(lead.coldHours / base.coldHours).toBeGreaterThan(0.8);
    expect(lead.coldHours / base.coldHours).toBeLessThan(1.2);
  });

  test('21 °C everywhere, without warming ahead: more is saved, and paid for in cold', () => {
    const base = terrace('as-lived', CLOCK);
    const plain = terrace('when-home', CLOCK);
    compareBand({
      ...row,
      what: 'heat saved in the terrace by presence in each room, without warming ahead, against a clock with 21 °C everywhere',
      high: LADDER_TOP,
      got: saved(base, plain),
      because:
        'above the trials: seven rooms of 21 °C, each left alone most of the day, and people who put up with twice the cold',
    });
    expect(plain.coldHours).toBeGreaterThan(2 * base.coldHours);
  });

  test('the whole home by whether anybody is in: little, where somebody mostly is', () => {
    compareBand({
      ...row,
      what: 'heat saved in the terrace by presence of anybody, without warming ahead, against a clock',
      high: MIDDLE,
      got: saved(terrace('as-lived', CLOCK), terrace('when-home', [...CLOCK, AT_HOME])),
      because: 'a parent and an infant are in most days; the reactive kind saved 6.8 % at best',
    });
  });

  test('warming ahead of the clock can cost more than presence saves, as some homes found', () => {
    const base = terrace('as-lived', CLOCK);
    const ahead = terrace('when-home-lead', [...CLOCK, AT_HOME]);
    expect(ahead.heat).toBeGreaterThan(base.heat);
    expect(ahead.coldHours).toBeLessThan(base.coldHours / 2);
  });
});
