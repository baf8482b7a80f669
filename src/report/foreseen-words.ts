/** Forecasts that ask nothing of a home, in words. */
export const GUESS_WORDS = {
  mean: 'its mean so far',
  week: 'the same hour of other weeks',
  day: 'the last day repeated',
} as const;

/** What stands behind a difference: " K", " points" of what is in percent, nothing of a share. */
export const unitWords = (unit: string): string =>
  unit === '' || unit.startsWith('/') ? unit : unit === '%' ? ' points' : ` ${unit}`;
