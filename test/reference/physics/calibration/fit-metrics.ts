/**
 * NMBE, normalised mean bias error: how much a model gives too much or too little over all.
 *
 * Positive where the model gives more than was measured. (Some sources take measured minus model.)
 *
 * @param measured  readings, with a mean other than 0
 * @param modelled  as many, in the same unit
 * @param parameters  p: the sum is divided by n - p; 1 for a calibrated model, 0 for a plain mean
 * @returns [% of the measured mean]
 * @throws RangeError for series of different length, fewer than p + 1, holding NaN, or of mean 0
 *
 * Source: ASHRAE Guideline 14-2014, from memory; monthly limit 5 %, hourly 10 %. Made for energy,
 * not for temperatures in °C, whose zero means nothing: see rootMeanSquareError for those.
 */
export function nmbe(measured: Series, modelled: Series, parameters = 1): number {
  const { degrees, mean, bias } = sums(measured, modelled, parameters, 'nmbe');
  refuseZeroMean(mean, 'nmbe');
  return (100 * bias) / (degrees * mean);
}

/**
 * CV(RMSE), coefficient of variation of the root-mean-square error: how far a model scatters around readings.
 *
 * @returns [% of the measured mean]; parameters and errors as nmbe
 *
 * Source: ASHRAE Guideline 14-2014, from memory; monthly limit 15 %, hourly 30 %.
 */
export function cvRmse(measured: Series, modelled: Series, parameters = 1): number {
  const { degrees, mean, squares } = sums(measured, modelled, parameters, 'cvRmse');
  refuseZeroMean(mean, 'cvRmse');
  return (100 * Math.sqrt(squares / degrees)) / Math.abs(mean);
}

/**
 * Root of the mean squared error, in the unit of the readings.
 *
 * @throws RangeError for series of different length, empty, or holding NaN
 */
export function rootMeanSquareError(measured: Series, modelled: Series): number {
  const { degrees, squares } = sums(measured, modelled, 0, 'rootMeanSquareError');
  return Math.sqrt(squares / degrees);
}

/**
 * Mean size of the error, in the unit of the readings.
 *
 * @throws RangeError for series of different length, empty, or holding NaN
 */
export function meanAbsoluteError(measured: Series, modelled: Series): number {
  const { degrees, sizes } = sums(measured, modelled, 0, 'meanAbsoluteError');
  return sizes / degrees;
}

/** Degrees of freedom, mean reading, and sums of errors, their squares and their sizes. */
function sums(measured: Series, modelled: Series, parameters: number, who: string) {
  const n = measured.length;
  if (modelled.length !== n) {
    throw new RangeError(
      `${who}: needs as many modelled as measured, got ${modelled.length} and ${n}`,
    );
  }
  if (!(parameters >= 0 && n > parameters)) {
    throw new RangeError(`${who}: needs more than ${parameters} readings, got ${n}`);
  }
  const total = { readings: 0, bias: 0, squares: 0, sizes: 0 };
  for (let i = 0; i < n; i++) {
    const error = modelled[i]! - measured[i]!;
    if (!Number.isFinite(error)) {
      throw new RangeError(
        `${who}: needs numbers, got measured ${measured[i]} and modelled ${modelled[i]} at place ${i + 1}`,
      );
    }
    total.readings += measured[i]!;
    total.bias += error;
    total.squares += error * error;
    total.sizes += Math.abs(error);
  }
  return { degrees: n - parameters, mean: total.readings / n, ...total };
}

function refuseZeroMean(mean: number, who: string): void {
  if (mean === 0)
    throw new RangeError(`${who}: the measured mean is 0, so nothing can be its share`);
}

type Series = ArrayLike<number>;
