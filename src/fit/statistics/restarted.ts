/**
 * Residuals as they would be if the run were set to the log anew every five days: less their level on
 * the first day of each such stretch, which then counts for nothing itself.
 *
 * A level that lasts, as of a sensor that was moved or a store that nobody knows of, no longer pulls at
 * the parameters; what they do within days still does. It is a restart to first order: the error that a
 * restart would take away dies more slowly than the stretch lasts.
 *
 * @param residuals  hourly, NaN where there is none; stretches are counted from the first
 */
export function restarted(residuals: Float64Array): Float64Array {
  const out = new Float64Array(residuals.length).fill(Number.NaN);
  for (let from = 0; from < residuals.length; from += STRETCH) {
    const level = meanOf(residuals, from, Math.min(residuals.length, from + FIRST));
    const end = Math.min(residuals.length, from + STRETCH);
    for (let k = from + FIRST; k < end; k++) out[k] = residuals[k]! - level;
  }
  return out;
}

/** Mean of what is known from one hour to another; NaN where less than half is. */
function meanOf(values: Float64Array, from: number, to: number): number {
  let [sum, count] = [0, 0];
  for (let k = from; k < to; k++) {
    if (Number.isNaN(values[k]!)) continue;
    sum += values[k]!;
    count++;
  }
  return count < (to - from) / 2 ? Number.NaN : sum / count;
}

/** [h] */
const STRETCH = 5 * 24;
const FIRST = 24;
