import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Stack and wind coefficients of the basic infiltration model.
 *
 * @param storeys  1 to 3; between whole storeys on a straight line (ours; the tables have only 1, 2, 3)
 * @param shelterClass  1 no obstructions; 2 isolated rural house; 3 suburban, buildings across the
 *   street; 4 urban, more than a house's height away; 5 close on all sides
 * @returns stack [(L/s)2/(cm4 K)] and wind [(L/s)2/(cm4 (m/s)2)]
 * @throws RangeError outside those ranges, for a class that is not whole, or NaN
 *
 * Source: ASHRAE Fundamentals (2017) ch. 16 tables 4 and 6, from memory.
 */
export function leakageCoefficients(
  storeys: number,
  shelterClass: number,
): { readonly stack: number; readonly wind: number } {
  requireWithin(storeys, STOREYS, 'leakageCoefficients: storeys', '');
  const wind = WIND[shelterClass - 1];
  if (wind === undefined) {
    throw new RangeError(
      `leakageCoefficients: shelter class must be 1, 2, 3, 4 or 5, got ${shelterClass}`,
    );
  }
  return { stack: between(STACK, storeys), wind: between(wind, storeys) };
}

function between(table: readonly [number, number, number], storeys: number): number {
  const [one, two, three] = table;
  return storeys <= 2 ? one + (storeys - 1) * (two - one) : two + (storeys - 2) * (three - two);
}

const STOREYS = [1, 3] as const;
const STACK = [0.000145, 0.00029, 0.000435] as const;
const WIND: readonly (readonly [number, number, number])[] = [
  [0.000319, 0.00042, 0.000494],
  [0.000246, 0.000325, 0.000382],
  [0.000174, 0.000231, 0.000271],
  [0.000104, 0.000137, 0.000161],
  [0.000032, 0.000042, 0.000049],
];
