import { describe, expect, test } from 'vitest';
import { type Automation, noAutomation, PLAIN_THERMOSTAT } from '../../src/control/automation.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { HeatSource, Home } from '../../src/home/home.ts';
import { always, bareHome, bareRoom, madeWeather, NEW_YEAR, quietHousehold } from './homes.ts';

/** Rooms that each lose 50 W/K to outdoors at 0 °C, with one emitter each on one source. */
function roomsOn(source: Partial<HeatSource>, powers: readonly number[]): Home {
  const rooms = powers.map((_, i) => bareRoom(`room ${i + 1}`, 40, { furnishingFactor: 10 }));
  return bareHome(rooms, {
    panes: rooms.map((_, room) => ({
      name: 'glass',
      room,
      area: 10,
      uValue: 5,
      gValue: 0,
      frameShare: 1,
      unshaded: 0,
      azimuth: 0,
      tilt: 90,
    })),
    sources: [
      {
        name: 'source',
        fuel: 'electricity',
        waterTemperature: 45,
        power: Number.POSITIVE_INFINITY,
        conversion: { by: 'efficiency', efficiency: 1 },
        ...source,
      },
    ],
    emitters: powers.map((ratedPower, room) => ({
      name: `emitter ${room + 1}`,
      room,
      source: 0,
      ratedPower,
      ratedExcess: 0,
      exponent: 1,
      radiantShare: 0,
      lag: 0,
    })),
  });
}

interface Settled {
  readonly temperature: readonly number[];
  readonly heating: readonly number[];
  readonly fuel: number;
  readonly backup: number;
}

function settle(
  home: Home,
  settings: readonly number[],
  automation?: Automation,
  outdoor = 0,
): Settled {
  let settled: Settled | undefined;
  simulate(
    {
      home,
      household: quietHousehold(home, { setpoints: settings.map(always) }),
      ...(automation === undefined ? {} : { automation }),
      weather: madeWeather({ temperature: () => outdoor }),
      dt: 600,
      start: NEW_YEAR,
      hours: 24,
      leadInDays: 4,
    },
    [
      ({ room, home: whole, steps, rooms }) => {
        const at = (steps - 1) * rooms;
        settled = {
          temperature: [...room.airTemperature.slice(at, at + rooms)],
          heating: [...room.heating.slice(at, at + rooms)],
          fuel: whole.sourceFuel[0]![steps - 1]!,
          backup: whole.sourceBackup[0]![steps - 1]!,
        };
      },
    ],
  );
  return settled!;
}

describe('a proportional band', () => {
  // Fully open 2 K below 20 °C with 2000 W: 1000 W/K against a loss of 50 W/K.
  const leaning: Automation = {
    ...noAutomation(1),
    thermostats: [{ ...PLAIN_THERMOSTAT, proportionalBand: 2 }],
  };

  test('settles where what it gives is what the room loses', () => {
    const { temperature, heating } = settle(roomsOn({}, [2000]), [20], leaning);
    const t = (1000 * 20) / 1050;
    expect(temperature[0]).toBeCloseTo(t, 6);
    expect(heating[0]).toBeCloseTo(50 * t, 3);
  });

  test('gives its most where the room falls below the band', () => {
    const { temperature, heating } = settle(roomsOn({}, [500]), [20], leaning);
    expect(heating[0]).toBeCloseTo(500, 6);
    expect(temperature[0]).toBeCloseTo(10, 4);
  });

  test('a sensor on a valve that warms by 2 K is a band of 2 K', () => {
    const onValve: Automation = {
      ...noAutomation(1),
      thermostats: [{ ...PLAIN_THERMOSTAT, valveBias: 2 }],
    };
    const { temperature } = settle(roomsOn({}, [2000]), [20], onValve);
    expect(temperature[0]).toBeCloseTo((1000 * 20) / 1050, 6);
  });
});

describe('a source that cannot feed all its emitters', () => {
  test('cuts all alike', () => {
    const { heating } = settle(roomsOn({ power: 900 }, [3000, 3000]), [20, 20]);
    expect(heating[0]).toBeCloseTo(450, 3);
    expect(heating[1]).toBeCloseTo(450, 3);
  });

  test('or leaves those short that asked last', () => {
    const home = roomsOn({ power: 1200, sharing: 'first come' }, [3000, 3000]);
    const { heating } = settle(home, [20, 20]);
    expect(heating[0]).toBeCloseTo(1000, 3);
    expect(heating[1]).toBeCloseTo(200, 3);
  });

  test('has its backup help out, and buys that one to one', () => {
    const home = roomsOn(
      { power: 600, backup: 5000, conversion: { by: 'cop', outdoor: [-5, 5], cop: [2, 4] } },
      [3000],
    );
    const { heating, fuel, backup, temperature } = settle(home, [20]);
    expect(temperature[0]).toBeCloseTo(20, 6);
    expect(heating[0]).toBeCloseTo(1000, 3);
    expect(fuel).toBeCloseTo(600 / 3, 3);
    expect(backup).toBeCloseTo(400, 3);
  });

  test('follows the weather where its power does', () => {
    const powerCurve = { outdoor: [-10, 10], value: [200, 800] };
    const { heating } = settle(roomsOn({ powerCurve }, [3000]), [20], undefined, 0);
    expect(heating[0]).toBeCloseTo(500, 3);
  });
});

test('water that follows the weather decides what an emitter can give', () => {
  const home = roomsOn({ waterCurve: { outdoor: [-10, 10], value: [55, 35] } }, [1000]);
  const wet = { ...home, emitters: home.emitters.map((e) => ({ ...e, ratedExcess: 50 })) };
  const { heating, temperature } = settle(wet, [30]);
  expect(heating[0]).toBeCloseTo((1000 * (45 - temperature[0]!)) / 50, 1);
});
