import { describe, expect, test } from 'vitest';
import type { Activity, Household, Person } from '../../../src/control/household.ts';
import type { Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { airChangesFromDecay } from '../../reference/physics/air-quality/concentration.ts';
import { bareHome, bareRoom, madeWeather, quietHousehold } from '../homes.ts';
import { last, recordRun, runInput } from '../record-run.ts';

const TOPIC = 'Carbon dioxide, through the simulator';
const WEATHER = madeWeather({}, { hours: 24 });
const EVERY_DAY = 0b1111111;
const NOT_SUNDAY = 0b0111111; // the runs begin on a Sunday

/** A room of which every cubic metre is air, with so many air changes an hour. */
function airyRoom(volume: number, ach: number, outdoor: number): Home {
  return bareHome([bareRoom('room', volume)], {
    leakage: { how: { by: 'rate', flow: (ach * volume) / 3600 }, share: [1], ach50: null },
    species: [{ name: 'co2', unit: 'ppm', outdoor, penetration: 1 }],
  });
}

/** A constant source. [L/h] */
function source(litresPerHour: number, days = EVERY_DAY): Activity {
  return {
    name: 'source',
    room: 0,
    when: [{ days, from: 0, to: 1440 }],
    ...{ heat: 0, electricity: 0, vapour: 0, drying: 0 },
    species: [(litresPerHour / 1000 / 3600) * 1e6],
  };
}

function co2(home: Home, more: Partial<Household>, hours: number, spinUpDays = 0) {
  const household = quietHousehold(home, more);
  const input = runInput(
    { home, weather: WEATHER },
    { household, hours, spinUpDays: spinUpDays, dt: 60 },
  );
  const { species, run } = recordRun(input);
  const { volume } = home.rooms[0]!;
  const rise = run.ledger.stored.species[0]![0]! / volume;
  return { series: species[0]![0]!, rise };
}

describe('steady level', () => {
  test('one person at 7.5 L/s', () => {
    const home = airyRoom(30, (0.0075 * 3600) / 30, 0);
    const person: Person = {
      name: 'somebody',
      schedule: [{ days: EVERY_DAY, from: 0, to: 1440, room: 0, asleep: false }],
      awake: { sensible: 0, vapour: 0, species: [5.2] },
      asleep: { sensible: 0, vapour: 0, species: [0] },
    };
    compare({
      topic: TOPIC,
      what: 'rise over outdoors, 0.0052 L/s a person at 7.5 L/s a person',
      unit: 'ppm',
      source: '0.0052 L/s over 7.5 L/s; ASHRAE technical FAQ 35 prints about 700 ppm at that flow',
      mark: 'closed form',
      expected: 693,
      got: last(co2(home, { people: [person] }, 24, 2).series),
      tolerance: { absolute: 0.5 },
      because: 'half a ppm',
    });
  });

  test.each([
    {
      what: 'level at 8.33 L/s a person, 0.3 L/min each, 400 ppm outdoors',
      ...{ home: airyRoom(40, (0.00833 * 3600) / 40, 400), litresPerHour: 18, days: 2 },
      ...{ expected: 1000, tolerance: { absolute: 0.4 } },
      because: 'the flow is rounded to 0.01 L/s: 0.06 % of the rise',
    },
    {
      what: 'steady level in a bedroom of 30 m3 at 0.5 1/h, two sleepers (27.2 L/h)',
      ...{ home: airyRoom(30, 0.5, 400), litresPerHour: 27.2, days: 3 },
      ...{ expected: 2213, tolerance: { absolute: 1 } },
      because: 'print rounding',
    },
  ])('$what', ({ home, litresPerHour, days, ...row }) => {
    compare({
      ...row,
      topic: TOPIC,
      unit: 'ppm',
      source: 'balance of source and fresh air',
      mark: 'closed form',
      got: last(co2(home, { activities: [source(litresPerHour)] }, 24, days).series),
    });
  });
});

describe('build-up', () => {
  test('a bedroom through eight hours', () => {
    const { rise } = co2(airyRoom(30, 0.5, 400), { activities: [source(27.2)] }, 8);
    compare({
      topic: TOPIC,
      what: 'the same bedroom after 8 h from outdoor level',
      unit: 'ppm',
      source: 'exact solution of one well-mixed room',
      mark: 'closed form',
      expected: 2180,
      got: 400 + rise,
      tolerance: { absolute: 1 },
      because: 'print rounding',
    });
  });

  test.each([
    { outdoor: 0, expected: 6300, allowed: 50, print: 'printed as 0.0063 by volume' },
    { outdoor: 400, expected: 6721, allowed: 67, print: 'printed as 6700; 1 %' },
  ])(
    'a full cinema after an hour, $outdoor ppm outdoors',
    ({ outdoor, expected, allowed, print }) => {
      const { rise } = co2(airyRoom(500, 1, outdoor), { activities: [source(5000)] }, 1);
      compare({
        topic: TOPIC,
        what: `cinema of 500 m3 with 100 people (0.05 m3/h each) after an hour at 1 1/h, ${outdoor} ppm outdoors`,
        unit: 'ppm',
        source: 'engineeringtoolbox.com, carbon dioxide build-up',
        mark: 'published arithmetic',
        expected,
        got: outdoor + rise,
        tolerance: { absolute: allowed },
        because: print,
      });
    },
  );
});

test('decay from 1500 to 800 ppm in two hours', () => {
  // Every day but the first reported one a source keeps the room at 1500 ppm.
  const ach = 0.506;
  const keeping = source(1100e-6 * ach * 100 * 1000, NOT_SUNDAY);
  const { series, rise } = co2(airyRoom(100, ach, 400), { activities: [keeping] }, 2, 5);
  compare({
    topic: TOPIC,
    what: 'level two hours after a source that kept 1500 ppm stops, 0.506 1/h, 400 ppm outdoors',
    unit: 'ppm',
    source: 'exact solution of one well-mixed room',
    mark: 'closed form',
    expected: 800,
    got: 1500 + rise,
    tolerance: { absolute: 0.5 },
    because: 'the air changes are rounded to 0.001 1/h: 0.4 ppm',
  });
  const [first, later] = [series[0]!, series[60]!];
  expect(airChangesFromDecay(first, later, 400, 1)).toBeCloseTo(ach, 4);
});
