import type { Ledger } from '../../engine/ledger/ledger.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import type { HeatingSeason } from '../energy/heating-season.ts';
import { ledgerSum } from '../ledger-sum.ts';
import type { AiringMeasures } from '../plan-measures.ts';
import type { AiringHours } from './airing-hours.ts';
import type { Rebounds } from './rebounds.ts';

/**
 * What open windows carried out, and at what price.
 *
 * A litre's heat and money are those of the heating season, because what goes out of a window in
 * summer was not paid for; over the season they are mean values, cold and mild days together.
 *
 * @param price  of a kilowatt-hour of heat from emitters, null where unknown [currency/kWh]
 */
export function airingMeasures(
  ledger: Ledger,
  { rows: season }: HeatingSeason,
  price: number | null,
  hours: AiringHours,
  rebounds: Rebounds,
): AiringMeasures {
  const every = ledger.months.map((_, row) => row);
  const litres = (rows: readonly number[]): number => lost(ledger.water.openings, rows, ledger);
  const heat = (rows: readonly number[]): number =>
    lost(ledger.energy.openings, rows, ledger) / JOULES_PER_KWH;
  const perLitre = litres(season) > LEAST_WATER ? heat(season) / litres(season) : null;
  return {
    openings_kg: litres(every),
    openings_kwh: heat(every),
    heating_season_kg: litres(season),
    heating_season_kwh: heat(season),
    kwh_per_litre: perLitre,
    money_per_litre: perLitre === null || price === null ? null : perLitre * price,
    short_airings: rebounds.airings,
    rebounds: rebounds.returned,
    rebound_minutes_mean: rebounds.minutesMean,
    hours_drier: hours.drier,
    hours_no_difference: hours.noDifference,
    hours_wetter: hours.wetter,
    hours_humidity_rule_wrong: hours.ruleWrong,
  };
}

/** Outflow as a positive number; the ledger has it negative, and 0 stays 0 instead of -0. */
const lost = (values: Float64Array, rows: readonly number[], ledger: Ledger): number =>
  0 - ledgerSum(values, rows, ledger);

/** Less water than this has no price: a litre would be divided by next to nothing. [kg] */
const LEAST_WATER = 0.01;
