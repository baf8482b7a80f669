import type { Ledger } from '../../engine/ledger/ledger.ts';
import { humidityClass } from '../../physics/moisture/humidity-class.ts';
import { figureText } from '../../units/figure-text.ts';
import { ledgerSum } from '../ledger-sum.ts';
import type { Climate } from '../series/monthly-climate.ts';
import {
  becauseOf,
  differenceInWords,
  type Effect,
  LEAST_G_PER_M3,
  mainReasons,
  needsReason,
} from './difference.ts';

/** The handbook's steady vapour excess beside the simulation's. */
export interface VapourCrossCheck {
  /** G/(nV) over the heating season. [g/m3] */
  readonly excess: number;
  readonly humidityClass: number;
  readonly sentence: string;
}

/**
 * G is what people, appliances, drying and devices put into the air over the season; nV is its mean
 * leakage (where there is none, `ruleFlow`). Airing, fans, flues and condensation are not in the estimate,
 * so what they carry away is what it misses; the reasons together make up the difference.
 *
 * @param ruleFlow  leakage by ach50/20, null where unknown [m3/h]
 */
export function vapourCrossCheck(
  ledger: Ledger,
  season: readonly number[],
  climate: Climate,
  ruleFlow: number | null,
): VapourCrossCheck {
  const flow = climate.infiltration > 0 ? climate.infiltration : (ruleFlow ?? 0) / 3600;
  const air = flow * climate.seconds; // m3
  const simulated = climate.vapourExcess;
  if (air === 0) {
    return {
      excess: simulated,
      humidityClass: classOf(simulated, climate),
      sentence:
        'Vapour: no air leaks through this home, so the rule of thumb has no answer; in the ' +
        `simulation the rooms hold ${density(simulated)} more than outdoors.`,
    };
  }
  const water = ledger.water;
  const perAir = (values: Float64Array): number => (1000 * ledgerSum(values, season, ledger)) / air;
  const excess = SOURCES.reduce((sum, term) => sum + perAir(water[term]), 0);
  const known: Effect[] = [
    effect('airing', -perAir(water.openings)),
    effect('a fan', -perAir(water.fans) - perAir(water.extracts)),
    effect('the draught of a stove', -perAir(water.draught)),
    effect('water that runs off', -perAir(water.runoff)),
  ];
  const rest = excess - simulated - known.reduce((sum, { size }) => sum + size, 0);
  const why = mainReasons([...known, unevenAir(rest)], excess - simulated);
  const classFound = classOf(excess, climate);
  const facts =
    'Vapour: in the heating season what people and housework give, over the air that leaks in, ' +
    `makes ${density(excess)} more in the rooms than outdoors (humidity class ${classFound} of 5), ` +
    `the simulation has ${density(simulated)}; ${differenceInWords(excess, simulated, LEAST_G_PER_M3)}.`;
  return {
    excess,
    humidityClass: classFound,
    sentence: needsReason(excess, simulated, LEAST_G_PER_M3) ? `${facts} ${becauseOf(why)}` : facts,
  };
}

/** Amounts are per cubic metre of leaked air, so that they add up to the difference. */
function effect(who: string, size: number): Effect {
  const verb = size > 0 ? 'takes away' : 'brings in';
  return { size, words: `${who} ${verb} ${density(Math.abs(size))} that it does not count` };
}

const unevenAir = (size: number): Effect => ({
  size,
  words:
    size > 0
      ? 'rooms where vapour is made leak more than the mean, or furnishings keep some'
      : 'rooms where vapour is made leak less than the mean, or furnishings give some back',
});

/** A home all but airtight has an estimate beyond any class's limits: the highest class will do. */
const classOf = (excess: number, { outdoor }: Climate): number =>
  humidityClass(Math.max(-BEYOND, Math.min(BEYOND, excess)), outdoor, 'g/m3');
const density = (value: number): string => `${figureText(value, 2)} g/m3`;
const SOURCES = ['people', 'appliances', 'drying', 'devices'] as const;
const BEYOND = 1000; // g/m3
