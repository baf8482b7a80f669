import type { Problem } from '../../units/problem.ts';
import type { ImposedSeries, Series } from './imposed.ts';

/** Wrong length, or the first value of each kind that is wrong. */
export function problemsOfSeries(
  file: string,
  where: string,
  series: Series,
  steps: number,
  { least, most, words, gaps = false }: Range,
): Problem[] {
  const problems: Problem[] = [];
  if (series.length !== steps) {
    const expected = `${steps} values, one for each step`;
    problems.push(problem(file, where, expected, `${series.length}`));
  }
  const report = (wrong: (x: number) => boolean, expected: string): void => {
    let count = 0;
    let first = -1;
    for (let k = 0; k < series.length; k++) {
      if (!wrong(series[k]!)) continue;
      if (first < 0) first = k;
      count++;
    }
    if (first < 0) return;
    const at = `${where}[${first}]`;
    const more = count > 1 ? ` and ${count - 1} more like it` : '';
    problems.push(problem(file, at, expected, `${series[first]}${more}`));
  };
  const isNone = (x: number): boolean => !Number.isFinite(x) && !(gaps && Number.isNaN(x));
  report(isNone, gaps ? 'a number' : 'a number, a series without gaps');
  report((x) => Number.isFinite(x) && (x < least || x > most), words);
  return problems;
}

/** A problem without a place in a text. @param file  of which input it is */
export function problem(file: string, where: string, expected: string, got: string): Problem {
  return { file, line: 0, column: 0, where, expected, got, hint: '' };
}

/** What values of a series may be. */
interface Range {
  readonly least: number;
  readonly most: number;
  readonly words: string;
  /** Whether NaN stands for what the model has itself. */
  readonly gaps?: boolean;
}

const range = (least: number, most: number, unit: string): Range => ({
  least,
  most,
  words: `${least} to ${most}${unit}`,
});
export const NOT_NEGATIVE: Range = { least: 0, most: Number.POSITIVE_INFINITY, words: '0 or more' };
const ANY: Range = {
  least: Number.NEGATIVE_INFINITY,
  most: Number.POSITIVE_INFINITY,
  words: 'any number',
};

export const RANGES: Readonly<Record<Exclude<keyof ImposedSeries, 'peopleSpecies'>, Range>> = {
  airTemperature: range(-50, 90, ' °C'),
  humidityRatio: range(0, 0.2, ' kg/kg'),
  relativeHumidity: range(0, 100, ' %'),
  people: NOT_NEGATIVE,
  presence: { ...range(0, 1, ''), gaps: true },
  peopleHeat: NOT_NEGATIVE,
  peopleVapour: NOT_NEGATIVE,
  heat: ANY,
  vapour: ANY,
  windows: { ...range(0, 1, ''), gaps: true },
  airChange: NOT_NEGATIVE,
  outdoorAir: NOT_NEGATIVE,
};
