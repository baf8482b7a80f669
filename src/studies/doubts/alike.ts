/**
 * Whether two plain values say the same: numbers to a thousandth, because a value that was printed was
 * rounded; everything else exactly. Order of keys does not count.
 */
export function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') {
    return Object.is(a, b) || Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b));
  }
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  const inBoth = (key: string) =>
    Object.hasOwn(b, key) && alike(a[key as keyof typeof a], b[key as keyof typeof b]);
  return keys.length === others.length && keys.every(inBoth);
}

const ROUNDING = 1e-3;
