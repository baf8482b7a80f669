/**
 * Refuse a number outside its range. NaN is refused too, because every comparison with NaN is false.
 *
 * @param value  the number received
 * @param range  lowest and highest number that is accepted, both included
 * @param what   who asks and for what, e.g. "dewPoint: vapour pressure"
 * @param unit   unit of value and range, as it is written, e.g. "Pa"
 * @throws RangeError naming the quantity, its range, its unit and the value received
 */
export function requireWithin(
  value: number,
  range: readonly [number, number],
  what: string,
  unit: string,
): void {
  if (value >= range[0] && value <= range[1]) return;
  throw new RangeError(
    `${what} must be between ${range[0]} and ${range[1]} ${unit}, got ${value} ${unit}`.replaceAll(
      / (?=,|$)/g,
      '',
    ),
  );
}
