import { describe, expect, test } from 'vitest';
import { type Automation, OPEN_GATE } from '../../src/control/automation.ts';
import type { Household } from '../../src/control/household.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { Home } from '../../src/home/home.ts';
import { createMeasures } from '../../src/measures/create-measures.ts';
import { JOULES_PER_KWH } from '../../src/units/joules-per-kwh.ts';
import { noAutomation } from '../control/no-automation.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  NEW_YEAR,
  quietHousehold,
} from '../engine/homes.ts';
import { recordRun, runInput } from '../engine/record-run.ts';
import { compare } from '../reference/compare.ts';
import { heatPerLitreAired } from '../reference/physics/moisture/heat-per-litre-aired.ts';
import { setup } from './hand-made.ts';

const EVERY_DAY = 0b1111111;
const DAYS = 7;
const weather = madeWeather({ humidityRatio: () => 0.0046 });

/** A furnished bedroom behind a brick wall, with a window, at 5 °C outdoors. */
const bedroom: Home = ideallyHeated(
  bareHome(
    [
      bareRoom('bedroom', 30, {
        furnishingFactor: 5,
        mass: { capacity: 5e5, area: 40 },
        buffer: { capacity: 2, conductance: 2e-9, deep: { capacity: 5, conductance: 1e-9 } },
      }),
    ],
    {
      elements: [
        {
          ...{ name: 'wall', room: 0, kind: 'wall', area: 15 },
          chain: { resistance: [0.13, 0.4, 0.04], capacity: [2e5, 2e5] },
          far: { to: 'outdoors', azimuth: 0, tilt: 90, absorptance: 0 },
        },
      ],
      openings: [{ name: 'casement', room: 0, area: 1.2, height: 1.2, azimuth: 180 }],
    },
  ),
  1500,
);

function figures(home: Home, household: Household, automation?: Automation) {
  const period = { start: NEW_YEAR, hours: 24 * DAYS };
  const measures = createMeasures(setup({ home, weather, period }));
  const input = { home, household, weather, dt: 600, spinUpDays: 20, ...period };
  const run = simulate(automation === undefined ? input : { ...input, automation }, [
    measures.observe,
  ]);
  return { run, found: measures.finish(run) };
}

test('a litre through a window that stands ajar costs what its air does', () => {
  const household = quietHousehold(bedroom, {
    setpoints: [always(20)],
    openings: [always(0.02)],
    activities: [
      {
        ...{ name: 'plants', room: 0, heat: 0, electricity: 0, drying: 0, species: [] },
        when: [{ days: EVERY_DAY, from: 0, to: 1440 }],
        vapour: 4e-5,
      },
    ],
  });
  const { found, run } = figures(bedroom, household);
  const input = runInput({ home: bedroom, weather }, { household, hours: 24, spinUpDays: 20 });
  const inside = recordRun(input).room.humidityRatio[0]!.at(-1)!;
  compare({
    topic: 'Airing',
    what: 'heat a litre through a window ajar, 20 °C inside, 5 °C outside, through the simulator',
    unit: 'kWh/L',
    source: 'heat of warming dry air and its vapour over what it takes along',
    mark: 'closed form',
    expected: heatPerLitreAired(20, inside, 5, 0.0046) / JOULES_PER_KWH,
    got: found.airing.kwh_per_litre!,
    tolerance: { relative: 0.01 },
    because: 'the simulator takes one heat capacity for all air of the year',
  });
  // The rest condenses in the cold corner and runs off.
  const ranOff = -run.ledger.water.runoff.reduce((sum, x) => sum + x, 0);
  const kept = run.ledger.stored.water[0]!;
  // However tight a home is, a little leaks beside the window.
  const leaked = -run.ledger.water.leakage.reduce((sum, x) => sum + x, 0);
  expect(leaked).toBeLessThan(1e-4);
  expect(found.airing.openings_kg + leaked + kept + ranOff).toBeCloseTo(4e-5 * 86_400 * DAYS, 9);
});

describe('heating only while somebody is in', () => {
  const sleeper: Household['people'][number] = {
    name: 'sleeper',
    schedule: [{ days: EVERY_DAY, from: 1320, to: 1860, room: 0, asleep: false }],
    awake: { sensible: 70, vapour: 0, species: [] },
    asleep: { sensible: 70, vapour: 0, species: [] },
  };
  const household = quietHousehold(bedroom, { setpoints: [always(20)], people: [sleeper] });
  const lived = noAutomation(1);
  const gated = (lead: Automation['thermostats'][number]['lead']): Automation => ({
    ...lived,
    presenceSensors: [{ holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 }],
    thermostats: lived.thermostats.map((thermostat) => ({
      ...thermostat,
      gate: { ...OPEN_GATE, present: 'in the room' },
      otherwise: 12,
      lead,
    })),
  });
  const always20 = figures(bedroom, household, lived).found;
  const present = figures(bedroom, household, gated({ by: 'none' })).found;
  const early = figures(bedroom, household, gated({ by: 'fixed', seconds: 4 * 3600 })).found;
  const of = (plan: typeof present) => plan.rooms['bedroom']!;

  test('saves heat and is paid in cold arrivals, less so with a lead', () => {
    expect(of(always20)).toMatchObject({ arrivals: DAYS, cold_arrivals: 0, cold_arrival_hours: 0 });
    expect(of(present)).toMatchObject({ arrivals: DAYS, cold_arrivals: DAYS });
    expect(present.heating.useful_kwh).toBeLessThan(early.heating.useful_kwh);
    expect(early.heating.useful_kwh).toBeLessThan(always20.heating.useful_kwh);
    expect(of(early).cold_arrival_hours).toBeLessThan(of(present).cold_arrival_hours);
    expect(of(present).recovery_minutes_most).toBeGreaterThan(0);
  });

  test('occupied hours follow the person, whatever the sensor sees', () => {
    const blind: Automation = {
      ...gated({ by: 'none' }),
      presenceSensors: [{ holdOn: 0, delay: 0, missesAwake: 1, missesAsleep: 1 }],
    };
    const unseen = figures(bedroom, household, blind).found;
    expect(of(unseen).occupied_hours).toBeCloseTo(9 * DAYS, 9);
    expect(of(unseen).arrivals).toBe(DAYS);
    expect(of(unseen).heating_kwh).toBeLessThan(of(present).heating_kwh);
  });
});

test('figures of devices are those of the ledger', () => {
  const home: Home = {
    ...bedroom,
    devices: [
      {
        name: 'dryer',
        room: 0,
        does: {
          kind: 'dehumidifier',
          type: 'desiccant',
          ratedWater: 6e-5,
          ratedPower: 350,
          ratedTemperature: 20,
          ratedHumidity: 60,
          standby: 1,
          tank: 2,
        },
      },
      { name: 'fire', room: 0, does: { kind: 'heater', power: 400, radiantShare: 0.5 } },
    ],
  };
  const automation: Automation = {
    ...noAutomation(1),
    deviceControls: home.devices.map((_, device) => ({
      device,
      by: {
        kind: 'clock',
        schedule: { base: 0, spells: [{ days: EVERY_DAY, from: 60, to: 300, value: 0.5 }] },
      },
      gate: OPEN_GATE,
      permitted: always(1),
      leastRun: 0,
      leastRest: 0,
      drierBy: null,
      mostRun: Number.POSITIVE_INFINITY,
      emptiedByPeople: false,
    })),
  };
  const household = quietHousehold(home, { setpoints: [always(20)] });
  const { found, run } = figures(home, household, automation);
  const dryer = found.devices.detail['dryer']!;
  const fire = found.devices.detail['fire']!;
  const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
  expect(dryer.water_kg).toBeLessThan(0);
  expect(dryer.water_kg).toBeCloseTo(sum(run.ledger.water.devices), 9);
  expect(dryer.heat_kwh + fire.heat_kwh).toBeCloseTo(
    sum(run.ledger.energy.devices) / JOULES_PER_KWH,
    9,
  );
  expect(fire).toMatchObject({ starts: DAYS, hours: 2 * DAYS });
  expect(found.devices.by_device['fire']).toBeCloseTo(0.4 * 2 * DAYS, 9);
});
