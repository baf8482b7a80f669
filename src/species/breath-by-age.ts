/**
 * Carbon dioxide that a person of an age breathes out, as a mean of the sexes.
 *
 * Halved from the table's column for 2 met, because the rates are proportional to activity and that
 * column is rounded least. Counted at 20 °C and 101.325 kPa, the table at 0 °C and 101 kPa.
 *
 * @param age   [years]
 * @param activity  [met]; asleep 0.95, reading 1.3, light work seated 1.5, housework 3 to 4
 * @returns [m3/h]
 *
 * Source: A. Persily and L. de Jonge, "Carbon dioxide generation rates for building occupants",
 * Indoor Air 27, 2017, table 4, doi 10.1111/ina.12383 (read in two secondary copies).
 */
export function breathOfAge(age: number, activity: number): number {
  const row = ROWS.findLast(([from]) => age >= from) ?? ROWS[0]!;
  return halved(row) * activity;
}

/** Breath of people whose age nobody gave, over all rows from one age to another. [m3/h] */
export function breathBetween(from: number, below: number, activity: number): number {
  const rows = ROWS.filter(([age]) => age >= from && age < below);
  return (rows.reduce((sum, row) => sum + halved(row), 0) / rows.length) * activity;
}

/** Where people are grown and not yet old: what a person without an age is. [years] */
export const GROWN = { from: 21, below: 60 } as const;

/** Activities that stand behind usual breath. [met] */
export const USUAL_ACTIVITY = { awake: 1.4, asleep: 0.95 } as const;

/** From this age [years]: at 2 met men and women [L/s]. */
type Row = readonly [number, number, number];

const ROWS: readonly Row[] = [
  [0, 0.0018, 0.0017],
  [1, 0.003, 0.0028],
  [3, 0.0038, 0.0035],
  [6, 0.005, 0.0046],
  [11, 0.0068, 0.0058],
  [16, 0.0075, 0.0059],
  [21, 0.008, 0.0063],
  [30, 0.0076, 0.0059],
  [40, 0.0077, 0.006],
  [50, 0.0077, 0.006],
  [60, 0.0066, 0.0055],
  [70, 0.0064, 0.0053],
  [80, 0.006, 0.005],
];

/** At 1 met, as a mean of the sexes. [m3/h] */
const halved = ([, man, woman]: Row): number => ((man + woman) / 4) * PER_HOUR * EXPANDED;

/** L/s to m3/h. */
const PER_HOUR = 3.6;
const EXPANDED = (293.15 / 273.15) * (101 / 101.325);
