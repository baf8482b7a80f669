/**
 * Means over the steps from readings taken once a step.
 *
 * Between readings a straight line is assumed and integrated exactly, so that the sum over a series
 * that closes on itself stays what it was. At the ends of an open series the outermost reading holds.
 *
 * @param readings  number k was taken at (k + delay) steps; in an even series
 * @param delay  how long after the start of its step a reading was taken [steps], any number
 * @param periodic  whether the end meets the start
 * @returns number k is the mean from k to k + 1 steps
 */
export function sampledToMeans(
  readings: Float64Array,
  delay: number,
  periodic: boolean,
): Float64Array {
  const n = readings.length;
  const at = (k: number) =>
    readings[periodic ? ((k % n) + n) % n : Math.min(n - 1, Math.max(0, k))]!;
  const whole = Math.floor(-delay);
  const part = -delay - whole; // the step starts this far after a reading
  return Float64Array.from(readings, (_, k) => {
    const a = at(k + whole);
    const b = at(k + whole + 1);
    const c = at(k + whole + 2);
    const first = (1 - part) * (a + ((b - a) * (1 + part)) / 2);
    const second = part * (b + ((c - b) * part) / 2);
    return first + second;
  });
}
