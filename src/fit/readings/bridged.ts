/**
 * A series whose gaps are crossed by a straight line between the readings on either side, and held
 * before the first and after the last. It only keeps a run going through a gap; no misfit is counted there.
 *
 * @param values  NaN in gaps, not all of them
 */
export function bridged(values: Float64Array): Float64Array {
  const out = Float64Array.from(values);
  let last = -1;
  for (let k = 0; k < out.length; k++) {
    const value = values[k]!;
    if (Number.isNaN(value)) continue;
    const from = last < 0 ? value : values[last]!;
    for (let q = last + 1; q < k; q++) {
      const share = last < 0 ? 0 : (q - last) / (k - last);
      out[q] = from + share * (value - from);
    }
    last = k;
  }
  if (last >= 0) out.fill(values[last]!, last + 1);
  return out;
}
