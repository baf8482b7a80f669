/**
 * Whether temperatures taken for °C are most likely Fahrenheit.
 *
 * In no place on earth are 5 % of a year's hours above 49 °C, or half of them above 41 °C; in
 * Fahrenheit nearly every year has both. A file of cold months only can slip through.
 *
 * @param values  temperatures as they stand; NaN is skipped
 */
export function looksLikeFahrenheit(values: Float64Array): boolean {
  const known = values.filter((value) => !Number.isNaN(value)).sort();
  if (known.length === 0) return false;
  const share = (part: number) => known[Math.floor(part * (known.length - 1))]!;
  return share(0.5) > 41 || (known.length >= ENOUGH && share(0.95) > 49);
}

const ENOUGH = 24; // below, two wrong readings would already be 5 %
