import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { isLegalEdit } from '../../scenario/edits/edit.ts';
import { raiseSetpoints, wholeHomeSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { edited, type Finding, type FindSetup, worstRoom } from './finding.ts';
import { leastThatHolds } from './least-that-holds.ts';

/**
 * The lowest setpoint that keeps every cold spot under 80 % relative humidity for all but so many
 * hours. All thermostats move together, setbacks and rooms with settings of their own too; where the
 * home has no single setpoint the answer is by how much.
 *
 * Warmer is taken to be drier at a cold spot, as it is unless the heater is at its limit.
 *
 * @param hours  that each cold spot may be above [h]
 * @param room   whose cold spot is meant; all where not given
 * @returns null where the home has nothing to heat with
 */
export async function findSetpoint(
  setup: FindSetup,
  hours: number,
  room?: string,
): Promise<Finding | null> {
  const { raw, run } = setup;
  const worst = (plan: PlanMeasures) =>
    worstRoom(plan, ({ cold_spot_hours_above_80_pct: wet }) => wet, room);
  const spots = room === undefined ? 'every cold spot' : `the cold spot of ${theRoom(room)}`;
  if (raiseSetpoints(raw, 0) === null) return null;
  const today = wholeHomeSetpoint(raw);
  const set = (value: number) => raiseSetpoints(raw, value - (today ?? 0));
  const [low, high] = possible(today === null ? [-SHIFT, SHIFT] : RANGE, (value) => {
    const edit = set(value);
    return edit !== null && isLegalEdit(raw, edit);
  });
  const unit = today === null ? 'K' : '°C';
  const text = today === null ? signedText : figureText;
  const { found, all } = await leastThatHolds({
    ...{ low, high, tolerance: TOLERANCE },
    at: async (value) => run(edited(setup, set(value))),
    holds: (tried) => worst(tried).figure <= hours,
  });
  // The last that were tried lie nearer to each other than a tenth.
  const isPlain = new Set(all.map(({ value }) => text(value, 1))).size === all.length;
  const shown = (value: number, decimals = 1) => `${text(value, decimals)} ${unit}`;
  const allowed = hours === 0 ? 'at all times' : `for all but ${figureText(hours, 0)} h`;
  const last = found ?? all.at(-1)!;
  const { room: wettest, figure } = worst(last.tried);
  const answer =
    found === null
      ? `No setpoint up to ${shown(high)} does it: there the cold spot of ${theRoom(wettest)} is above 80 % for ${figureText(figure, 0)} h.`
      : `${shown(found.value)}${found === all[0] ? ', the lowest that can be set,' : ''} keeps ${spots} under 80 % ${allowed}; ${room === undefined ? `${theRoom(wettest)} is worst with` : 'it is above for'} ${figureText(figure, 0)} h.`;
  const moved =
    'All thermostats are moved together, setbacks and rooms with settings of their own too' +
    (today === null ? '.' : `; today it is ${shown(today)}.`);
  return {
    ...{ question: `the lowest setpoint that keeps ${spots} under 80 % ${allowed}`, unit },
    ...{ low, high, tolerance: TOLERANCE, value: found?.value ?? null },
    answer: [
      answer,
      ...(today !== null && found !== null && found.value < LEAST_WARM ? [TOO_COOL] : []),
      moved,
    ],
    figure: `cold spot above 80 %, ${room ?? 'worst room'} [h]`,
    runs: all.map(({ value, tried, holds }) => ({
      ...{ tried: shown(value, isPlain ? 1 : 2), figure: worst(tried).figure, holds },
      money: tried.money.total_per_year,
    })),
  };
}

/** The widest range within another whose ends can stand in the scenario, by half kelvins. */
function possible(
  [low, high]: readonly [number, number],
  can: (value: number) => boolean,
): [number, number] {
  let [from, to] = [low, high];
  while (from < to - 1 && !can(from)) from += 0.5;
  while (to > from + 1 && !can(to)) to -= 0.5;
  return [from, to];
}

/** [°C] */
const LEAST_WARM = 18;
const TOO_COOL =
  'Dry corners are not all: the WHO guidance asks for 18 °C or more where people are, and for warmer rooms for infants and for frail, old and ill people.';
/** Between a home that is left and one that nobody heats so warm. [°C] */
const RANGE: readonly [number, number] = [8, 28];
const SHIFT = 8; // K
const TOLERANCE = 0.1; // K
