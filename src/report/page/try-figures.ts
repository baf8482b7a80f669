import type { LivingFigures } from '../../living/messages.ts';
import { airLevel } from '../../measures/air/air-level.ts';
import { signedSum, sumText, withoutGroups } from '../../units/sum-text.ts';
import { airDecimals } from '../air-decimals.ts';

/** A figure as it is and as tried, as it is printed. */
export interface TriedFigure {
  readonly name: string;
  readonly unit: string;
  readonly before: string;
  readonly after: string;
  /** Difference of the printed figures. */
  readonly change: string;
  readonly look: 'better' | 'worse' | 'same';
}

/**
 * Figures of a span under the baseline and as tried, those that `compare` prints with the same digits.
 *
 * @param whole  whether the span is the whole period, of which money is told
 */
export function triedFigures(
  was: LivingFigures,
  is: LivingFigures,
  currency: string,
  whole: boolean,
): TriedFigure[] {
  const line = (
    name: string,
    unit: string,
    of: (one: LivingFigures) => number,
    decimals = 0,
  ): TriedFigure => {
    const [before, after] = [sumText(of(was), decimals), sumText(of(is), decimals)];
    const more = Number(withoutGroups(after)) - Number(withoutGroups(before));
    const look = more > 0 ? 'worse' : more < 0 ? 'better' : 'same';
    return { name, unit, before, after, change: signedSum(more, decimals), look };
  };
  return [
    ...(whole ? [line('money', `${currency} a year`, ({ figures }) => figures.money)] : []),
    { ...line('heat to rooms', 'kWh', ({ heat }) => heat), look: 'same' as const },
    line('too cold, room worst off', 'h a day', ({ figures }) => figures.cold.value, 1),
    ...(whole
      ? [line('too warm, somebody in', '% of the time', ({ figures }) => figures.warm)]
      : []),
    line('too damp', '% of the time', ({ figures }) => figures.damp),
    line('too dry', '% of the time', ({ figures }) => figures.dry),
    line('corners wet enough for mould', '% of the time', ({ figures }) => figures.spots),
    ...(whole
      ? [line('highest mould index', '0 to 6', ({ figures }) => figures.mould.value, 1)]
      : []),
    ...(whole ? was.figures.air : []).map(({ name, label, unit, kind }) => {
      const of = ({ figures }: LivingFigures): number => airLevel(figures, name) ?? Number.NaN;
      const what = `${label}, ${kind === 'mean' ? 'mean of the rooms' : 'night, room worst off'}`;
      return line(what, unit, of, airDecimals(of(was), of(is)));
    }),
  ];
}

/** Id of the table of a part of the period. */
export const spanId = (name: string): string => `try-${name.replaceAll(/[^a-z]+/g, '-')}`;

/**
 * Money with electricity at another price, until the run with it is done: what was drawn does not
 * change with a price that no rule asks about.
 *
 * @param mean   price of electricity as it is, on the mean [currency/kWh]
 * @param from, to  over that price, of the figures and as tried [-]
 * @param years  that the figures are of
 */
export function atOtherPrice(
  one: LivingFigures,
  mean: number,
  [from, to]: readonly [number, number],
  years: number,
): LivingFigures {
  const money = one.figures.money + (one.electricity * mean * (to - from)) / years;
  return { ...one, figures: { ...one.figures, money } };
}
