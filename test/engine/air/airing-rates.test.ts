import { describe, expect, test } from 'vitest';
import type { Opening, Room } from '../../../src/home/home.ts';
import type { PreparedPlan } from '../../../src/scenario/prepared.ts';
import { compareBand } from '../../reference/compare.ts';
import { demoPlan } from '../../years/demo-run.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  quietHousehold,
} from '../homes.ts';
import { recordRun, runInput, total } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';

const TOPIC = 'Airing and infiltration, through the simulator';
const GUIDES = 'airing guides of a campus and of energy advisers';
const INDOORS = 20;

interface Outdoors {
  readonly temperature: number;
  readonly wind: number;
  readonly from?: number;
}

/** Air changes an hour of rooms as the demonstration's, all windows and doors open by so much. */
function airChanges(
  rooms: readonly Room[],
  openings: readonly Opening[],
  wide: number,
  o: Outdoors,
) {
  const home = ideallyHeated(
    bareHome(
      rooms.map(({ name, volume }) => bareRoom(name, volume)),
      {
        openings,
        windRatio: terrace.home.windRatio!,
        doorways: rooms.slice(1).map((_, i) => ({
          ...{ name: 'door', width: 0.8, height: 2, mixing: 0.01, shut: 0.001 },
          rooms: [i, i + 1] as const,
        })),
      },
    ),
  );
  const household = quietHousehold(home, {
    setpoints: rooms.map(() => always(INDOORS)),
    openings: openings.map(() => always(wide)),
  });
  const weather = {
    ...madeWeather({ temperature: () => o.temperature, wind: () => o.wind }),
    windDirection: Float64Array.from({ length: 8760 }, () => o.from ?? Number.NaN),
  };
  const { run } = recordRun(runInput({ home, weather }, { household, hours: 1, spinUpDays: 1 }));
  const heat = -total(run.ledger.energy.openings); // J in an hour
  const air = heat / (AIR_HEAT * (INDOORS - o.temperature)); // m3 in an hour
  return air / rooms.reduce((sum, { volume }) => sum + volume, 0);
}

const terrace: PreparedPlan = demoPlan('terrace.yaml', 'as-lived');
const part = (name: string): readonly [Room, readonly Opening[]] => {
  const index = terrace.home.rooms.findIndex((room) => room.name === name);
  const own = terrace.home.openings.filter(({ room }) => room === index);
  return [terrace.home.rooms[index]!, own.map((opening) => ({ ...opening, room: 0 }))];
};

const LIVED_IN = ['living', 'kitchen', 'main bedroom', 'small bedroom'];
const WINTER: Outdoors = { temperature: 5, wind: 2 };

describe.each(LIVED_IN)('a window of the terrace: %s', (name) => {
  const [room, windows] = part(name);
  const row = { topic: TOPIC, unit: '1/h', source: GUIDES, mark: 'published' } as const;

  test('tilted', () => {
    compareBand({
      ...row,
      what: `air changes by a tilted window (10 %), ${name} of the terrace, 5 °C, 2 m/s`,
      low: 0.5,
      high: 4,
      got: airChanges([room], windows, 0.1, WINTER),
      because: 'guides say 0.5 to 2 and 0.5 to 2.5, and 4 for large windows; no room is named',
    });
  });

  test('wide open', () => {
    compareBand({
      ...row,
      what: `air changes by a wide open window, ${name} of the terrace, 5 °C, 2 m/s`,
      low: 5,
      high: 20,
      got: airChanges([room], windows, 1, WINTER),
      because: 'guides say 9 to 15 and 5 to 15; no room, window or weather is named',
    });
  });
});

describe('a through-draught from front to back', () => {
  const [front, inFront] = part('main bedroom');
  const [back, behind] = part('small bedroom');
  const windows = [...inFront, ...behind.map((opening) => ({ ...opening, room: 1 }))];
  const both = [front, back];

  test.each([3, 5])('wind of %s m/s onto the front', (wind) => {
    compareBand({
      topic: TOPIC,
      what: `air changes by a through-draught, both bedrooms of the terrace, 5 °C, ${wind} m/s`,
      unit: '1/h',
      source: GUIDES,
      mark: 'published',
      low: 20,
      high: 60,
      got: airChanges(both, windows, 1, { temperature: 5, wind, from: 180 }),
      because: 'guides say about 40, one change in a minute and a half; half as much either way',
    });
  });

  test('is worth more than either window by itself, and more with more wind', () => {
    const through = (wind: number) =>
      airChanges(both, windows, 1, { temperature: 5, wind, from: 180 });
    const alone = airChanges([front], inFront, 1, { temperature: 5, wind: 4 });
    expect(through(4)).toBeGreaterThan(alone);
    expect(through(6)).toBeGreaterThan(through(4));
    expect(through(4)).toBeGreaterThan(
      airChanges(both, windows, 1, { temperature: 5, wind: 4, from: 90 }),
    );
  });
});

test('a wider, a colder and a windier window each change more air', () => {
  const [room, windows] = part('living');
  const usual = airChanges([room], windows, 0.5, WINTER);
  expect(airChanges([room], windows, 0.6, WINTER)).toBeGreaterThan(usual);
  expect(airChanges([room], windows, 0.5, { ...WINTER, temperature: 0 })).toBeGreaterThan(usual);
  expect(airChanges([room], windows, 0.5, { ...WINTER, wind: 5 })).toBeGreaterThan(usual);
});
