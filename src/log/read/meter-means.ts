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

/** Whether numbers go up all the time but for a few new beginnings. */
function isCounter(energies: Float64Array): boolean {
  let down = 0;
  let up = 0;
  for (let k = 1; k < energies.length; k++) {
    if (energies[k]! < energies[k - 1]!) down++;
    else if (energies[k]! > energies[k - 1]!) up++;
  }
  return up > 0 && down <= (up + down) * NEW_BEGINNINGS;
}

const NEW_BEGINNINGS = 0.01;
