/** Unit of a concentration: by volume of pure gas, by mass, or by number. */
export type ConcentrationUnit = 'ppm' | 'µg/m3' | 'grains/m3';

export interface ConcentrationUnitFacts {
  readonly kind: 'volume' | 'mass' | 'number';
  /** Ending of a column's name. */
  readonly suffix: string;
  /** Unit of what a source gives each time. */
  readonly amount: 'L' | 'mg' | 'grains';
  /** Amount to what the balance counts: µg, ppm m3, or grains. */
  readonly perAmount: number;
}

export const CONCENTRATION_UNITS: Readonly<Record<ConcentrationUnit, ConcentrationUnitFacts>> = {
  ppm: { kind: 'volume', suffix: 'ppm', amount: 'L', perAmount: 1000 },
  'µg/m3': { kind: 'mass', suffix: 'ug_per_m3', amount: 'mg', perAmount: 1000 },
  'grains/m3': { kind: 'number', suffix: 'grains_per_m3', amount: 'grains', perAmount: 1 },
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
