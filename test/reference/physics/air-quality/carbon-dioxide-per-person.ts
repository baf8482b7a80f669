import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Carbon dioxide that a person breathes out.
 *
 *     V = RQ BMR met (T/P) 0.000211, P in kPa
 *
 * @param activity  metabolic rate over the basal one [met], 0.5 to 12; asleep 0.95, seated 1.2 to 1.4
 * @param basalRate  basal metabolic rate, see basalMetabolicRate [MJ/d], 0.5 to 15
 * @param temperature  at which the volume is counted [°C], -50 to 60
 * @param pressure  at which the volume is counted [Pa], 20 000 to 180 000
 * @param respiratoryQuotient  CO2 out over oxygen in [-], 0.7 to 1; 0.85 on an ordinary diet
 * @returns volume of carbon dioxide [L/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example carbonDioxidePerPerson(1, 8.24) // 0.00399: a man of 85 kg, at rest
 *
 * Source: A. Persily and L. de Jonge, "Carbon dioxide generation rates for building occupants",
 * Indoor Air 27, 2017, doi 10.1111/ina.12383; constant from memory.
 */
export function carbonDioxidePerPerson(
  activity: number,
  basalRate: number,
  temperature = 0,
  pressure = 101_325,
  respiratoryQuotient = 0.85,
): number {
  const who = 'carbonDioxidePerPerson';
  requireWithin(activity, [0.5, 12], `${who}: activity`, 'met');
  requireWithin(basalRate, [0.5, 15], `${who}: basal rate`, 'MJ/d');
  requireWithin(temperature, [-50, 60], `${who}: temperature`, '°C');
  requireWithin(pressure, [20_000, 180_000], `${who}: pressure`, 'Pa');
  requireWithin(respiratoryQuotient, [0.7, 1], `${who}: respiratory quotient`, '');
  const kelvinPerKilopascal = (temperature + 273.15) / (pressure / 1000);
  return respiratoryQuotient * basalRate * activity * kelvinPerKilopascal * 0.000211;
}

/**
 * Heat of a body at rest, by sex, age and mass; the unit that activities are multiples of.
 *
 * @param sex  the fit has only two
 * @param age  [years], 0 to 120
 * @param mass  of the body [kg], 2 to 250
 * @returns basal metabolic rate [MJ/d]; single persons differ by a tenth
 * @throws RangeError outside those ranges, or NaN
 *
 * @example basalMetabolicRate('female', 35, 65) // 5.75
 *
 * Source: W. N. Schofield, "Predicting basal metabolic rate", Human Nutrition: Clinical Nutrition
 * 39C, 1985, as used by Persily and de Jonge 2017; from memory.
 */
export function basalMetabolicRate(sex: 'female' | 'male', age: number, mass: number): number {
  requireWithin(age, [0, 120], 'basalMetabolicRate: age', 'years');
  requireWithin(mass, [2, 250], 'basalMetabolicRate: mass', 'kg');
  const rows = sex === 'female' ? FEMALE : MALE;
  const row = rows.findLast(([from]) => age >= from) ?? rows[0]!;
  return row[1] * mass + row[2];
}

/** From this age: slope [MJ/(d kg)] and intercept [MJ/d]. */
type Row = readonly [number, number, number];

const MALE: readonly Row[] = [
  [0, 0.249, -0.127],
  [3, 0.095, 2.11],
  [10, 0.074, 2.754],
  [18, 0.063, 2.896],
  [30, 0.048, 3.653],
  [60, 0.049, 2.459],
];

const FEMALE: readonly Row[] = [
  [0, 0.244, -0.13],
  [3, 0.085, 2.033],
  [10, 0.056, 2.898],
  [18, 0.062, 2.036],
  [30, 0.034, 3.538],
  [60, 0.038, 2.755],
];
