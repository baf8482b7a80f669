import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { addSteadyAir } from '../../scenario/edits/add-device.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { grouped, sumText } from '../../units/sum-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { edited, type Finding, type FindSetup } from './finding.ts';
import { leastThatHolds, type Tried } from './least-that-holds.ts';
import { STALE_SYMBOL, staleHours } from './stale-air.ts';

/** What still counts as neither stuffy nor dear. */
export interface AirLimits {
  /** Stale air with somebody in the room. [h] */
  readonly hours: number;
  /** Over what the home costs as it is. [currency/year] */
  readonly money: number;
}

/**
 * How much outdoor air, besides what comes in as it is, makes a room neither stuffy nor dear: from
 * the least with which stale air stands above its band for no more than so many hours with somebody
 * in, to the most that costs no more than so much a year. The air is blown in and out all the time,
 * without heat recovery; what it costs is its heat.
 */
export async function findOutdoorAir(
  setup: FindSetup,
  room: string,
  limits: AirLimits,
): Promise<Finding> {
  const asIs = await setup.run(setup.variant);
  const flow = { low: 0, high: HIGH, tolerance: TOLERANCE };
  const at = async (flow: number) =>
    flow === 0
      ? asIs
      : setup.run(edited(setup, addSteadyAir(setup.raw, 'outdoor air', room, 3.6 * flow)));
  const stuffy = (tried: PlanMeasures) => staleHours(tried.rooms[room]!);
  const dearer = (tried: PlanMeasures) => extraPerYear(asIs, tried);
  const [fresh, dear] = await Promise.all([
    leastThatHolds({ ...flow, at, holds: (tried) => stuffy(tried) <= limits.hours }),
    leastThatHolds({ ...flow, at, holds: (tried) => dearer(tried) > limits.money }),
  ]);
  const least = fresh.found;
  const within = least !== null && dearer(least.tried) <= limits.money;
  const all = new Map([...fresh.all, ...dear.all].map((one) => [one.value, one]));
  const byFlow = [...all.values()].sort((a, b) => a.value - b.value);
  return {
    question: `the outdoor air that leaves ${theRoom(room)} stuffy for no more than ${figureText(limits.hours, 0)} h and costs no more than ${grouped(String(limits.money))} ${asIs.money.currency} a year`,
    ...{ ...flow, unit: 'L/s', value: within ? least.value : null },
    answer: answerOf(least, dear.found, fresh.all.at(-1)!.tried),
    figure: `${STALE_SYMBOL} in ${theRoom(room)} above its band with somebody in [h]`,
    runs: byFlow.map(({ value, tried }) => ({
      tried: value === 0 ? 'as it is' : `${figureText(value, 1)} L/s more`,
      ...{ figure: stuffy(tried), money: tried.money.total_per_year },
      holds: stuffy(tried) <= limits.hours && dearer(tried) <= limits.money,
    })),
  };

  function answerOf(
    least: Tried<PlanMeasures> | null,
    dear: Tried<PlanMeasures> | null,
    last: PlanMeasures,
  ): string[] {
    const { currency } = asIs.money;
    const hours = (tried: PlanMeasures) => `${figureText(stuffy(tried), 0)} h`;
    const cost = (tried: PlanMeasures) => `${sumText(dearer(tried), 0)} ${currency} a year`;
    const now = `As it is ${STALE_SYMBOL} stands above its band for ${hours(asIs)}.`;
    if (least === null) {
      return [
        `No rate does it: even with ${figureText(HIGH)} L/s more ${theRoom(room)} is stuffy for ${hours(last)}.`,
        now,
      ];
    }
    const { value, tried } = least;
    if (value === 0) return [`${capital(theRoom(room))} needs no more than it has.`, now];
    const rate = `${figureText(value, 1)} L/s`;
    if (dearer(tried) > limits.money) {
      return [
        `No rate does both: ${rate} more make ${theRoom(room)} fresh enough (${hours(tried)}), but cost ${cost(tried)}, more than ${grouped(String(limits.money))}.`,
        now,
      ];
    }
    const most =
      dear === null
        ? `even ${figureText(HIGH)} L/s`
        : `${figureText(Math.max(value, dear.value - TOLERANCE), 1)} L/s`;
    return [
      `${rate} more do it: ${hours(tried)}, for ${cost(tried)}; up to ${most} cost no more than ${grouped(String(limits.money))}.`,
      now,
    ];
  }
}

const HIGH = 40; // L/s, ten for each of four people
const TOLERANCE = 0.25; // L/s
