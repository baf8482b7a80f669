import { requireWithin } from '../../units/require-within.ts';
import { type Layer, layerCapacity, layerResistance } from './layer.ts';
import {
  inSeries,
  matrixOfCapacity,
  matrixOfLayer,
  matrixOfResistance,
  type TransferMatrix,
} from './transfer-matrix.ts';

/** How a component answers a swing of temperature of one period. Complex numbers as [re, im]. */
export interface PeriodicTransfer {
  /** Flow into the inner face per kelvin of swing on the inner side alone. [W/(m2 K)] */
  readonly innerAdmittance: readonly [number, number];
  /** Flow into the outer face per kelvin of swing on the outer side alone. [W/(m2 K)] */
  readonly outerAdmittance: readonly [number, number];
  /** Flow out of one face per kelvin of swing beyond the other. [W/(m2 K)] */
  readonly transmittance: readonly [number, number];
  /** Areal heat capacity of the inner side. [J/(m2 K)] */
  readonly innerCapacity: number;
  /** Areal heat capacity of the outer side. [J/(m2 K)] */
  readonly outerCapacity: number;
  /** Size of the periodic over the steady transmittance. [-] */
  readonly decrement: number;
}

/**
 * Dynamic thermal characteristics of a layered component.
 *
 * @param layers  from the room outwards
 * @param period  [s], a minute to a thousand years; a day is usual
 * @param surfaces  inner and outer surface resistance; 0 for face to face [m2 K/W]
 * @throws RangeError where the component is so thick that nothing measurable passes at this period
 * Source: ISO 13786:2017 (from memory): admittances -Z11/Z12 and -Z22/Z12, transmittance -1/Z12,
 * capacities T/(2 pi) |Z11 - 1|/|Z12| and T/(2 pi) |Z22 - 1|/|Z12|.
 */
export function periodicTransfer(
  layers: readonly Layer[],
  period: number,
  surfaces: { readonly inner: number; readonly outer: number },
): PeriodicTransfer {
  requireWithin(period, PERIOD, 'periodicTransfer: period', 's');
  let matrix = matrixOfResistance(surfaces.inner);
  let depths = 0;
  let resistance = surfaces.inner + surfaces.outer;
  for (const layer of layers) {
    const r = layerResistance(layer);
    resistance += r;
    depths += Math.sqrt((Math.PI * r * layerCapacity(layer)) / period);
    requireWithin(depths, DEPTHS, 'periodicTransfer: thickness', 'penetration depths');
    matrix = inSeries(matrix, matrixOfLayer(layer, period));
  }
  return read(inSeries(matrix, matrixOfResistance(surfaces.outer)), period, resistance);
}

/**
 * Dynamic thermal characteristics of a chain of lumped capacities, which shows the lumping error.
 *
 * @param resistance  one more than capacities, surfaces included [m2 K/W]
 * @param capacity  [J/(m2 K)]
 */
export function periodicTransferOfChain(
  resistance: readonly number[],
  capacity: readonly number[],
  period: number,
): PeriodicTransfer {
  requireWithin(period, PERIOD, 'periodicTransferOfChain: period', 's');
  let matrix = matrixOfResistance(resistance[0]!);
  let total = resistance[0]!;
  for (let k = 0; k < capacity.length; k++) {
    total += resistance[k + 1]!;
    matrix = inSeries(matrix, matrixOfCapacity(capacity[k]!, period));
    matrix = inSeries(matrix, matrixOfResistance(resistance[k + 1]!));
  }
  return read(matrix, period, total);
}

function read(z: TransferMatrix, period: number, resistance: number): PeriodicTransfer {
  const [z11, z11i, z12, z12i, , , z22, z22i] = z;
  const perTurn = period / (2 * Math.PI);
  const size = Math.hypot(z12, z12i);
  return {
    innerAdmittance: over(-z11, -z11i, z12, z12i),
    outerAdmittance: over(-z22, -z22i, z12, z12i),
    transmittance: over(-1, 0, z12, z12i),
    innerCapacity: (perTurn * Math.hypot(z11 - 1, z11i)) / size,
    outerCapacity: (perTurn * Math.hypot(z22 - 1, z22i)) / size,
    decrement: resistance / size,
  };
}

function over(a: number, ai: number, b: number, bi: number): readonly [number, number] {
  const square = b * b + bi * bi;
  return [(a * b + ai * bi) / square, (ai * b - a * bi) / square];
}

const PERIOD = [60, 3.2e10] as const;
const DEPTHS = [0, 150] as const; // exp(150) squared is still a number
