/** Unit of a concentration: by volume of pure gas, or by mass. */
export type ConcentrationUnit = 'ppm' | 'µg/m3';

export interface ConcentrationUnitFacts {
  readonly kind: 'volume' | 'mass';
  /** Ending of a column's name. */
  readonly suffix: string;
  /** Unit of what a source gives each time. */
  readonly amount: 'L' | 'mg';
  /** Amount to what the balance counts: µg, or ppm m3. */
  readonly perAmount: number;
}

export const CONCENTRATION_UNITS: Readonly<Record<ConcentrationUnit, ConcentrationUnitFacts>> = {
  ppm: { kind: 'volume', suffix: 'ppm', amount: 'L', perAmount: 1000 },
  'µg/m3': { kind: 'mass', suffix: 'ug_per_m3', amount: 'mg', perAmount: 1000 },
};

/**
 * What a source gives each time, as the balance counts it.
 *
 * @param amount  [L] of pure gas by volume, [mg] by mass
 * @returns [ppm m3] or [µg]
 */
export const sourceAmount = (amount: number, unit: ConcentrationUnit): number =>
  amount * CONCENTRATION_UNITS[unit].perAmount;

/**
 * What a source gives in an hour as a source of the balance.
 *
 * @param hourly  [m3/h] of pure gas by volume, [µg/h] by mass
 * @returns [ppm m3/s] or [µg/s]
 */
export function sourcePerSecond(hourly: number, unit: ConcentrationUnit): number {
  const perSecond = hourly / 3600;
  return CONCENTRATION_UNITS[unit].kind === 'volume' ? perSecond * 1e6 : perSecond;
}
