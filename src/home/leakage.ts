import { leakageAreaFromAch50 } from '../physics/airflow/blower-door.ts';
import { CRACK_EXPONENT, crackFlow } from '../physics/airflow/crack-flow.ts';
import { orificeFlow } from '../physics/airflow/orifice-flow.ts';
import { DRY_AIR_DENSITY } from '../physics/moist-air/constants.ts';
import { powerOf } from '../units/portable-math.ts';
import { requireWithin } from '../units/require-within.ts';
import type { CrackPlace } from './crack-places.ts';
import type { Crack, Leakage } from './home.ts';

/** What leaks of a home are spread over. */
export interface LeakageShell {
  /** Air volume of the home. [m3] */
  readonly volume: number;
  /** Number of rooms. */
  readonly rooms: number;
  readonly places: readonly CrackPlace[];
  /** Equivalent area of all background vents together, as declared by their makers. [m2] */
  readonly vents?: number;
  /** Share of what a blower door finds that leads to neighbours and brings no outdoor air. [-] */
  readonly partyShare?: number;
}

/** Leakage given as a steady rate. [air changes per hour] */
export function leakageFromRate(rate: number, shell: LeakageShell): Leakage {
  requireWithin(rate, [0, 20], 'leakageFromRate: rate', '1/h');
  requireWithin(shell.volume, VOLUME, 'leakageFromRate: volume', 'm3');
  return {
    how: { by: 'rate', flow: (rate * shell.volume) / 3600 },
    share: shares(shell, ({ weight }) => weight),
    ach50: null,
  };
}

/** Leakage given as a blower-door result at 50 Pa, vents closed. [air changes per hour] */
export function leakageFromAch50(ach50: number, shell: LeakageShell): Leakage {
  requireWithin(ach50, [0, 100], 'leakageFromAch50: ach50', '1/h');
  requireWithin(shell.volume, VOLUME, 'leakageFromAch50: volume', 'm3');
  return byPressure(ach50, shell);
}

/** Leakage given as effective leakage area at 4 Pa, vents not counted. [m2] */
export function leakageFromArea(area: number, shell: LeakageShell): Leakage {
  requireWithin(area, [0, 2], 'leakageFromArea: effective leakage area', 'm2');
  requireWithin(shell.volume, VOLUME, 'leakageFromArea: volume', 'm3');
  return byPressure(area / leakageAreaFromAch50(1, shell.volume), shell);
}

function byPressure(ach50: number, shell: LeakageShell): Leakage {
  const { places, volume, vents = 0, partyShare = 0 } = shell;
  requireWithin(vents, [0, 10], 'leakage: area of background vents', 'm2');
  requireWithin(partyShare, [0, 1], 'leakage: share of party walls', '');
  const flow = ((1 - partyShare) * ach50 * volume) / 3600;
  const cracks = spread(places, (pressure) =>
    crackFlow(flow / powerOf(50, CRACK_EXPONENT), CRACK_EXPONENT, pressure),
  );
  const walls = places.filter((place) => place.vents);
  const holes = spread(walls.length > 0 ? walls : places, (pressure) =>
    orificeFlow(vents, pressure, DRY_AIR_DENSITY, VENT_DISCHARGE),
  );
  const all = [...cracks, ...holes].filter(({ flowAt1 }) => flowAt1 > 0);
  const share = shares(shell, ({ weight }) => weight);
  if (all.length === 0) return { how: { by: 'pressure', cracks: [] }, share, ach50 };
  return {
    how: { by: 'pressure', cracks: all },
    share: sharesOf(shell.rooms, all, ({ flowAt1 }) => flowAt1),
    ach50,
  };
}

/** Cracks at all places that together pass a flow at each pressure. */
function spread(places: readonly CrackPlace[], flow: (pressure: number) => number): Crack[] {
  const [at1, at10] = [flow(1), flow(10)];
  const whole = places.reduce((sum, { weight }) => sum + weight, 0);
  return places.map(({ room, azimuth, pressureCoefficient, height, weight }) => ({
    room,
    azimuth,
    pressureCoefficient,
    height,
    flowAt1: (at1 * weight) / whole,
    flowAt10: (at10 * weight) / whole,
  }));
}

function shares(shell: LeakageShell, weight: (place: CrackPlace) => number): number[] {
  requireWithin(shell.rooms, [1, 10_000], 'leakage: number of rooms', 'rooms');
  for (const place of shell.places) requireWithin(place.weight, [0, 1e5], 'leakage: weight', 'm2');
  return sharesOf(shell.rooms, shell.places, weight);
}

/** What each room has of all, equal shares where there is nothing. */
function sharesOf<T extends { readonly room: number }>(
  rooms: number,
  list: readonly T[],
  weight: (one: T) => number,
): number[] {
  const own = new Array<number>(rooms).fill(0);
  for (const one of list) own[one.room]! += weight(one);
  const sum = own.reduce((total, part) => total + part, 0);
  return own.map((part) => (sum > 0 ? part / sum : 1 / rooms));
}

const VOLUME = [1, 100_000] as const; // [m3]
/** Equivalent areas are those of sharp-edged holes. Common practice. [-] */
const VENT_DISCHARGE = 0.61;
