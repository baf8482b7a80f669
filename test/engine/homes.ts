import { type DeviceControl, OPEN_GATE } from '../../src/control/automation.ts';
import type { Household, WeekSchedule } from '../../src/control/household.ts';
import type { Home, Room } from '../../src/home/home.ts';
import { UTC_CLOCK } from '../../src/units/local-clock.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { aHome, aRoom } from '../home/a-home.ts';

/** Small homes, households and weather for tests; every value invented unless a test says otherwise. */

/** A room of air and nothing else. */
export function bareRoom(name: string, volume: number, more: Partial<Room> = {}): Room {
  return {
    ...aRoom(name, volume / 2.5),
    volume,
    furnishingFactor: 1,
    mass: { capacity: 0, area: 0 },
    buffer: NO_BUFFER,
    sunToAir: 1,
    ...more,
  };
}

export function bareHome(rooms: readonly Room[], more: Partial<Home> = {}): Home {
  return aHome({
    site: { latitude: 54, longitude: 0, elevation: 0, albedo: 0.2 },
    rooms,
    leakage: {
      how: { by: 'rate', flow: 0 },
      share: rooms.map(() => 1 / rooms.length),
      ach50: null,
    },
    ...more,
  });
}

/** One electric heater per room, strong enough for anything, all its heat to the air. */
export function ideallyHeated(home: Home, power = 1e6): Home {
  return {
    ...home,
    sources: [
      {
        name: 'heater',
        fuel: 'electricity',
        waterTemperature: Number.NaN,
        power: Number.POSITIVE_INFINITY,
        conversion: { by: 'efficiency', efficiency: 1 },
      },
    ],
    emitters: home.rooms.map((r, room) => ({
      name: r.name,
      room,
      source: 0,
      ratedPower: power,
      ratedExcess: 0,
      exponent: 1,
      radiantShare: 0,
      lag: 0,
    })),
  };
}

export const always = (base: number): WeekSchedule => ({ base, spells: [] });

export function quietHousehold(home: Home, more: Partial<Household> = {}): Household {
  return {
    clock: UTC_CLOCK,
    people: [],
    activities: [],
    setpoints: home.rooms.map(() => always(Number.NEGATIVE_INFINITY)),
    openings: home.openings.map(() => always(0)),
    doorways: home.doorways.map(() => always(1)),
    ...more,
  };
}

/** Hourly weather from functions of the hour; a year of 365 days that closes on itself unless said otherwise. */
export function madeWeather(
  at: {
    temperature?: (hour: number) => number;
    humidityRatio?: (hour: number) => number;
    wind?: (hour: number) => number;
    direct?: (hour: number) => number;
    diffuse?: (hour: number) => number;
  } = {},
  { hours = 8760, start = NEW_YEAR, periodic = true } = {},
): Weather {
  const column = (f: (hour: number) => number): Float64Array =>
    Float64Array.from({ length: hours }, (_, k) => f(k));
  return {
    title: 'made for a test',
    latitude: 54,
    longitude: 0,
    elevation: 0,
    start,
    step: 3600,
    count: hours,
    periodic,
    temperature: column(at.temperature ?? (() => 5)),
    humidityRatio: column(at.humidityRatio ?? (() => 0.004)),
    pressure: column(() => 101_325),
    windSpeed: column(at.wind ?? (() => 3)),
    windDirection: column(() => Number.NaN),
    directNormal: column(at.direct ?? (() => 0)),
    diffuseHorizontal: column(at.diffuse ?? (() => 0)),
    sun: at.direct === undefined && at.diffuse === undefined ? 'none' : 'measured',
    species: {},
    notes: [],
  };
}

/** 2023 begins on a Sunday. [s UTC] */
export const NEW_YEAR = Date.UTC(2023, 0, 1) / 1000;

/** Runs one device without a break, whatever happens; `more` says otherwise. */
export function runAlways(device: number, more: Partial<DeviceControl> = {}): DeviceControl {
  return {
    device,
    by: { kind: 'always' },
    gate: OPEN_GATE,
    permitted: always(1),
    leastRun: 0,
    leastRest: 0,
    drierBy: null,
    mostRun: Number.POSITIVE_INFINITY,
    emptiedByPeople: false,
    ...more,
  };
}

/** Nothing that takes up moisture. */
export const NO_BUFFER = { capacity: 0, conductance: 0, deep: { capacity: 0, conductance: 0 } };
