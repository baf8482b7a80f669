import type { Home } from '../../home/home.ts';
import { innerSurfaceResistance } from '../../physics/heat/surface-resistance.ts';
import { latentHeat } from '../../physics/moist-air/latent-heat.ts';
import { filmTransfer } from '../../physics/moisture/film-transfer.ts';
import type { i32 } from '../../units/portable.ts';
import { PANE_FILM, splitPaneFilm } from './pane-film.ts';
import { skyDrop } from './sky-drop.ts';
import { FILM, ROOM } from './state-layout.ts';

/** Where water can stand in a home: panes first, then cold corners, then tiles. */
export interface Films {
  readonly count: i32;
  readonly panes: i32;
  /** Number of the first one that is tiles. */
  readonly tiles: i32;
  /** FILM records, and the room of each. */
  readonly records: Float64Array;
  readonly room: Int32Array;
  /** Film of each room that takes what falls out of its air, or -1. */
  readonly below: Int32Array;
  /** [0]: outdoor temperature as cold corners feel it, NaN before the first step. [°C] */
  readonly slowOutdoor: Float64Array;
}

/** One place where water can stand. */
interface Place {
  readonly room: number;
  /** Room to surface, over room to outdoors. [-] */
  readonly drop: number;
  /** How much of what a pane sees of its room is the radiant node [-]; how far below the air's temperature it sees outdoors [K]. */
  readonly radiantShare?: number;
  readonly skyDrop?: number;
  /** Vapour from room air to it. [kg/(s Pa)] */
  readonly vapourG: number;
  /** Greatest film. [kg] */
  readonly most: number;
}

/** @param rooms  ROOM records */
export function layOutFilms(home: Home, rooms: Float64Array): Films {
  const panes = home.panes.map(({ room, area, uValue, frameShare, tilt }): Place => {
    const surfaced = rooms[room * ROOM.stride + ROOM.surfaced] === 1;
    const radiantShare = splitPaneFilm(surfaced, home.longWave).radiative * PANE_FILM;
    const drop = uValue * PANE_FILM;
    const vapourG = area * (1 - frameShare) * slowed(VAPOUR_TO_GLASS, drop);
    return {
      ...{ room, drop, radiantShare, skyDrop: skyDrop(tilt) },
      ...{ vapourG, most: GLASS_HOLDS * area },
    };
  });
  const corners = home.rooms.flatMap(({ coldSpotFactor }, room): Place[] => {
    const area = COLD_SHARE * outerArea(home, room);
    const drop = 1 - coldSpotFactor;
    const vapourG = area * slowed(filmTransfer(WALL_CONVECTION), drop);
    return area > 0 ? [{ room, drop, vapourG, most: WALL_HOLDS * area }] : [];
  });
  const tiles = home.rooms.flatMap(({ tiledArea }, room): Place[] => {
    const vapourG = tiledArea * filmTransfer(WALL_CONVECTION);
    return tiledArea > 0 ? [{ room, drop: 0, vapourG, most: WALL_HOLDS * tiledArea }] : [];
  });
  const all = [...panes, ...corners, ...tiles];
  const records = new Float64Array(all.length * FILM_STRIDE);
  all.forEach(({ drop, radiantShare = 0, skyDrop: below = 0, vapourG, most }, f) => {
    records[f * FILM_STRIDE + FILM.drop] = drop;
    records[f * FILM_STRIDE + FILM.radiantShare] = radiantShare;
    records[f * FILM_STRIDE + FILM.skyDrop] = below;
    records[f * FILM_STRIDE + FILM.vapourG] = vapourG;
    records[f * FILM_STRIDE + FILM.most] = most;
  });
  return {
    count: all.length,
    panes: panes.length,
    tiles: panes.length + corners.length,
    records,
    room: Int32Array.from(all, ({ room }) => room),
    below: Int32Array.from(home.rooms, (_, i) =>
      all.findLastIndex(({ room }, f) => room === i && f >= panes.length),
    ),
    slowOutdoor: Float64Array.of(Number.NaN),
  };
}

/** Opaque faces of a room to outdoors. [m2] */
function outerArea({ elements }: Home, room: number): number {
  return elements.reduce(
    (sum, e) => (e.room === room && e.far.to === 'outdoors' ? sum + e.area : sum),
    0,
  );
}

/**
 * Condensing warms the surface it forms on, which slows it: the flow per pascal falls by latent heat
 * times slope of the saturation curve at 10 °C times the resistance the heat meets, that to the room
 * in parallel with that to outdoors.
 */
function slowed(perArea: number, drop: number): number {
  const warming = LATENT * SATURATION_SLOPE * innerSurfaceResistance('horizontal') * (1 - drop);
  return perArea / (1 + perArea * warming);
}

/**
 * Vapour from still room air to glass: 7e-9 kg/(s Pa) per W/K of convection (Lewis relation, from
 * memory) with 3 W/(m2 K) of natural convection on an upright pane. [kg/(s m2 Pa)]
 */
const VAPOUR_TO_GLASS = 7e-9 * 3;
/** Convective coefficient of upright inner surfaces, ISO 52016-1:2017. [W/(m2 K)] */
const WALL_CONVECTION = 2.5;
/** Share of a room's outer walls and roof that is as cold as its coldest spot; own estimate. [-] */
const COLD_SHARE = 0.1;

/** Greatest film of water on a pane, by its area with the frame; what exceeds it runs off and leaves the balance. [kg/m2] */
const GLASS_HOLDS = 0.2;
/** Greatest film on tiles and paint: 50 to 100 g/m2, from memory. [kg/m2] */
const WALL_HOLDS = 0.075;

const SATURATION_SLOPE = 82; // Pa/K
const LATENT = latentHeat(10); // J/kg
const FILM_STRIDE = FILM.stride;
