import { probit, quantile, sampleRankCorrelation } from 'simple-statistics';

/** How far a figure goes with what is not known. */
export interface FigureDoubt {
  /** With every input as it is taken to be. */
  readonly as_is: number;
  /** A tenth of the samples lie below, half, and nine tenths. */
  readonly p10: number;
  readonly median: number;
  readonly p90: number;
  /** What moves it most, first; what could be chance is left out. */
  readonly matters: readonly Mattering[];
}

/** How closely a figure follows an input. */
interface Mattering {
  /** RFC 6901 pointer; "weather" for the year. */
  readonly path: string;
  /**
   * Spearman's rank correlation, from -1 to 1: above 0, more of the input is more of the figure. Of
   * the weather, the share of the figure's standard deviation that goes with the year.
   */
  readonly correlation: number;
}

/** Samples of one figure, and of the inputs that they were made with. */
export interface FigureSamples {
  readonly asIs: number;
  readonly figures: readonly number[];
  readonly inputs: readonly { readonly path: string; readonly shares: readonly number[] }[];
  /** Number of the weather year of each sample; empty where there is one year only. */
  readonly years: readonly number[];
}

export function figureDoubt({ asIs, figures, inputs, years }: FigureSamples): FigureDoubt {
  const [p10, median, p90] = quantile([...figures], [0.1, 0.5, 0.9]) as [number, number, number];
  const least = strongestByChance(inputs.length + (years.length > 0 ? 1 : 0), figures.length);
  const found = inputs.map(({ path, shares }) => ({
    path,
    correlation: rankCorrelation(shares, figures),
  }));
  const weather = { path: 'weather', correlation: correlationRatio(years, figures) };
  const matters = [...found, ...(years.length > 0 ? [weather] : [])]
    .filter(({ correlation }) => Math.abs(correlation) >= least)
    .sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation));
  return { as_is: asIs, p10, median, p90, matters };
}

/**
 * Spearman's rank correlation; tied values share the mean of their ranks. 0 where one of the two
 * never changes, or there are fewer than three.
 */
export function rankCorrelation(x: readonly number[], y: readonly number[]): number {
  const still = (list: readonly number[]) => list.every((value) => value === list[0]);
  if (x.length < 3 || still(x) || still(y)) return 0;
  return sampleRankCorrelation([...x], [...y]);
}

/**
 * Share of the standard deviation of a figure that goes with its group: the root of the sum of squares
 * between groups over the whole sum.
 *
 * Source: K. Pearson, Proc. R. Soc. Lond. 71, 1903, pp. 288-313 (correlation ratio; from memory).
 */
export function correlationRatio(groups: readonly number[], figures: readonly number[]): number {
  const mean = (list: readonly number[]) => list.reduce((sum, v) => sum + v, 0) / list.length;
  const all = mean(figures);
  const whole = figures.reduce((sum, value) => sum + (value - all) ** 2, 0);
  if (!(whole > 0)) return 0;
  const between = [...new Set(groups)].reduce((sum, group) => {
    const own = figures.filter((_, k) => groups[k] === group);
    return sum + own.length * (mean(own) - all) ** 2;
  }, 0);
  return Math.sqrt(between / whole);
}

/**
 * Correlation that the strongest of many inputs, none of which has anything to do with the figure,
 * passes in one study of twenty: normal, with standard error 1 / √(n - 1), shared out evenly over the
 * inputs (Bonferroni).
 */
export const strongestByChance = (inputs: number, samples: number): number =>
  probit(1 - 0.05 / (2 * Math.max(1, inputs))) / Math.sqrt(Math.max(1, samples - 1));

/** Figures whose ranges are told. */
export type Figure = 'money' | 'damp' | 'cold';

/**
 * Figures of one plan: money a year; damp as hours of cold spots above 80 % relative humidity, added up
 * over the rooms; cold as `PlanFigures` has it, of the room worst off [h/day].
 */
export interface PlanDoubt extends Readonly<Record<Figure, FigureDoubt>> {
  readonly plan: string;
}

/** A plan minus the baseline, sample by sample. */
export interface DifferenceDoubt extends Readonly<Record<Figure, BeatDoubt>> {
  readonly plan: string;
  /** Single inputs whose value turns round which of the two costs less. */
  readonly flips: readonly DoubtFlip[];
}

/** What is doubtful of a difference between two plans. */
export interface BeatDoubt extends FigureDoubt {
  /** Share of the samples in which the plan has less than the baseline, and as much. */
  readonly less: number;
  readonly equal: number;
}

/** A value of one input at which two plans cost the same, all else as it is. */
export interface DoubtFlip {
  readonly path: string;
  /** What it is taken to be. */
  readonly today: number;
  readonly value: number;
}
