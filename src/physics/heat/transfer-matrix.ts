import { cosineOf, sineOf } from '../../units/portable-math.ts';
import type { Layer } from './layer.ts';

/**
 * Heat transfer matrix at one period: (temperature, flow) on the far side from those on the near side.
 *
 * Complex entries as [re, im] pairs in the order 11, 12, 21, 22. Flow counts positive from near to far.
 */
export type TransferMatrix = readonly [
  number, number, number, number, number, number, number, number,
]; // biome-ignore format: four complex numbers

/** A resistance without mass. [m2 K/W] */
export function matrixOfResistance(resistance: number): TransferMatrix {
  return [1, 0, -resistance, 0, 0, 0, 1, 0];
}

/** A capacity without resistance [J/(m2 K)] at a period [s]. */
export function matrixOfCapacity(capacity: number, period: number): TransferMatrix {
  return [1, 0, 0, 0, 0, (-2 * Math.PI * capacity) / period, 1, 0];
}

/**
 * The exact matrix of a homogeneous layer.
 * Source: ISO 13786:2017, heat transfer matrix of a homogeneous layer (from memory; follows from the
 * heat equation, see Carslaw and Jaeger 1959, section 3.7).
 */
export function matrixOfLayer(layer: Layer, period: number): TransferMatrix {
  if ('resistance' in layer) return matrixOfResistance(layer.resistance);
  const { thickness, conductivity, density, specificHeat } = layer;
  const depth = Math.sqrt((conductivity * period) / (Math.PI * density * specificHeat));
  const x = thickness / depth;
  const cc = Math.cosh(x) * cosineOf(x);
  const ss = Math.sinh(x) * sineOf(x);
  const sc = Math.sinh(x) * cosineOf(x);
  const cs = Math.cosh(x) * sineOf(x);
  const a = -depth / (2 * conductivity);
  const b = -conductivity / depth;
  return [cc, ss, a * (sc + cs), a * (cs - sc), b * (sc - cs), b * (sc + cs), cc, ss];
}

/** The matrix of `first` followed by `second`, seen from the near side. */
export function inSeries(first: TransferMatrix, second: TransferMatrix): TransferMatrix {
  const [a, ai, b, bi, c, ci, d, di] = second;
  const [e, ei, f, fi, g, gi, h, hi] = first;
  return [
    a * e - ai * ei + b * g - bi * gi,
    a * ei + ai * e + b * gi + bi * g,
    a * f - ai * fi + b * h - bi * hi,
    a * fi + ai * f + b * hi + bi * h,
    c * e - ci * ei + d * g - di * gi,
    c * ei + ci * e + d * gi + di * g,
    c * f - ci * fi + d * h - di * hi,
    c * fi + ci * f + d * hi + di * h,
  ];
}
