import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { addDehumidifier, firstDehumidifier } from '../../scenario/edits/add-device.ts';
import { isLegalEdit } from '../../scenario/edits/edit.ts';
import { raiseRoomSetpoint, raiseSetpoints } from '../../scenario/edits/raise-setpoints.ts';
import { figureText } from '../../units/figure-text.ts';
import { edited, type Finding, type FindSetup } from './finding.ts';
import { leastThatHolds } from './least-that-holds.ts';

/**
 * Heat more or dry more, at the same risk of mould: the room is kept so much warmer that its cold
 * spot is above 80 % for no more hours than with a dehumidifier, and the two bills are compared. The
 * value is the price of electricity over that of the heating fuel at which they cost the same.
 *
 * @returns null where the plan has a dehumidifier already, or nothing to heat with
 */
export async function findHeatOrDry(setup: FindSetup, room: string): Promise<Finding | null> {
  const { raw, run } = setup;
  const warmer = warmerBy(raw, room);
  if (firstDehumidifier(raw) !== null || warmer === null) return null;
  const spots = ({ rooms }: PlanMeasures) => rooms[room]!.cold_spot_hours_above_80_pct;
  const [asIs, dry] = await Promise.all([
    run(setup.variant),
    run(edited(setup, addDehumidifier(raw, 'dehumidifier', room, LABEL))),
  ]);
  const { found, all } = await leastThatHolds({
    ...{ low: 0, high: WARMEST, tolerance: TOLERANCE },
    at: async (kelvin) => (kelvin === 0 ? asIs : run(edited(setup, warmer.by(kelvin)))),
    holds: (tried) => spots(tried) <= spots(dry),
  });
  const money = (plan: PlanMeasures) => plan.money.total_per_year - asIs.money.total_per_year;
  const { currency } = asIs.money;
  const hours = `${figureText(spots(dry), 0)} h instead of ${figureText(spots(asIs), 0)}`;
  const drying = `A dehumidifier of ${LABEL} L/day leaves the cold spot of the ${room} above 80 % for ${hours}`;
  const ratio = found === null ? null : breakEvenRatio(asIs, found.tried, dry);
  return {
    question: `whether to heat or to dry the ${room}, at the same risk of mould`,
    ...{ unit: '-', low: 0, high: WARMEST, tolerance: TOLERANCE, value: ratio?.ratio ?? null },
    answer:
      found === null
        ? [
            `${drying}; with ${warmer.what} kept ${WARMEST} K warmer it still is for ${figureText(spots(all.at(-1)!.tried), 0)} h, so that no heating does the same.`,
          ]
        : found.value === 0
          ? [`${drying}, which is none less: there is nothing to choose.`]
          : [
              `${drying}, as does keeping ${warmer.what} ${figureText(found.value, 1)} K warmer.`,
              `Drying costs ${figureText(money(dry), 0)} ${currency} a year more than now, without the price of the device, and heating ${figureText(money(found.tried), 0)}.`,
              ratioWords(ratio),
            ],
    figure: `cold spot of the ${room} above 80 % [h]`,
    runs: [
      ...all.map(({ value, tried, holds }) => ({
        tried: value === 0 ? 'as it is' : `${figureText(value, 2)} K warmer`,
        ...{ figure: spots(tried), money: tried.money.total_per_year, holds },
      })),
      {
        ...{ tried: `dehumidifier, ${LABEL} L/day`, figure: spots(dry) },
        ...{ money: dry.money.total_per_year, holds: true },
      },
    ],
  };
}

/** How a room is kept warmer: alone where it has a thermostat, else with the whole home. */
function warmerBy(raw: unknown, room: string) {
  const alone = raiseRoomSetpoint(raw, room, TOLERANCE);
  if (alone !== null && isLegalEdit(raw, alone)) {
    return { what: 'it alone', by: (kelvin: number) => raiseRoomSetpoint(raw, room, kelvin) };
  }
  if (raiseSetpoints(raw, 0) === null) return null;
  return { what: 'the whole home', by: (kelvin: number) => raiseSetpoints(raw, kelvin) };
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
  const now =
    today === null
      ? ''
      : `; now it is ${figureText(today, 1)} times, so ${today < even ? 'drying' : 'heating'} is the cheaper`;
  return `Both cost the same where a kWh of electricity costs ${figureText(even, 1)} times as much as one of ${fuel}${now}.`;
}

const ELECTRIC = 'electricity';
const LABEL = 12; // L/day
const WARMEST = 6; // K
const TOLERANCE = 0.1; // K
