import type { Activity, Household, Person } from '../../src/control/household.ts';
import type { Element, Home, Room } from '../../src/home/home.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { leaky } from '../home/leaky.ts';
import { always, madeWeather, quietHousehold } from './homes.ts';

/** Seeded numbers between 0 and 1 (a multiply-with-carry generator; quality is no matter here). */
export function randomNumbers(seed: number): () => number {
  let state = (seed * 2654435761 + 12345) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return ((state ^ (state >>> 13)) >>> 0) / 4294967296;
  };
}

/** A home with everything in it, drawn at random; doorways may form loops. */
export function randomHome(rooms: number, seed: number, loops = true): Home {
  const random = randomNumbers(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const pick = (n: number): number => Math.min(n - 1, Math.floor(random() * n));
  const room = (i: number): Room => ({
    name: `room ${i + 1}`,
    floorArea: between(6, 30),
    volume: between(15, 75),
    furnishingFactor: between(1, 8),
    mass: { capacity: between(1e5, 3e6), area: between(5, 40) },
    buffer: drawBuffer(between(0.2, 5), between(1e-8, 1e-6)),
    tiledArea: i % 3 === 2 ? 10 : 0,
    coldSpotFactor: between(0.55, 0.85),
    deposition: [0, between(0, 1e-4)],
    sunToAir: between(0, 0.4),
  });
  const wall = (i: number, kind: Element['kind'], far: Element['far']): Element => {
    const nodes = 1 + pick(4);
    return {
      name: `${kind} of ${i + 1}`,
      room: i,
      kind,
      area: between(4, 30),
      chain: {
        resistance: [
          0.13,
          ...Array.from({ length: nodes - 1 }, () => between(0.05, 1.5)),
          between(0.04, 0.5),
        ],
        capacity: Array.from({ length: nodes }, () => between(2e3, 2e5)),
      },
      far,
    };
  };
  const list = Array.from({ length: rooms }, (_, i) => room(i));
  const elements = list.flatMap((_, i) => [
    wall(i, 'wall', { to: 'outdoors', azimuth: between(0, 360), tilt: 90, absorptance: 0.6 }),
    wall(i, 'roof', { to: 'outdoors', azimuth: 0, tilt: 0, absorptance: 0.8 }),
    wall(i, 'floor', { to: 'ground', damping: 0.5 }),
    ...(i > 0 ? [wall(i, 'partition', { to: 'room', room: pick(i) })] : []),
    ...(random() < 0.3 ? [wall(i, 'wall', { to: 'neighbour', temperature: between(15, 21) })] : []),
    ...(random() < 0.3 ? [wall(i, 'wall', { to: 'nothing' })] : []),
  ]);
  const doorway = (a: number, b: number) => ({
    name: `${a + 1} to ${b + 1}`,
    rooms: [a, b] as const,
    width: 0.8,
    height: 2,
    mixing: 0.01,
    shut: 0.002,
  });
  const doorways = list.flatMap((_, i) => (i === 0 ? [] : [doorway(i, pick(i))]));
  if (loops && rooms > 2) doorways.push(doorway(0, rooms - 1), doorway(0, 1), doorway(1, 0));
  const shares = list.map(() => between(0.1, 1));
  const total = shares.reduce((sum, x) => sum + x, 0);
  return {
    site: { latitude: 54, longitude: 0, elevation: 0, albedo: 0.2 },
    rooms: list,
    elements,
    panes: list.map((_, i) => ({
      name: `window ${i + 1}`,
      room: i,
      area: between(0.5, 5),
      uValue: between(1, 5),
      gValue: 0.7,
      frameShare: 0.25,
      unshaded: 0.8,
      azimuth: between(0, 360),
      tilt: 90,
    })),
    openings: list.map((_, i) => ({
      name: `window ${i + 1}`,
      room: i,
      area: between(0.2, 1.2),
      height: 1,
      azimuth: 180,
    })),
    doorways,
    leakage: {
      how: leaky(
        shares.map((x) => x / total),
        0.005 * rooms,
      ),
      share: shares.map((x) => x / total),
      ach50: 8,
    },
    emitters: list.flatMap((_, i) =>
      random() < 0.8
        ? [
            {
              name: `radiator ${i + 1}`,
              room: i,
              source: 0,
              ratedPower: between(500, 3000),
              ratedExcess: 50,
              exponent: 1.3,
              radiantShare: 0.3,
              lag: random() < 0.5 ? 0 : 900,
            },
          ]
        : [],
    ),
    sources: [
      {
        name: 'boiler',
        fuel: 'gas',
        waterTemperature: 65,
        power: 1500 * rooms,
        conversion: { by: 'efficiency', efficiency: 0.86 },
      },
    ],
    devices: [],
    species: [
      { name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 },
      { name: 'pm25', unit: 'µg/m3', outdoor: 8, penetration: 0.8, windowPenetration: 0.6 },
    ],
  };
}

/** A deep store that goes with what the surface holds and lets through. */
const drawBuffer = (capacity: number, conductance: number): Room['buffer'] => ({
  ...{ capacity, conductance },
  deep: { capacity: 4 * capacity, conductance: 0.2 * conductance },
});

/** People, showers and laundry, a night setback, airing twice a day, doors shut at night. */
export function randomHousehold(home: Home, seed: number): Household {
  const random = randomNumbers(seed + 1000);
  const pick = (n: number): number => Math.min(n - 1, Math.floor(random() * n));
  const rooms = home.rooms.length;
  const everyDay = 0b1111111;
  const person = (p: number): Person => ({
    name: `person ${p + 1}`,
    schedule: [
      { days: everyDay, from: 1320, to: 1320 + 540, room: pick(rooms), asleep: true },
      { days: everyDay, from: 1080, to: 1320, room: pick(rooms), asleep: false },
    ],
    awake: { sensible: 75, vapour: 1.5e-5, species: [5.5, 0].slice(0, home.species.length) },
    asleep: { sensible: 60, vapour: 1.1e-5, species: [3.8, 0].slice(0, home.species.length) },
  });
  const activities: Activity[] = Array.from({ length: Math.ceil(rooms / 2) }, (_, a) => ({
    name: `activity ${a + 1}`,
    room: pick(rooms),
    when: [{ days: 1 + pick(127), from: 420 + 15 * a, to: 450 + 15 * a }],
    heat: 600,
    electricity: 600,
    vapour: 4e-4,
    drying: a % 2 === 0 ? 3e-5 : 0,
    species: [0, 30].slice(0, home.species.length),
  }));
  return quietHousehold(home, {
    people: Array.from({ length: Math.max(1, Math.ceil(rooms / 2)) }, (_, p) => person(p)),
    activities,
    setpoints: home.rooms.map((_, i) =>
      i % 4 === 3
        ? always(Number.NEGATIVE_INFINITY)
        : {
            base: 19 + 2 * random(),
            spells: [{ days: everyDay, from: 1350, to: 1800, value: 15 }],
          },
    ),
    openings: home.openings.map(() => ({
      base: 0,
      spells: [
        // By a motor: everybody has left half an hour before.
        { days: everyDay, from: 450, to: 460, value: 1, byMotor: true },
        { days: everyDay, from: 1140, to: 1150, value: 0.5 },
      ],
    })),
    doorways: home.doorways.map(() => ({
      base: 1,
      spells: [{ days: everyDay, from: 1350, to: 1830, value: 0 }],
    })),
  });
}

/** A year with seasons, days and nights, humid and windy spells. */
export function swingingWeather(): Weather {
  const day = (h: number): number => Math.sin((2 * Math.PI * ((h % 24) - 9)) / 24);
  const year = (h: number): number => -Math.cos((2 * Math.PI * (h - 500)) / 8760);
  const temperature = (h: number): number =>
    9.5 + 6.5 * year(h) + 3.5 * day(h) + 3 * Math.sin(h / 61);
  return madeWeather({
    temperature,
    humidityRatio: (h) => 0.0062 + 0.0028 * year(h) + 0.0008 * Math.sin(h / 43),
    wind: (h) => 4 + 3 * Math.sin(h / 37),
    direct: (h) => Math.max(0, 350 * day(h + 3) * (0.6 + 0.4 * year(h))),
    diffuse: (h) => Math.max(0, 150 * day(h + 3)),
  });
}
