import { describe, expect, test } from 'vitest';
import type { Household } from '../../src/control/household.ts';
import type { Doorway, Home } from '../../src/home/home.ts';
import { always, bareHome, bareRoom, quietHousehold } from '../engine/homes.ts';
import { swingingWeather } from '../engine/random-home.ts';
import { type Recording, recordRun, runInput } from '../engine/record-run.ts';
import { pane } from '../engine/worked-house.ts';

const weather = swingingWeather();

/**
 * One room in one piece, or as two halves of which each has what the other lacks. No walls that store
 * heat: radiant heat stays in its own half and would part the two for a reason that is none of air's.
 */
function living(parts: 1 | 2, mixing = 0): { home: Home; household: Household } {
  const second = parts - 1;
  const rooms = Array.from({ length: parts }, (_, i) =>
    bareRoom(`part ${i}`, 60 / parts, { furnishingFactor: 6 }),
  );
  const door: Doorway = {
    ...{ name: 'gap', rooms: [0, 1], width: 5, height: 2.4, mixing, shut: 0 },
  };
  const home = bareHome(rooms, {
    panes: [
      pane('wall', 0, 30, 0.8),
      pane('roof', second, 24, 0.3),
      pane('window', second, 5, 2.8),
    ],
    leakage: { how: { by: 'rate', flow: 0.01 }, share: parts === 1 ? [1] : [1, 0], ach50: null },
    doorways: parts === 1 ? [] : [door],
    species: [{ name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 }],
  });
  const activity = { when: [{ days: 0b1111111, from: 0, to: 1440 }], electricity: 0, drying: 0 };
  const household = quietHousehold(home, {
    activities: [
      { ...activity, name: 'fire', room: 0, heat: 1500, vapour: 0, species: [0] },
      { ...activity, name: 'people', room: second, heat: 0, vapour: 5e-5, species: [12] },
    ],
  });
  return { home, household };
}

function run({ home, household }: ReturnType<typeof living>): Recording {
  return recordRun(runInput({ home, weather }, { household, hours: 48, spinUpDays: 5, dt: 120 }));
}

/** Largest distance of the second part from the whole, in temperature, vapour and carbon dioxide. */
function largest(whole: Recording, halves: Recording): number[] {
  const pairs = [
    [whole.room.airTemperature[0]!, halves.room.airTemperature],
    [whole.room.vapourPressure[0]!, halves.room.vapourPressure],
    [whole.species[0]![0]!, halves.species[0]!],
  ] as const;
  return pairs.map(([one, two]) =>
    Math.max(...two.flatMap((part) => [...part].map((x, s) => Math.abs(x - one[s]!)))),
  );
}

describe('a room cut in two by a gap through which air pours', () => {
  const whole = run(living(1));
  const [warmth = 1, vapour = 1, co2 = 1] = largest(whole, run(living(2, 100)));

  // 1500 W across 100 m3/s are 0.012 K.
  test('is as the room in one piece', () => {
    expect(warmth).toBeLessThan(0.05);
    expect(vapour).toBeLessThan(1);
    expect(co2).toBeLessThan(1);
  });

  test('the more so, the more air', () => {
    const much = largest(whole, run(living(2, 10)));
    const less = largest(whole, run(living(2, 1)));
    less.forEach((off, k) => {
      expect(off / much[k]!).toBeGreaterThan(5);
      expect(off / much[k]!).toBeLessThan(15);
    });
  });

  test('and differs where little air passes', () => {
    expect(largest(whole, run(living(2, 0)))[0]).toBeGreaterThan(0.3);
  });
});

test('two doorways between the same rooms pass what one of twice the width does', () => {
  const door = (width: number, factor: number): Doorway => ({
    ...{ name: `door ${width}`, rooms: [0, 1], width, height: 2 },
    ...{ mixing: 0.01 * factor, shut: 0.003 * factor },
  });
  const with_ = (doorways: Doorway[]): Recording => {
    const { home, household } = living(2);
    const open = { base: 1, spells: [{ days: 0b1111111, from: 1320, to: 1860, value: 0 }] };
    return run({
      home: { ...home, doorways },
      household: { ...household, doorways: doorways.map(() => open) },
    });
  };
  const two = with_([door(0.8, 1), door(0.8, 1)]);
  const one = with_([door(1.6, 2)]);
  const crossed = with_([door(0.8, 1), { ...door(0.8, 1), rooms: [1, 0] }]);
  const single = with_([door(0.8, 1)]);
  for (const other of [two, crossed]) {
    one.room.airTemperature.forEach((series, i) => {
      series.forEach((t, s) => {
        expect(Math.abs(t - other.room.airTemperature[i]![s]!)).toBeLessThan(1e-9);
      });
    });
    one.species[0]!.forEach((series, i) => {
      series.forEach((c, s) => {
        expect(Math.abs(c - other.species[0]![i]![s]!)).toBeLessThan(1e-7);
      });
    });
  }
  expect(largest(one, single)[0]).toBeGreaterThan(0.1);
});

test('a shut door parts rooms, an open one joins them', () => {
  const { home, household } = living(2);
  const apart = (doors: number): number => {
    const { room } = run({ home, household: { ...household, doorways: [always(doors)] } });
    const [a, b] = [room.airTemperature[0]!, room.airTemperature[1]!];
    return Math.max(...a.map((t, s) => Math.abs(t - b[s]!)));
  };
  expect(apart(1)).toBeLessThan(0.5 * apart(0));
});
