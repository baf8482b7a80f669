import type { Home } from '../home/home.ts';
import { figureText } from '../units/figure-text.ts';
import type { Weather } from '../weather/weather.ts';
import { differenceInWords, needsReason } from './difference.ts';
import type { Climate } from './monthly-climate.ts';

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
  weather: Weather,
): string {
  const { ach50, how } = home.leakage;
  if (ach50 === null) {
    return (
      `Mean leakage ${figureText(ach, 2)} air changes an hour; no blower-door figure is known ` +
      'to set beside it.'
    );
  }
  const rule = ach50 / 20;
  const facts =
    `Leakage by ach50/20 ${figureText(rule, 2)} air changes an hour, simulated mean ` +
    `${figureText(ach, 2)}: ${differenceInWords(rule, ach)}.`;
  if (!needsReason(rule, ach)) return facts;
  if (how.by === 'rate') {
    return `${facts} The scenario gives leakage as a steady rate, which the blower door does not know.`;
  }
  const stack = how.stack * Math.abs(year.indoor - year.outdoor);
  const wind = how.wind * meanSquare(weather.windSpeed);
  const leader = stack > wind ? 'warmth inside' : 'wind';
  const share = (100 * Math.max(stack, wind)) / (stack + wind);
  return (
    `${facts} Here ${leader} drives most of it (${figureText(share, 0)} %), with rooms ` +
    `${figureText(year.indoor - year.outdoor, 1)} K above outdoors and wind of ` +
    `${figureText(mean(weather.windSpeed), 1)} m/s before shelter; the divisor of 20 stands for ` +
    `an average house and climate, this one asks for ${figureText(ach50 / ach, 0)}.`
  );
}

const mean = (values: Float64Array): number =>
  values.reduce((sum, v) => sum + v, 0) / Math.max(1, values.length);
const meanSquare = (values: Float64Array): number =>
  values.reduce((sum, v) => sum + v * v, 0) / Math.max(1, values.length);
