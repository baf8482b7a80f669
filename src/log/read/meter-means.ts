/**
 * Mean powers between readings of a meter: differences of a counter, or amounts of each interval.
 *
 * A counter goes up but where it begins again at 0; that interval is unknown. The first mean is NaN.
 *
 * @param energies  counts, or amounts since the reading before [J]
 * @returns means [W], each over the time before its stamp
 */
export function meterMeans(
  times: Float64Array,
  energies: Float64Array,
): { readonly times: Float64Array; readonly values: Float64Array } {
  const values = new Float64Array(times.length).fill(Number.NaN);
  const counts = isCounter(energies);
  for (let k = 1; k < times.length; k++) {
    const used = counts ? energies[k]! - energies[k - 1]! : energies[k]!;
    if (used >= 0) values[k] = used / (times[k]! - times[k - 1]!);
  }
  return { times, values };
}

/**
 * Whether numbers go up but for a few new beginnings, or, as a counter of each day does, for falls that all
 * end near 0 and are far fewer than the rises. Amounts of intervals fall about as often as they rise.
 */
function isCounter(energies: Float64Array): boolean {
  let down = 0;
  let toZero = 0;
  let up = 0;
  for (let k = 1; k < energies.length; k++) {
    const [before, now] = [energies[k - 1]!, energies[k]!];
    if (now > before) up++;
    else if (now < before) {
      down++;
      if (now <= before * NEAR_ZERO) toZero++;
    }
  }
  if (up === 0) return false;
  const share = down / (up + down);
  return share <= FEW || (share <= SOME && toZero === down);
}

/** Of all changes, the share that may be falls: anywhere, and where all of them end near 0. */
const FEW = 0.1;
const SOME = 0.25;
/** What a new beginning may come to, over the count before it. */
const NEAR_ZERO = 0.1;
