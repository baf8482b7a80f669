import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { addDehumidifier, resizeDehumidifier } from '../../scenario/edits/add-device.ts';
import { isLegalEdit } from '../../scenario/edits/edit.ts';
import { raiseRoomSetpoint, raiseSetpoints } from '../../scenario/edits/raise-setpoints.ts';
import { figureText } from '../../units/figure-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { edited, type FindingRun, type FindSetup } from './finding.ts';
import { leastThatHolds } from './least-that-holds.ts';

/** Two ways to keep the cold spot of a room above 80 % for as few hours, and the runs that led there. */
export interface EqualRisk {
  readonly asIs: PlanMeasures;
  /** What is kept how much warmer, such as "the whole home 2.0 °C warmer". */
  readonly warm: {
    readonly words: string;
    readonly kelvin: number;
    readonly plan: PlanMeasures;
  } | null;
  readonly dry: { readonly words: string; readonly plan: PlanMeasures };
  /** Where even much warmth does less than a dehumidifier at its usual setting: both of them; else null. */
  readonly beyond: {
    readonly warm: { readonly words: string; readonly plan: PlanMeasures };
    readonly dry: { readonly words: string; readonly plan: PlanMeasures };
  } | null;
  readonly runs: readonly FindingRun[];
}

/**
 * The least warmth that does what a dehumidifier does; where even much warmth does less, the mildest
 * setting of the dehumidifier that does what two kelvins do.
 *
 * @returns null where nothing heats the room
 */
export async function equalRisk(setup: FindSetup, room: string): Promise<EqualRisk | null> {
  const { raw, run } = setup;
  const warmer = warmerBy(raw, room);
  if (warmer === null) return null;
  const spots = coldSpots(room);
  const [asIs, usual] = await Promise.all([
    run(setup.variant),
    run(edited(setup, addDehumidifier(raw, 'dehumidifier', room, LABEL))),
  ]);
  const at = async (kelvin: number) =>
    kelvin === 0 ? asIs : run(edited(setup, warmer.by(kelvin)));
  const heated = (kelvin: number) => `${warmer.what} ${figureText(kelvin, 1)} °C warmer`;
  const rowOf = (tried: string, plan: PlanMeasures, holds: boolean): FindingRun => ({
    ...{ tried, figure: spots(plan), money: plan.money.total_per_year, holds },
  });
  const warm = await leastThatHolds({
    ...{ low: 0, high: WARMEST, tolerance: TOLERANCE, at },
    holds: (plan) => spots(plan) <= spots(usual),
  });
  const warmRows = (enough: PlanMeasures) =>
    warm.all.map(({ value, tried }) =>
      rowOf(value === 0 ? 'as it is' : heated(value), tried, spots(tried) <= spots(enough)),
    );
  const usualWords = `a dehumidifier of ${LABEL} L/day`;
  if (warm.found !== null) {
    const { value: kelvin, tried: plan } = warm.found;
    return {
      asIs,
      warm: { words: heated(kelvin), kelvin, plan },
      dry: { words: usualWords, plan: usual },
      beyond: null,
      runs: [...warmRows(usual), rowOf(usualWords, usual, true)],
    };
  }

  const mild = await at(MILD);
  const driest = await leastThatHolds({
    ...{ low: 100 - DAMPEST, high: 100 - DRIEST, tolerance: 0.5 },
    at: async (dryness) => run(edited(setup, resizeDehumidifier(raw, room, LABEL, 100 - dryness))),
    holds: (plan) => spots(plan) <= spots(mild),
  });
  const setTo = (dryness: number) => `${usualWords} set to ${figureText(100 - dryness, 1)} %`;
  const dry = driest.found;
  return {
    asIs,
    warm: dry === null ? null : { words: heated(MILD), kelvin: MILD, plan: mild },
    dry:
      dry === null
        ? { words: usualWords, plan: usual }
        : { words: setTo(dry.value), plan: dry.tried },
    beyond: {
      warm: { words: heated(WARMEST), plan: warm.all.at(-1)!.tried },
      dry: { words: usualWords, plan: usual },
    },
    runs: [
      ...warmRows(mild),
      rowOf(heated(MILD), mild, true),
      ...driest.all.map(({ value, tried, holds }) => rowOf(setTo(value), tried, holds)),
      rowOf(usualWords, usual, spots(usual) <= spots(mild)),
    ],
  };
}

/** Hours of the cold spot of a room above 80 %. */
export const coldSpots =
  (room: string) =>
  ({ rooms }: PlanMeasures): number =>
    rooms[room]!.cold_spot_hours_above_80_pct;

/** How a room is kept warmer: alone where it has a thermostat, else with the whole home. */
function warmerBy(raw: unknown, room: string) {
  const alone = raiseRoomSetpoint(raw, room, TOLERANCE);
  if (alone !== null && isLegalEdit(raw, alone)) {
    return { what: theRoom(room), by: (kelvin: number) => raiseRoomSetpoint(raw, room, kelvin) };
  }
  if (raiseSetpoints(raw, 0) === null) return null;
  return { what: 'the whole home', by: (kelvin: number) => raiseSetpoints(raw, kelvin) };
}

const LABEL = 12; // L/day
const WARMEST = 6; // K
const TOLERANCE = 0.1; // K
const MILD = 2; // K
/** Humidity between which a humidistat can be set. [%] */
const DAMPEST = 80;
const DRIEST = 40;
