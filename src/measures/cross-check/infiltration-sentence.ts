import type { Crack, Home } from '../../home/home.ts';
import { figureText } from '../../units/figure-text.ts';
import type { MeasuresSetup } from '../measures-setup.ts';
import type { Climate } from '../series/monthly-climate.ts';
import { differenceInWords, LEAST_ACH, needsReason } from './difference.ts';

/**
 * How the mean leakage simulated agrees with ach50/20 and, where it does not, why.
 *
 * @param ach   simulated mean [1/h]
 * @param year  means over the whole period
 */
export function infiltrationSentence(
  home: Home,
  ach: number,
  year: Climate,
  at: Pick<MeasuresSetup, 'weather' | 'period'>,
): string {
  const { ach50, how } = home.leakage;
  const simulated = `${figureText(ach, 2)} ${ach50 === null ? 'air changes an hour ' : ''}on average`;
  if (ach50 === null) {
    return `Leakage: ${simulated}; no blower-door figure is known to set beside it.`;
  }
  const rule = ach50 / 20;
  const facts =
    `Leakage: a twentieth of the blower-door figure is ${figureText(rule, 2)} air changes an ` +
    `hour, the simulation has ${simulated}; ${differenceInWords(rule, ach, LEAST_ACH)}.`;
  if (!needsReason(rule, ach, LEAST_ACH)) return facts;
  if (how.by === 'rate') {
    return `${facts} The scenario gives leakage as a steady rate, of which a blower door knows nothing.`;
  }
  const warmer = year.indoor - year.outdoor;
  const stack = STACK * Math.abs(warmer) * heightOf(how.cracks);
  const winds = windsOf(at);
  const wind = WIND * (home.windRatio ?? 1) ** 2 * mean(winds.map((speed) => speed ** 2));
  const leader = stack > wind ? 'warmth inside' : 'wind';
  const share = (100 * Math.max(stack, wind)) / (stack + wind);
  return (
    `${facts} Here ${leader} drives most of it (${figureText(share, 0)} %): on average the ` +
    `rooms are ${figureText(Math.abs(warmer), 1)} °C ${warmer < 0 ? 'cooler' : 'warmer'} than ` +
    `outdoors and the wind blows at ${figureText(mean(winds), 1)} m/s before ` +
    `shelter and terrain. The 20 stands for an average house and climate; here it would be ` +
    `${figureText(ach50 / ach, 0)}.`
  );
}

/** Wind speeds that the file has for the period, whose years may come again. [m/s] */
function windsOf({
  weather: { windSpeed, start, step, count },
  period,
}: Pick<MeasuresSetup, 'weather' | 'period'>): Float64Array {
  const first = Math.floor((period.start - start) / step);
  const readings = Math.max(1, Math.round((period.hours * 3600) / step));
  return Float64Array.from(
    { length: readings },
    (_, k) => windSpeed[(((first + k) % count) + count) % count]!,
  );
}

function mean(values: Float64Array): number {
  let sum = 0;
  for (const v of values) sum += v;
  return sum / values.length;
}

/** Between the lowest and the highest crack. [m] */
function heightOf(cracks: readonly Crack[]): number {
  const heights = cracks.map(({ height }) => height);
  return cracks.length === 0 ? 0 : Math.max(...heights) - Math.min(...heights);
}

/** Weight of warm air beside cold: density times gravity over temperature. [Pa/(m K)] */
const STACK = 0.043;
/** Half the density of air, for a pressure coefficient that differs by 1 between the sides. [kg/m3] */
const WIND = 0.6;
