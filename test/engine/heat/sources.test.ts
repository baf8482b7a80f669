import { describe, expect, test } from 'vitest';
import { type Automation, PLAIN_THERMOSTAT } from '../../../src/control/automation.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { HeatSource, Home } from '../../../src/home/home.ts';
import { noAutomation } from '../../control/no-automation.ts';
import { always, bareHome, bareRoom, madeWeather, NEW_YEAR, quietHousehold } from '../homes.ts';
import { LUMPED_LOSS, lumpedRoom } from '../lumped-room.ts';
import { recordRun, runInput } from '../record-run.ts';

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
      tilt: 180,
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
      spinUpDays: 4,
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

  test('is entered from below: full heat up to it, then less and less', () => {
    // Power for 40 °C, 20 times the loss for each kelvin within the band: full heat tends to 40 °C,
    // the band to 19.05 °C and 21 times as fast.
    const hours = 10;
    const home = lumpedRoom(hours, 40 * LUMPED_LOSS);
    const household = quietHousehold(home, {
      setpoints: [{ base: 10, spells: [{ days: 0b1111111, from: 720, to: 1440, value: 20 }] }],
    });
    const { room } = recordRun(
      runInput(
        { home, weather: madeWeather({ temperature: () => 0 }, { hours: 24 }) },
        { household, automation: leaning, dt: 60, spinUpDays: 3 },
      ),
    );
    const tends = (20 * 20) / 21;
    const start = (20 * 10) / 21; // the band around 10 °C by night
    const full = hours * Math.log((40 - start) / (40 - 18));
    for (const h of [0.5, 1, 2, full - 0.1, full + 0.25, full + 0.5, full + 2]) {
      const exact =
        h < full
          ? 40 - (40 - start) * Math.exp(-h / hours)
          : tends - (tends - 18) * Math.exp((-21 * (h - full)) / hours);
      // Means over a minute, in which it warms by at most 0.05 K.
      const got = room.airTemperature[0]![Math.floor((12 + h) * 60)]!;
      expect(Math.abs(got - exact)).toBeLessThan(0.05);
    }
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
