/** How amounts of a species go with the unit of its concentration. */
interface ConcentrationUnitFacts {
  /** Unit of what a source gives each time, and of what it gives in an hour. */
  readonly amount: string;
  readonly rate: string;
  /** Such an amount, and as much over the hour as such a rate, to what the balance counts. [unit m3] */
  readonly perAmount: number;
  readonly perRate: number;
}

/**
 * Amounts in a unit of concentration. One that is not by volume, µg/m3 or mg/m3 counts what stands
 * before its "/m3", such as the Bq of Bq/m3.
 */
export function concentrationUnit(unit: string): ConcentrationUnitFacts {
  if (Object.hasOwn(KNOWN, unit)) return KNOWN[unit]!;
  const counted = unit.replace(/\/m3$/, '');
  return { amount: counted, rate: `${counted}/h`, perAmount: 1, perRate: 1 };
}

/** What a unit looks like that can be reckoned with: by volume, or of something in a cubic metre. */
export const isConcentrationUnit = (unit: string): boolean =>
  unit === 'ppm' || unit === 'ppb' || /^[\p{L}][\p{L}\d ]{0,19}\/m3$/u.test(unit);

/** Ending of a column's name, such as "ug_per_m3". */
export const columnSuffix = (unit: string): string =>
  unit.toLowerCase().replaceAll('µ', 'u').replaceAll('/', '_per_').replaceAll(/\s+/g, '_');

/**
 * What a source gives each time, as the balance counts it.
 *
 * @param amount  [L] of pure gas by volume, [mg] of µg/m3, else what the unit counts
 * @returns [unit m3]
 */
export const sourceAmount = (amount: number, unit: string): number =>
  amount * concentrationUnit(unit).perAmount;

/**
 * What a source gives in an hour as a source of the balance.
 *
 * @param hourly  [m3/h] of pure gas by volume, else what the unit counts in an hour, such as [µg/h]
 * @returns [unit m3/s]
 */
export const sourcePerSecond = (hourly: number, unit: string): number =>
  (hourly / 3600) * concentrationUnit(unit).perRate;

const KNOWN: Readonly<Record<string, ConcentrationUnitFacts>> = {
  ppm: { amount: 'L', rate: 'm3/h', perAmount: 1000, perRate: 1e6 },
  ppb: { amount: 'L', rate: 'm3/h', perAmount: 1e6, perRate: 1e9 },
  'µg/m3': { amount: 'mg', rate: 'µg/h', perAmount: 1000, perRate: 1 },
};
