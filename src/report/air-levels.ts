import type { PlanFigures } from '../studies/effects/plan-figures.ts';
/**
 * Decimals with which levels of a species are printed that stand beside each other.
 *
 * @param levels  [species unit]
 */
export const airDecimals = (...levels: readonly number[]): number =>
  Math.max(...levels) < 20 ? 1 : 0;

/** Level of a species that people live in; undefined where it is not told. [species unit] */
export const airLevel = ({ air }: Pick<PlanFigures, 'air'>, name: string): number | undefined =>
  air.find((level) => level.name === name)?.value;
