import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { raiseRoomSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import { theRoom } from '../../units/the-room.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { leastThatHolds } from '../find/least-that-holds.ts';
import { type PlanVariant, type RunVariant, withEdit } from '../plan-variant.ts';
import { ifPossible } from '../run-failures.ts';

/** How much warmer a room must be kept to be as safe from mould as with a device. */
export interface EqualSafety {
  readonly room: string;
  /** Hours with the cold spot above 80 %: as it is, with the device, and kept so much warmer. [h] */
  readonly hours_as_is: number;
  readonly hours_with_device: number;
  readonly hours_warmer: number | null;
  /** How much warmer [K]; 0 where the device is no safer, null where not found. */
  readonly warmer_by_k: number | null;
  /** What that costs beyond the baseline. [currency/year] */
  readonly extra_per_year: number | null;
  /** Figures of the run that was found; the baseline's where nothing has to be warmer. */
  readonly measures: PlanMeasures | null;
  /** Why not found; empty otherwise. */
  readonly note: string;
  readonly runs: number;
}

export interface EqualSafetySetup {
  readonly room: string;
  readonly baseline: { readonly variant: PlanVariant; readonly measures: PlanMeasures };
  /** The scenario as the baseline has it, as plain values. */
  readonly raw: unknown;
  readonly device: PlanMeasures;
  readonly run: RunVariant;
  /** Distance to which the rise is found. [K] */
  readonly resolution?: number;
}

/**
 * The least rise of a room's thermostat with which its cold spot is above 80 % for no more hours
 * than with the device, by running the home again and again between 0 and 5 K.
 *
 * The answer is always one that was run: the true one lies below it by less than the resolution. It is
 * taken for granted that warmer is drier at the cold spot, as it is unless the heater is at its limit.
 *
 * @throws RangeError for a room that is not in the figures
 */
export async function equalSafety(setup: EqualSafetySetup): Promise<EqualSafety> {
  const { room, baseline, raw, device, run, resolution = 0.1 } = setup;
  const before = coldSpotHours(baseline.measures, room);
  const target = coldSpotHours(device, room);
  const known = { room, hours_as_is: before, hours_with_device: target };
  const found = (kelvin: number, measures: PlanMeasures, runs: number): EqualSafety => ({
    ...known,
    hours_warmer: coldSpotHours(measures, room),
    warmer_by_k: kelvin,
    extra_per_year: extraPerYear(baseline.measures, measures),
    measures,
    note: '',
    runs,
  });
  const lost = (note: string, runs: number): EqualSafety => ({
    ...{ ...known, hours_warmer: null, warmer_by_k: null, extra_per_year: null, measures: null },
    ...{ note, runs },
  });
  if (before <= target) return found(0, baseline.measures, 0);
  if (raiseRoomSetpoint(raw, room, 0) === null)
    return lost(`${theRoom(room)} has no thermostat`, 0);
  const runWarmer = (kelvin: number) =>
    run(withEdit(baseline.variant, raiseRoomSetpoint(raw, room, kelvin)));
  const warmest = await warmestAllowed(runWarmer);
  if (warmest === null) return lost('the scenario allows no warmer setting', 0);
  const ran = new Map([
    [0, baseline.measures],
    [warmest.kelvin, warmest.measures],
  ]);
  const { found: least, all } = await leastThatHolds({
    ...{ low: 0, high: warmest.kelvin, tolerance: resolution },
    at: async (kelvin) => ran.get(kelvin) ?? runWarmer(kelvin),
    holds: (tried) => coldSpotHours(tried, room) <= target,
  });
  const runs = all.length - 1; // the baseline's was made before
  if (least === null) return lost(`not within +${warmest.kelvin} °C`, runs);
  return found(least.value, least.tried, runs);
}

/** The most, or so many whole kelvins less that the scenario allows it: cooling may stand in the way. */
async function warmestAllowed(run: (kelvin: number) => PlanMeasures | Promise<PlanMeasures>) {
  for (let kelvin = MOST; kelvin > 0; kelvin--) {
    const measures = await ifPossible(() => run(kelvin));
    if (measures !== null) return { kelvin, measures };
  }
  return null;
}

function coldSpotHours({ rooms, plan }: PlanMeasures, room: string): number {
  const found = rooms[room];
  if (found !== undefined) return found.cold_spot_hours_above_80_pct;
  const known = Object.keys(rooms).join(', ');
  throw new RangeError(`equalSafety: ${plan} has no room "${room}", only ${known}`);
}

const MOST = 5; // K; warmer than that nobody keeps a room for its corners
