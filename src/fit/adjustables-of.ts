import type { Home } from '../home/home.ts';
import {
  type Adjustable,
  heatAdjustables,
  type Logged,
  waterAdjustables,
} from '../scenario/edits/adjustables.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import type { Weather } from '../weather/weather.ts';
import type { FitGroup } from './channels-of.ts';
import { GASES } from './readings/gases.ts';
import type { Readings } from './readings/readings.ts';
import type { Division } from './readings/span.ts';
import { isWarm } from './readings/taken-as-said.ts';
import { weatherOfHours } from './readings/weather-of-hours.ts';

/** A log and what it is of. */
export interface AdjustedFrom {
  readonly scenario: Scenario;
  /** The plan that was lived in, as plain values, and prepared. */
  readonly raw: unknown;
  readonly plan: PreparedPlan;
  readonly weather: Weather;
  readonly readings: Readings;
  readonly division: Division;
}

/** What a fit may change in one stage, by what was logged. */
export function adjustablesOf(
  group: FitGroup,
  { scenario, raw, plan, weather, readings, division }: AdjustedFrom,
): Adjustable[] {
  const { rooms } = readings;
  const named = (has: (room: Readings['rooms'][number]) => boolean) =>
    rooms.filter(has).map((room) => room.name);
  const logged: Logged = {
    humid: named(({ humidity }) => humidity !== null),
    warm: named(({ temperature }) => temperature !== null),
    metered: named(({ heat }) => heat !== null),
    mild: mildHours(weather, division) >= FEWEST_MILD,
    airing: airingOf(plan.home, readings),
    cooled:
      isWarm(weather, division) &&
      (plan.home.cooling ?? []).some(({ room }) => rooms[room]!.temperature !== null),
    absent: absentParts(plan.home),
    species: GASES.filter((gas) => rooms.some(({ species }) => species[gas] !== undefined)),
  };
  const of = group === 'water' ? waterAdjustables : heatAdjustables;
  return of(raw, plan.assumed, scenario.doubts, logged);
}

/** Whether airing for some minutes shows in the log. */
function airingOf({ openings }: Home, { rooms, apart }: Readings): NonNullable<Logged['airing']> {
  const isLogged = openings.every(({ room }) => isMostlyKnown(rooms[room]!.windows));
  if (openings.length > 0 && isLogged) return 'logged';
  return apart > LONGEST_APART ? 'falls between' : 'shows';
}

/** Whether windows of a room are not left to the household, but for a part of the log. */
const isMostlyKnown = (windows: Float64Array | null): boolean =>
  windows !== null &&
  windows.filter((share) => Number.isNaN(share)).length <= windows.length * MOST_UNKNOWN;

/** Of walls, roofs and floors those that a home has none of. */
function absentParts({ elements }: Home): readonly string[] {
  const has = (kind: 'wall' | 'roof' | 'floor', to: 'outdoors' | 'ground') =>
    elements.some((one) => one.kind === kind && one.far.to === to);
  const parts = [
    ['wall', has('wall', 'outdoors')],
    ['roof', has('roof', 'outdoors')],
    ['floor', has('floor', 'ground')],
    ['exposed floor', has('floor', 'outdoors')],
  ] as const;
  return parts.flatMap(([part, there]) => (there ? [] : [part]));
}

/** Share of the fitted hours in which it was mild outdoors. [-] */
function mildHours(weather: Weather, division: Division): number {
  const fitted = weatherOfHours(weather, division, 0, division.withheld);
  return fitted.filter((t) => t > MILD).length / Math.max(1, fitted.length);
}

/** Time between readings in which airing for ten minutes still shows. [s] */
const LONGEST_APART = 20 * 60;
/** Share of the time in which contacts may say nothing though airing counts as logged. [-] */
const MOST_UNKNOWN = 0.1;
/** Outdoors [°C], and the share of the fitted hours from which windows may tell. */
const MILD = 6;
const FEWEST_MILD = 0.05;
