import { roofPressureCoefficient } from '../physics/airflow/roof-pressure-coefficient.ts';
import { wallPressureCoefficient } from '../physics/airflow/wall-pressure-coefficient.ts';
import type { Crack, Home, Room } from './home.ts';

/** Where a home's cracks are, and how many of them: weights that mean something only beside each other. */
export interface CrackPlace extends Omit<Crack, 'flowAt1' | 'flowAt10'> {
  readonly weight: number;
  /** True where background vents may sit: high in a wall. */
  readonly vents: boolean;
}

/**
 * Spread cracks over the shell: those of walls and windows at a quarter and at three quarters of the
 * room's height, those of roofs at its ceiling, those of lowest floors at its floor, by weighted area.
 * Air under a floor, as that along its edge, has the mean pressure of all sides.
 *
 * A home without any envelope leaks by floor area, to a shaft that has that pressure too.
 *
 * @param roofPitch  of what lies over the top ceilings [deg]
 *
 * Source: EN 16798-7:2017 (heights; there all leaks are in walls and roof), from memory.
 */
export function crackPlaces(
  home: Pick<Home, 'rooms' | 'elements' | 'panes'>,
  roofPitch: number,
): CrackPlace[] {
  const mean = MEAN_WALL_COEFFICIENT;
  const roof = roofPressureCoefficient(roofPitch);
  const places = home.rooms.flatMap((room, index): CrackPlace[] => {
    const [low, height] = [room.elevation ?? 0, heightOf(room)];
    const walls = [...wallAreas(home, index)].flatMap(([azimuth, area]) =>
      [0.25, 0.75].map((part) => ({
        room: index,
        azimuth,
        pressureCoefficient: mean,
        height: low + part * height,
        weight: 0.5 * WEIGHTS.wall * area,
        vents: part > 0.5,
      })),
    );
    const flat = { room: index, azimuth: null, vents: false };
    const over = areaOf(home, index, 'roof') * WEIGHTS.roof;
    const under = areaOf(home, index, 'floor') * WEIGHTS.floor;
    return [
      ...walls,
      { ...flat, pressureCoefficient: roof, height: low + height, weight: over },
      { ...flat, pressureCoefficient: mean, height: low, weight: under },
    ];
  });
  const real = places.filter(({ weight }) => weight > 0);
  return real.length > 0
    ? real
    : home.rooms.map((room, index) => ({
        ...{ room: index, azimuth: null, pressureCoefficient: mean, weight: room.floorArea },
        ...{ height: (room.elevation ?? 0) + 0.5 * heightOf(room), vents: true },
      }));
}

/** Mean pressure coefficient of a wall over all winds. [-] */
function meanWallCoefficient(): number {
  let sum = 0;
  for (let angle = 0; angle < 360; angle++) sum += wallPressureCoefficient(angle);
  return sum / 360;
}

/** Floor to ceiling. [m] */
function heightOf({ volume, floorArea }: Pick<Room, 'volume' | 'floorArea'>): number {
  return volume / floorArea;
}

/** Outer walls of a room with their windows, by where they look. [deg], [m2] */
function wallAreas({ elements, panes }: Pick<Home, 'elements' | 'panes'>, room: number) {
  const areas = new Map<number, number>();
  const add = (azimuth: number, area: number): void => {
    areas.set(azimuth, (areas.get(azimuth) ?? 0) + area);
  };
  for (const { far, area, kind, room: own } of elements) {
    if (own !== room || far.to !== 'outdoors' || kind === 'roof' || kind === 'floor') continue;
    add(far.azimuth, area);
  }
  for (const pane of panes) if (pane.room === room) add(pane.azimuth, pane.area);
  return areas;
}

function areaOf(
  { elements }: Pick<Home, 'elements'>,
  room: number,
  kind: 'roof' | 'floor',
): number {
  return elements.reduce((sum, element) => {
    const outer = element.far.to === 'outdoors' || element.far.to === 'ground';
    return element.room === room && element.kind === kind && outer ? sum + element.area : sum;
  }, 0);
}

/**
 * How much a square metre of each kind counts. [-]
 *
 * Most cracks are where walls meet floors, ceilings and windows, so that a square metre of wall or window
 * counts in full and one of roof or lowest floor by half. Common practice; handbook averages for houses
 * give walls, windows and doors about a half of all leaks and top ceilings a fifth (ASHRAE Fundamentals,
 * ch. 16, after Dickerhoff and Harrje and Born 1982, from memory), which for one storey makes it a third.
 */
const WEIGHTS = { wall: 1, roof: 0.5, floor: 0.5 } as const;

/** Once for all homes, which share it. [-] */
const MEAN_WALL_COEFFICIENT = meanWallCoefficient();
