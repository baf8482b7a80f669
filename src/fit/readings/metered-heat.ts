import type { HeatSource, Home } from '../../home/home.ts';
import { type Log, type LoggedSeries, seriesOf } from '../../log/log.ts';
import { meanOf } from '../statistics/misfit.ts';

/** Heat of the home's rooms by a meter that counts other things too. */
export interface MeteredHeat {
  /** [W] */
  readonly series: LoggedSeries;
  /** How it was made from the meter, in a sentence. */
  readonly words: string;
}

/**
 * Heat to rooms from the gas meter of a home whose only source burns gas and whose heating power nobody
 * logged: what the meter shows less a steady part for hot water and cooking, times the efficiency of the
 * scenario. The steady part is a share of the meter's mean; hours with less than that gave no heat.
 *
 * @param beside  share of the gas that does not heat rooms [-]; null where nobody said
 */
export function meteredHeat(log: Log, home: Home, beside: number | null): MeteredHeat | null {
  if (log.series.some(({ quantity }) => quantity === 'heating power')) return null;
  const gas = seriesOf(log, 'gas', null);
  const source = home.sources.length === 1 ? home.sources[0]! : null;
  if (gas === undefined || source === null || source.fuel !== 'gas') return null;
  const efficiency = efficiencyOf(source);
  if (efficiency === null) return null;
  const share = beside ?? USUAL_BESIDE;
  const steady = share * meanOf(gas.values);
  const values = gas.values.map((power) => efficiency * Math.max(0, power - steady));
  return {
    series: { ...gas, quantity: 'heating power', values },
    words:
      `Heat to rooms is taken from the gas meter, day by day: less ${Math.round(100 * share)} % of its mean for hot ` +
      `water and cooking (${beside === null ? 'assumed; say "gas beside heating" under "log:"' : 'as the scenario says'}), ` +
      `times an efficiency of ${efficiency.toFixed(2)}.`,
  };
}

const efficiencyOf = ({ conversion }: HeatSource): number | null =>
  conversion.by === 'efficiency' ? conversion.efficiency : null;

/** Hot water and cooking in the gas of a heating season; own judgement, 0.1 to 0.4. [-] */
const USUAL_BESIDE = 0.2;
