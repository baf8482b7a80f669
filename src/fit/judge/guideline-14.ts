import { mean } from 'simple-statistics';

/** Both in shares of the observed mean. [-] */
export interface Guideline14 {
  readonly cvRmse: number;
  readonly nmbe: number;
}

/**
 * CV(RMSE) and NMBE of a model, in shares of the observed mean. [-]
 *
 * CV(RMSE) = sqrt(sum (m - s)^2 / (n - p)) / mean(m), NMBE = sum (m - s) / ((n - p) mean(m)), with p = 1 for
 * both, so that a model that gives too little has an NMBE above 0.
 *
 * Source: ASHRAE Guideline 14, 2014, section 5.2.11 (from memory).
 *
 * @param observed   NaN in gaps
 * @param simulated  one for each
 * @returns null where fewer than two hours are known or the observed mean is 0
 */
export function guideline14(observed: Float64Array, simulated: Float64Array): Guideline14 | null {
  const pairs = [...observed].flatMap((m, k) => (Number.isNaN(m) ? [] : [[m, simulated[k]!]]));
  if (pairs.length < 2) return null;
  const average = mean(pairs.map(([m]) => m!));
  if (average === 0) return null;
  const errors = pairs.map(([m, s]) => m! - s!);
  const free = pairs.length - PARAMETERS;
  const squares = errors.reduce((sum, e) => sum + e * e, 0);
  return {
    cvRmse: Math.sqrt(squares / free) / average,
    nmbe: errors.reduce((sum, e) => sum + e, 0) / (free * average),
  };
}

const PARAMETERS = 1;
