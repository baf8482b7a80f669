import { wallPressureCoefficient } from '../../physics/airflow/wall-pressure-coefficient.ts';
import type { i32 } from '../../units/portable.ts';
import type { AirNetwork } from './lay-out-air-network.ts';

/** What wind meets: a wall that looks somewhere, or what has one coefficient for wind from anywhere. */
export type Side = { readonly azimuth: number } | { readonly coefficient: number };

/** Pressure coefficients of all sides for wind from every whole degree, `[side * 361 + degree]`. */
export function windTable(sides: readonly Side[]): Float64Array {
  const table = new Float64Array(sides.length * TURN);
  for (const [s, side] of sides.entries()) {
    for (let degree = 0; degree < TURN; degree++) {
      table[s * TURN + degree] =
        'azimuth' in side ? wallPressureCoefficient(degree - side.azimuth) : side.coefficient;
    }
  }
  return table;
}

/**
 * Set the pressure that wind puts on each side.
 *
 * @param table   see windTable
 * @param wind    that the coefficients belong to: at the home's eaves, after its shelter [m/s]
 * @param degree  whole degrees of the direction it comes from, 0 to 359
 * @param part    of a degree beyond that, 0 to 1
 */
export function setWind(
  { sides, sideCount, lightness, roomCount }: AirNetwork,
  table: Float64Array,
  wind: number,
  degree: i32,
  part: number,
): void {
  const dynamic = (0.5 * wind * wind) / lightness[roomCount]!;
  for (let s = 0; s < sideCount; s++) {
    const a = table[s * TURN + degree]!;
    const b = table[s * TURN + degree + 1]!;
    sides[s] = dynamic * (a + part * (b - a));
  }
}

/** Degrees from north to north, both counted. */
const TURN = 361;
