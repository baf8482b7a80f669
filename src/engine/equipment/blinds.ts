import type { Observation } from '../../control/observations.ts';
import type { Model } from '../layout/model.ts';
import { BLIND, FILM, ROOM, SHADED } from '../layout/state-layout.ts';
import type { Sunlight } from '../outdoors/sunlight.ts';

/** Show control the sun on the pane of each blind in the coming step. */
export function observeSun(
  { blinds: { count } }: Model,
  { sun }: Observation,
  { onBlinds }: Sunlight,
  interval: number,
): void {
  for (let b = 0; b < count; b++) sun[b] = onBlinds[interval * count + b]!;
}

/**
 * Set what panes with blinds let through in this step: heat, the sun, and how cold their glass is.
 *
 * A blind that is closed for a part of the step counts by that part.
 *
 * @param closed  share by blind [-]
 */
export function setBlinds(
  m: Model,
  { throughBlinds }: Sunlight,
  closed: Float64Array,
  interval: number,
): void {
  openAll(m);
  const { rooms, films, blinds } = m;
  const { count, records, room, pane } = blinds;
  for (let b = 0; b < count; b++) {
    const at = b * BLIND_STRIDE;
    const r = room[b]! * ROOM_STRIDE;
    const share = closed[b]!;
    records[at + CLOSED] = share;
    const through = throughBlinds[interval * count + b]!;
    rooms[r + SUN] = rooms[r + SUN]! + through * (1 - share * records[at + SUN_OFF]!);
    const open = records[at + OPEN_DROP]!;
    films.records[pane[b]! * FILM_STRIDE + DROP] = open + share * (records[at + SHUT_DROP]! - open);
    if (share > 0) closeOne(m, b, share);
  }
}

/** Put rooms with blinds back to what their panes are with all of them open. */
function openAll({ rooms, heat: { fixed }, blinds }: Model): void {
  const { shaded, open, places } = blinds;
  for (let q = 0; q < shaded.length; q++) {
    const r = shaded[q]! * ROOM_STRIDE;
    const at = q * SHADED_STRIDE;
    rooms[r + PANE_AIR] = open[at + AIR]!;
    rooms[r + PANE_RADIANT] = open[at + RADIANT]!;
    rooms[r + PANE_BETWEEN] = open[at + BETWEEN]!;
    rooms[r + PANE_AIR_SKY] = open[at + AIR_SKY]!;
    rooms[r + PANE_RADIANT_SKY] = open[at + RADIANT_SKY]!;
    fixed[places[4 * q]!] = open[at + OF_AIR]!;
    fixed[places[4 * q + 1]!] = open[at + OF_RADIANT]!;
    fixed[places[4 * q + 2]!] = open[at + AIR_TO_RADIANT]!;
    fixed[places[4 * q + 3]!] = open[at + RADIANT_TO_AIR]!;
  }
}

function closeOne({ rooms, heat: { fixed }, blinds }: Model, b: number, share: number): void {
  const { records, room, shadedOf, places } = blinds;
  const at = b * BLIND_STRIDE;
  const r = room[b]! * ROOM_STRIDE;
  const q = 4 * shadedOf[b]!;
  const air = share * records[at + OFF_AIR]!;
  const radiant = share * records[at + OFF_RADIANT]!;
  const between = share * records[at + MORE_BETWEEN]!;
  rooms[r + PANE_AIR] = rooms[r + PANE_AIR]! - air;
  rooms[r + PANE_RADIANT] = rooms[r + PANE_RADIANT]! - radiant;
  rooms[r + PANE_BETWEEN] = rooms[r + PANE_BETWEEN]! + between;
  rooms[r + PANE_AIR_SKY] = rooms[r + PANE_AIR_SKY]! - share * records[at + OFF_AIR_SKY]!;
  rooms[r + PANE_RADIANT_SKY] =
    rooms[r + PANE_RADIANT_SKY]! - share * records[at + OFF_RADIANT_SKY]!;
  fixed[places[q]!] = fixed[places[q]!]! + between - air;
  fixed[places[q + 1]!] = fixed[places[q + 1]!]! + between - radiant;
  fixed[places[q + 2]!] = fixed[places[q + 2]!]! - between;
  fixed[places[q + 3]!] = fixed[places[q + 3]!]! - between;
}

const { sun: SUN, paneAir: PANE_AIR, paneRadiant: PANE_RADIANT, paneBetween: PANE_BETWEEN } = ROOM;
const { paneAirSky: PANE_AIR_SKY, paneRadiantSky: PANE_RADIANT_SKY } = ROOM;
const { closed: CLOSED, sun: SUN_OFF, air: OFF_AIR, radiant: OFF_RADIANT } = BLIND;
const { between: MORE_BETWEEN, airSky: OFF_AIR_SKY, radiantSky: OFF_RADIANT_SKY } = BLIND;
const { openDrop: OPEN_DROP, closedDrop: SHUT_DROP } = BLIND;
const { air: AIR, radiant: RADIANT, between: BETWEEN } = SHADED;
const { airSky: AIR_SKY, radiantSky: RADIANT_SKY } = SHADED;
const { ofAir: OF_AIR, ofRadiant: OF_RADIANT } = SHADED;
const { airToRadiant: AIR_TO_RADIANT, radiantToAir: RADIANT_TO_AIR } = SHADED;
const { drop: DROP } = FILM;

const ROOM_STRIDE = ROOM.stride;
const FILM_STRIDE = FILM.stride;
const BLIND_STRIDE = BLIND.stride;
const SHADED_STRIDE = SHADED.stride;
