import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PlanSeries } from '../../measures/series/plan-series.ts';
import { firstDehumidifier, resizeDehumidifier } from '../../scenario/edits/add-device.ts';
import { figureText } from '../../units/figure-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { HOURS_PER_WEEK } from '../../units/time-units.ts';
import { ifPossible } from '../run-failures.ts';
import { edited, type Finding, type FindSetup } from './finding.ts';
import { leastThatHolds } from './least-that-holds.ts';

/**
 * The smallest dehumidifier, by its label, that holds a humidity in the worst week: over no seven days
 * on end may the mean relative humidity of its room be above the target. What the scenario has is
 * resized; where it has none, a compressor dehumidifier stands in a room.
 *
 * @param room    where there is none yet
 * @param target  [%]
 */
export async function findDehumidifier(
  setup: FindSetup,
  room: string,
  target: number,
): Promise<Finding> {
  const has = firstDehumidifier(setup.raw);
  const place = has?.room ?? room;
  // A humidistat swings about its setting, which is therefore lower by half its usual swing.
  const setting = target - SWING / 2;
  const at = async (label: number) => {
    const variant = edited(setup, resizeDehumidifier(setup.raw, room, label, setting));
    const { measures, series } = await setup.watch(variant);
    return { measures, worst: worstWeek(series, place) };
  };
  const largest = await largestThatRuns(at);
  const { found, all } = await leastThatHolds({
    ...{ low: LOW, high: largest.label, tolerance: TOLERANCE },
    at: async (label) => (label === largest.label ? largest.tried : at(label)),
    holds: ({ worst }) => worst <= target,
  });
  const shown = (label: number) => `${figureText(label, 1)} L/day`;
  const last = found ?? all.at(-1)!;
  const week = `${figureText(last.tried.worst, 1)} % in the worst seven days`;
  const answer =
    found === null
      ? `None does it: even with ${shown(largest.label)} ${theRoom(place)} has ${week}.`
      : `${shown(found.value)} on the label${found === all[0] ? ', the smallest that was tried,' : ''} does it in ${theRoom(place)}: ${week}, ${dryingWords(found.tried.measures)}.`;
  return {
    question: `the smallest dehumidifier that holds ${figureText(target)} % in the worst week`,
    ...{ unit: 'L/day', low: LOW, high: largest.label, tolerance: TOLERANCE },
    value: found?.value ?? null,
    answer: [
      answer,
      `It is set to ${figureText(setting)} %, half a swing of a humidistat lower${has === null ? ', and its water drains away, so that no full tank stops it' : ''}.`,
    ],
    figure: `humidity of ${theRoom(place)}, mean of the worst 7 days [%]`,
    runs: all.map(({ value, tried, holds }) => ({
      ...{ tried: shown(value), figure: tried.worst, holds },
      money: tried.measures.money.total_per_year,
    })),
  };
}

/** A large one can dry or warm a small room beyond the range of the formulas: then a smaller one. */
async function largestThatRuns<T>(at: (label: number) => Promise<T>) {
  for (const label of LARGEST.slice(0, -1)) {
    const tried = await ifPossible(() => at(label));
    if (tried !== null) return { label, tried };
  }
  const label = LARGEST.at(-1)!;
  return { label, tried: await at(label) };
}

/** Highest mean relative humidity of a room over seven days on end, or over a shorter period. [%] */
export function worstWeek({ rooms }: PlanSeries, room: string): number {
  const hours = rooms.find(({ name }) => name === room)!.relativeHumidity;
  const length = Math.min(HOURS_PER_WEEK, hours.length);
  let sum = 0;
  let most = 0;
  for (let h = 0; h < hours.length; h++) {
    sum += hours[h]! - (h >= length ? hours[h - length]! : 0);
    if (h >= length - 1) most = Math.max(most, sum / length);
  }
  return most;
}

function dryingWords({ devices }: PlanMeasures): string {
  const dryer = Object.values(devices.detail).find(({ water_kg }) => water_kg < 0);
  if (dryer === undefined) return 'without ever running';
  return `${figureText(-dryer.water_kg, 0)} L and ${figureText(dryer.electricity_kwh, 0)} kWh over the period`;
}

const LOW = 1; // L/day
/** Large ones for homes, the largest first. [L/day] */
const LARGEST: readonly number[] = [40, 20, 12];
const TOLERANCE = 0.5; // L/day
/** Between on and off, as such devices usually have it. [%] */
const SWING = 6;
