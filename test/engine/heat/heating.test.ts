import { describe, expect, test } from 'vitest';
import type { WeekSchedule } from '../../../src/control/household.ts';
import type { Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { setbackSaving } from '../../reference/physics/heating/setback-saving.ts';
import { warmUpTime } from '../../reference/physics/heating/warm-up-time.ts';
import { always, madeWeather, quietHousehold } from '../homes.ts';
import { LUMPED_LOSS, lumpedRoom } from '../lumped-room.ts';
import { last, type Recording, recordRun, runInput, total } from '../record-run.ts';

const TOPIC = 'Heating, through the simulator';
const EVERY_DAY = 0b1111111;
const EXACT = 'exact solution of one heat capacity';

function run(
  home: Home,
  setpoint: WeekSchedule,
  outdoor: number,
  days: number,
  dt: number,
): Recording {
  const weather = madeWeather({ temperature: () => outdoor }, { hours: 24 });
  const household = quietHousehold(home, { setpoints: [setpoint] });
  return recordRun(runInput({ home, weather }, { household, dt, hours: 24 * days, spinUpDays: 3 }));
}

const heatOf = ({ run: { ledger } }: Recording): number => total(ledger.energy.heating);

describe('a setback of 4 K for 8 h, 20 °C in and 5 °C out', () => {
  const night: WeekSchedule = {
    base: 20,
    spells: [{ days: EVERY_DAY, from: 1380, to: 1380 + 480, value: 16 }],
  };
  const saved = (hours: number): number => {
    const home = lumpedRoom(hours);
    return 100 * (1 - heatOf(run(home, night, 5, 5, 60)) / heatOf(run(home, always(20), 5, 5, 60)));
  };

  test.each([
    { hours: 0.05, expected: 8.89, name: 'next to 0' },
    { hours: 10, expected: 7.25, name: '10 h' },
    { hours: 20, expected: 5.62, name: '20 h' },
    { hours: 40, expected: 3.12, name: '40 h' },
    { hours: 80, expected: 1.61, name: '80 h' },
    { hours: 160, expected: 0.82, name: '160 h' },
  ])('saves $expected % with a time constant of $name', ({ hours, expected, name }) => {
    compare({
      topic: TOPIC,
      what: `saved by the setback, time constant ${name}`,
      unit: '%',
      source: EXACT,
      mark: 'closed form',
      expected,
      got: saved(hours),
      tolerance: { absolute: 0.015 },
      because:
        'printed to 0.01; warm again within a one-minute step, not at once: up to 0.01 points',
    });
  });

  test('saves what the formula says, whatever the time constant', () => {
    for (const timeConstant of [3, 15, 60, 300]) {
      const exact = setbackSaving({ indoor: 20, outdoor: 5, depth: 4, hours: 8, timeConstant });
      expect(Math.abs(saved(timeConstant) - 100 * exact)).toBeLessThan(0.01);
    }
  });
});

describe('a kelvin less', () => {
  test.each([
    {
      inside: 20,
      outside: 3.3,
      expected: 6,
      source: 'household guidance of the Luxembourg and South Tyrol energy agencies',
      mark: 'published',
      allowed: 0.5,
      because: 'a rule of thumb in whole percent',
    },
    {
      inside: 20,
      outside: 10,
      expected: 10,
      source: 'heat in proportion to the difference',
      mark: 'closed form',
      allowed: 1e-6,
      because: 'nothing but rounding',
    },
  ] as const)(
    'saves $expected % where it is $outside °C outdoors',
    ({ inside, outside, expected, source, mark, allowed, because }) => {
      const home = lumpedRoom(30);
      const before = heatOf(run(home, always(inside), outside, 2, 600));
      const after = heatOf(run(home, always(inside - 1), outside, 2, 600));
      compare({
        topic: TOPIC,
        what: `saved by a kelvin less at a mean difference of ${(inside - outside).toFixed(1)} K`,
        unit: '%',
        ...{ source, mark, expected, because },
        got: 100 * (1 - after / before),
        tolerance: { absolute: allowed },
      });
    },
  );
});

test('full power brings a lumped room up in the time that the exact solution says', () => {
  // From 14 °C to 20 °C with power for 40 °C, time constant 20 h.
  const home = lumpedRoom(20, 40 * LUMPED_LOSS);
  const morning: WeekSchedule = {
    base: 14,
    spells: [{ days: EVERY_DAY, from: 360, to: 1440, value: 20 }],
  };
  const weather = madeWeather({ temperature: () => 0 }, { hours: 24 });
  const household = quietHousehold(home, { setpoints: [morning] });
  const { room } = recordRun(runInput({ home, weather }, { household, dt: 60, hours: 24 }));
  const heat = room.heating[0]!;
  const full = heat.filter((w) => w > 39.999 * LUMPED_LOSS).length;
  // The step in which it arrives gives what the rest of the way takes, then what holds it there.
  const arriving = heat[360 + full]!;
  const part = (arriving - 20 * LUMPED_LOSS) / (20 * LUMPED_LOSS);
  const took = (full + part) / 60;
  compare({
    topic: TOPIC,
    what: 'warming a lumped room from 14 to 20 °C (time constant 20 h, power for 40 °C)',
    unit: 'h',
    source: EXACT,
    mark: 'closed form',
    expected: 5.25,
    got: took,
    tolerance: { absolute: 0.005 },
    because: 'print rounding; one-minute steps',
  });
  expect(Math.abs(took - warmUpTime(20, 14, 20, 40))).toBeLessThan(1 / 60);
});

describe('a radiator too small for its setting', () => {
  test.each([
    { excess: 10, factor: 0.123 },
    { excess: 30, factor: 0.515 },
    { excess: 50, factor: 1 },
    { excess: 60, factor: 1.267 },
  ])('gives $factor of its rating at an excess of $excess K', ({ excess, factor }) => {
    // Sized so that what it gives just holds 20 °C against 0 °C.
    const rated = (20 * LUMPED_LOSS) / (excess / 50) ** 1.3;
    const bare = lumpedRoom(5, rated);
    const home: Home = {
      ...bare,
      sources: [{ ...bare.sources[0]!, waterTemperature: 20 + excess }],
      emitters: [{ ...bare.emitters[0]!, ratedExcess: 50, exponent: 1.3 }],
    };
    const { room } = run(home, always(25), 0, 5, 600);
    compare({
      topic: TOPIC,
      what: `output of a radiator at an excess of ${excess} K, share of its rating at 50 K`,
      unit: '-',
      source: 'correction factors for radiators, buildingservicesindex.co.uk (exponent 1.3)',
      mark: 'published arithmetic',
      expected: factor,
      got: last(room.heating[0]!) / rated,
      tolerance: { absolute: 0.0006 },
      because: 'print rounding',
    });
    expect(last(room.airTemperature[0]!)).toBeCloseTo(20, 1);
  });

  test('gives nothing once the room is as warm as its water', () => {
    const bare = lumpedRoom(5, 1000);
    const home: Home = {
      ...bare,
      sources: [{ ...bare.sources[0]!, waterTemperature: 30 }],
      emitters: [{ ...bare.emitters[0]!, ratedExcess: 50, exponent: 1.3 }],
    };
    expect(last(run(home, always(50), 35, 3, 600).room.heating[0]!)).toBe(0);
  });
});
