import { unitBehind } from './unit-behind.ts';

/**
 * Refuse a number outside its range. NaN is refused too, because every comparison with NaN is false.
 *
 * @param value  the number received
 * @param range  lowest and highest number that is accepted, both included
 * @param what   who asks and for what, e.g. "dewPoint: vapour pressure"
 * @param unit   unit of value and range, as it is written, e.g. "Pa"
 * @throws OutOfRange, a RangeError, naming the quantity, its range, its unit and the value received
 */
export function requireWithin(
  value: number,
  range: readonly [number, number],
  what: string,
  unit: string,
): void {
  if (value >= range[0] && value <= range[1]) return;
  throw new OutOfRange(value, range, what, unit);
}

/** A number outside the range of a formula; its parts stay data for whoever tells a person of it. */
export class OutOfRange extends RangeError {
  readonly value: number;
  readonly range: readonly [number, number];
  /** The quantity alone, such as "vapour pressure". */
  readonly quantity: string;
  /** Unit of value and range, such as "Pa"; empty for none. */
  readonly unit: string;

  constructor(value: number, range: readonly [number, number], what: string, unit: string) {
    const of = unitBehind(unit);
    super(`${what} must be between ${range[0]} and ${range[1]}${of}, got ${value}${of}`);
    this.name = 'OutOfRange';
    this.value = value;
    this.range = range;
    this.quantity = what.slice(what.indexOf(': ') + 1).trimStart();
    this.unit = unit;
  }
}
