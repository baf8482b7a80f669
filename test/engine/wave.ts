/** A number with two parts, for waves: the first in phase, the second a quarter ahead. */
export type Complex = readonly [number, number];

export const plus = (a: Complex, b: Complex): Complex => [a[0] + b[0], a[1] + b[1]];
export const times = (a: Complex, b: Complex): Complex => [
  a[0] * b[0] - a[1] * b[1],
  a[0] * b[1] + a[1] * b[0],
];
export const over = (a: Complex, b: Complex): Complex => {
  const square = b[0] * b[0] + b[1] * b[1];
  return times(a, [b[0] / square, -b[1] / square]);
};
export const size = (a: Complex): number => Math.hypot(...a);
export const distance = (a: Complex, b: Complex): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/**
 * The wave of one period in a series of step means, as the factor z of Re(z e^(i w t)).
 *
 * Averaging over a step flattens a wave a little; that is taken back.
 *
 * @param series  step means over a whole number of periods, the first step begins at t = 0
 * @param dt      [s]
 * @param period  [s]
 */
export function waveIn(series: Float64Array, dt: number, period: number): Complex {
  const w = (2 * Math.PI) / period;
  let inPhase = 0;
  let ahead = 0;
  series.forEach((value, s) => {
    inPhase += value * Math.cos(w * (s + 0.5) * dt);
    ahead -= value * Math.sin(w * (s + 0.5) * dt);
  });
  const half = (w * dt) / 2;
  const flat = Math.sin(half) / half;
  const scale = 2 / series.length / flat;
  return [inPhase * scale, ahead * scale];
}

/** How far a wave lags behind another, 0 to one period. [s] */
export function lagBehind(wave: Complex, driver: Complex, period: number): number {
  const [x, y] = over(wave, driver);
  const lag = (-Math.atan2(y, x) / (2 * Math.PI)) * period;
  return lag < 0 ? lag + period : lag;
}
