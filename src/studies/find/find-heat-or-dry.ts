import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { firstDehumidifier } from '../../scenario/edits/add-device.ts';
import { figureText } from '../../units/figure-text.ts';
import { signedSum, sumText } from '../../units/sum-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { coldSpots, type EqualRisk, equalRisk } from './equal-risk.ts';
import type { Finding, FindSetup } from './finding.ts';

/**
 * Heat more or dry more, at the same risk of mould: two ways to keep the cold spot of a room above 80 %
 * for as few hours, and their bills. The value is the price of electricity over that of the heating
 * fuel at which both cost the same.
 *
 * @returns null where the plan has a dehumidifier already, or nothing to heat the room with
 */
export async function findHeatOrDry(setup: FindSetup, room: string): Promise<Finding | null> {
  if (firstDehumidifier(setup.raw) !== null) return null;
  const risk = await equalRisk(setup, room);
  if (risk === null) return null;
  const { asIs, warm, dry, runs } = risk;
  const ratio = warm === null ? null : breakEvenRatio(asIs, warm.plan, dry.plan);
  return {
    question: `whether to heat or to dry ${theRoom(room)}, at the same risk of mould`,
    ...{ unit: '-', low: 0, high: 6, tolerance: 0.1, value: ratio?.ratio ?? null },
    answer: answerOf(risk, room, ratio),
    figure: `cold spot of ${theRoom(room)} above 80 % [h]`,
    runs: runs.map((one) => ({ ...one, holds: one.holds && !staysWet(one.figure, asIs) })),
  };
}

/** Whether a cold spot that is so long above 80 % is so most of the time. @param hours  [h] */
const staysWet = (hours: number, { period }: PlanMeasures): boolean => hours > period.hours / 2;

function answerOf(
  { asIs, warm, dry, beyond }: EqualRisk,
  room: string,
  ratio: Ratio | null,
): string[] {
  const spots = coldSpots(room);
  const hours = (plan: PlanMeasures) => `${figureText(spots(plan), 0)} h`;
  const more = (plan: PlanMeasures) => signedSum(extraPerYear(asIs, plan), 0);
  const now = `As it is the cold spot of ${theRoom(room)} is above 80 % for ${hours(asIs)}`;
  if (warm === null) return [`${now}; no drying does what two kelvins more do.`];
  if (spots(dry.plan) >= spots(asIs)) return [`${now}, and drying makes it none less.`];
  const wet = staysWet(spots(warm.plan), asIs) && staysWet(spots(dry.plan), asIs);
  return [
    `${now}; with ${warm.words} for ${hours(warm.plan)}, with ${dry.words} for ${hours(dry.plan)}.`,
    ...(wet
      ? [
          `Neither makes ${theRoom(room)} dry: more than half of the ${figureText(asIs.period.hours, 0)} h mould can grow there either way${beyond === null || staysWet(spots(beyond.dry.plan), asIs) ? ', so look for what else keeps it damp' : ''}.`,
        ]
      : []),
    ...(beyond === null
      ? []
      : [
          `More drying does more: ${beyond.dry.words} at its usual setting leaves ${hours(beyond.dry.plan)} for ${more(beyond.dry.plan)} ${asIs.money.currency} a year, even ${beyond.warm.words} ${hours(beyond.warm.plan)} for ${more(beyond.warm.plan)}.`,
        ]),
    `Heating comes to ${more(warm.plan)} ${asIs.money.currency} a year, drying to ${more(dry.plan)}, without the price of the device.`,
    cheaperWords(warm.plan, dry.plan),
    ratioWords(ratio),
  ];
}

function cheaperWords(heat: PlanMeasures, dry: PlanMeasures): string {
  const less = extraPerYear(heat, dry);
  const by = sumText(Math.abs(less), 0);
  if (by === '0') return 'At the prices of today both cost the same.';
  return `At the prices of today ${less < 0 ? 'drying' : 'heating'} is the cheaper way, by ${by} ${heat.money.currency} a year.`;
}

/** What two ways take of electricity and of the fuel that heats, and what a unit of each costs. */
interface Ratio {
  readonly fuel: string;
  /** Price of electricity over that of the fuel at which both cost the same. */
  readonly ratio: number;
  /** As bought now; null where one of the two is not bought more or less. */
  readonly today: number | null;
}

/** Null where both take electricity alone, or drying takes no more of it. */
export function breakEvenRatio(
  asIs: PlanMeasures,
  heat: PlanMeasures,
  dry: PlanMeasures,
): Ratio | null {
  const fuel = Object.keys(asIs.heating.delivered_kwh).find((name) => name !== ELECTRIC);
  if (fuel === undefined) return null;
  const burnt = (plan: PlanMeasures) => plan.heating.delivered_kwh[fuel] ?? 0;
  const drawn = ({ heating, cooling, devices }: PlanMeasures) =>
    (heating.delivered_kwh[ELECTRIC] ?? 0) +
    (cooling.delivered_kwh[ELECTRIC] ?? 0) +
    devices.electricity_kwh;
  const more = drawn(dry) - drawn(heat);
  if (!(more > 0)) return null;
  const price = (one: PlanMeasures, kwh: (plan: PlanMeasures) => number, meter: string) =>
    ((one.money.by_fuel[meter] ?? 0) - (asIs.money.by_fuel[meter] ?? 0)) / (kwh(one) - kwh(asIs));
  const today = price(dry, drawn, ELECTRIC) / price(heat, burnt, fuel);
  return {
    fuel,
    ratio: (burnt(heat) - burnt(dry)) / more,
    today: Number.isFinite(today) && today > 0 ? today : null,
  };
}

function ratioWords(ratio: Ratio | null): string {
  if (ratio === null) return 'Both take electricity alone, so that no ratio of prices decides.';
  const { fuel, ratio: even, today } = ratio;
  if (even <= 0) return `Drying takes more ${fuel} as well, so that no price makes it the cheaper.`;
  const now = today === null ? '' : `; now it is ${figureText(today, 1)} times`;
  return `Both cost the same where a kWh of electricity costs ${figureText(even, 1)} times as much as one of ${fuel}${now}.`;
}

const ELECTRIC = 'electricity';
