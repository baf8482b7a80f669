import type { HeatSource, Home } from '../../home/home.ts';
import { intervalsOf } from '../../log/intervals.ts';
import { type Log, type LoggedSeries, seriesOf } from '../../log/log.ts';
import type { Weather } from '../../weather/weather.ts';
import { heatOfElectricity, isElectric } from './heat-of-electricity.ts';
import { hourlyMeans } from './hourly-means.ts';
import { lessSteady } from './less-steady.ts';
import { LONGEST_DAY } from './meter-stretches.ts';
import { MILD, mildShare } from './mild-share.ts';

/** Heat of the home's rooms by a meter that counts other things too. */
export interface MeteredHeat {
  /** The meter's own series. */
  readonly meter: LoggedSeries;
  /** [W] */
  readonly series: LoggedSeries;
  /** How it was made from the meter, in a sentence. */
  readonly words: string;
}

/** Shares of meters that do not heat rooms, as the scenario has them [-]; null where it says nothing. */
export interface Beside {
  readonly gas: number | null;
  readonly electricity: number | null;
}

/**
 * Heat to rooms from a meter of what heats the home, whose heating power nobody logged: the electricity
 * of its heating, else its gas. What the meter shows less a steady part for hot water and cooking, times
 * the efficiency or COP of the scenario. The steady part is a share of the meter's mean; days with less
 * than that gave no heat. Null where the home has not one source alone, or the source does not burn what is metered.
 */
export function meteredHeat(
  log: Log,
  home: Home,
  weather: Weather,
  beside: Beside,
): MeteredHeat | null {
  const ofRooms = log.series.some(
    ({ quantity, room }) =>
      quantity === 'heating power' || (quantity === 'heating electricity' && room !== null),
  );
  const source = home.sources.length === 1 ? home.sources[0]! : null;
  if (ofRooms || source === null) return null;
  return byElectricity(log, source, weather, beside) ?? byGas(log, source, weather, beside);
}

function byElectricity(
  log: Log,
  source: HeatSource,
  weather: Weather,
  { electricity }: Beside,
): MeteredHeat | null {
  const meter = seriesOf(log, 'heating electricity', null);
  if (meter === undefined || !isElectric(source)) return null;
  const pump = source.conversion.by === 'cop';
  const share = electricity ?? (pump ? USUAL_BESIDE.electricity : 0);
  const series = heatOfElectricity(lessSteady(hourlyMeans(meter), share), source, weather);
  const words =
    `Heat to rooms is taken from the electricity of the heating, ${byWhat(meter)}: ` +
    (share === 0
      ? ''
      : `less ${Math.round(100 * share)} % of its mean for hot water (${saidOf(electricity, 'electricity beside heating')}), `) +
    (pump
      ? 'times the COP of the scenario at the temperature outdoors.'
      : `times an efficiency of ${efficiencyOf(source)!.toFixed(2)}.`);
  return { meter, series, words };
}

function byGas(
  log: Log,
  source: HeatSource,
  weather: Weather,
  { gas }: Beside,
): MeteredHeat | null {
  const meter = seriesOf(log, 'gas', null);
  const efficiency = efficiencyOf(source);
  if (meter === undefined || source.fuel !== 'gas' || efficiency === null) return null;
  const share = gas ?? USUAL_BESIDE.gas;
  const burnt = lessSteady(hourlyMeans(meter), share);
  return {
    meter,
    series: {
      ...burnt,
      quantity: 'heating power',
      values: burnt.values.map((power) => efficiency * power),
    },
    words:
      `Heat to rooms is taken from the gas meter, ${byWhat(meter)}: less ${Math.round(100 * share)} % of its mean for hot ` +
      `water and cooking (${saidOf(gas, 'gas beside heating')}), ` +
      `times an efficiency of ${efficiency.toFixed(2)}.${gas === null ? mildWords(meter, weather) : ''}`,
  };
}

/** What the meter itself says of hot water and cooking, where that is not about what is assumed. */
function mildWords(meter: LoggedSeries, weather: Weather): string {
  const share = mildShare(meter, weather);
  if (share === null || Math.abs(share - USUAL_BESIDE.gas) < OTHERWISE) return '';
  const said = Math.min(MOST_BESIDE, share).toFixed(2);
  return ` On days of ${MILD} °C and more outdoors it shows ${Math.round(100 * share)} % of its mean: if nothing is heated then, say "gas beside heating: ${said}" and fit again.`;
}

/** What of a meter is compared. */
const byWhat = (meter: LoggedSeries): string =>
  intervalsOf(meter).every > LONGEST_DAY ? 'from each of its readings to the next' : 'day by day';

const saidOf = (share: number | null, key: string): string =>
  share === null ? `assumed; say "${key}" under "log:"` : 'as the scenario says';

const efficiencyOf = ({ conversion }: HeatSource): number | null =>
  conversion.by === 'efficiency' ? conversion.efficiency : null;

/**
 * Hot water and cooking in the gas of a heating season, 0.1 to 0.4, and hot water in the electricity of a
 * heat pump, 0 to 0.3; own judgement. [-]
 */
const USUAL_BESIDE = { gas: 0.2, electricity: 0.15 } as const;
/** Difference from what is assumed that is worth a word, and the most that may be said. [-] */
const OTHERWISE = 0.07;
const MOST_BESIDE = 0.9;
