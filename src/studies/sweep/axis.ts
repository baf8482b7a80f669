import { pointerSteps } from '../../scenario/yaml/json-pointer.ts';
import { pointerAndValue } from '../../scenario/yaml/settings.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';

/** An input of a scenario and the values it takes in a sweep. */
export interface Axis {
  /** RFC 6901. */
  readonly pointer: string;
  readonly values: AxisValues;
}

type AxisValues =
  | { readonly kind: 'list'; readonly list: readonly number[] }
  /** From `low` up, so many values, each `step` above the one before. */
  | { readonly kind: 'steps'; readonly low: number; readonly step: number; readonly count: number }
  /** Any value between the two; to be sampled. */
  | { readonly kind: 'range'; readonly low: number; readonly high: number };

/**
 * Read `/pointer=17 to 21 by 0.5`, `/pointer=17 to 21` or `/pointer=17, 19, 21`. Numbers are in the
 * documented unit of their place.
 *
 * @throws InputProblems with everything that is wrong with any of them
 */
export function readAxes(words: readonly string[]): Axis[] {
  const problems: Problem[] = [];
  const axes = words.flatMap((typed): Axis[] => {
    const parts = pointerAndValue(typed);
    const steps = parts === null ? null : pointerSteps(parts.pointer);
    const values = parts === null ? PATTERN : valuesOf(parts.value);
    if (parts !== null && steps !== null && !('expected' in values)) {
      return [{ pointer: parts.pointer, values }];
    }
    const wrong = 'expected' in values ? values : NO_POINTER;
    problems.push(aboutAxis(typed, { ...wrong, got: wrong.got ?? JSON.stringify(typed) }));
    return [];
  });
  for (const [k, { pointer }] of axes.entries()) {
    if (axes.findIndex((other) => other.pointer === pointer) === k) continue;
    problems.push(aboutAxis(pointer, { expected: 'each place once', got: 'it again' }));
  }
  if (problems.length > 0) throw new InputProblems(problems);
  return axes;
}

/** How many values an axis has; Infinity for a range. */
export function countOf({ values }: Axis): number {
  if (values.kind === 'range') return Number.POSITIVE_INFINITY;
  return values.kind === 'list' ? values.list.length : values.count;
}

/** A value of an axis that is no range. @param k  counted from 0 */
export function nthValue({ values }: Axis, k: number): number {
  if (values.kind === 'list') return values.list[k]!;
  if (values.kind === 'steps') return rounded(values.low + k * values.step);
  throw new RangeError('nthValue: a range has no values to count');
}

/** The value at a share of an axis. @param share  from 0 to less than 1 */
export function valueAtShare(axis: Axis, share: number): number {
  const { values } = axis;
  if (values.kind !== 'range') return nthValue(axis, Math.floor(share * countOf(axis)));
  return rounded(values.low + share * (values.high - values.low));
}

/** Least and greatest value. */
export function endsOf(axis: Axis): [low: number, high: number] {
  const { values } = axis;
  if (values.kind === 'list') return [Math.min(...values.list), Math.max(...values.list)];
  if (values.kind === 'range') return [values.low, values.high];
  return [values.low, nthValue(axis, values.count - 1)];
}

/** A problem with the words of an axis. */
export const aboutAxis = (
  typed: string,
  about: { readonly expected: string; readonly got: string; readonly hint?: string },
): Problem => ({ file: `--vary ${typed}`, line: 0, column: 0, where: '', hint: '', ...about });

interface Wrong {
  readonly expected: string;
  /** Left out where the words as a whole are wrong. */
  readonly got?: string;
  readonly hint?: string;
}

function valuesOf(text: string): AxisValues | Wrong {
  const [, from, to, by] = RANGE.exec(text) ?? [];
  if (from !== undefined && to !== undefined) return rangeOf(from, to, by);
  const list = text.split(',').map((word) => word.trim());
  const wrong = list.find((word) => !isNumber(word));
  if (wrong !== undefined) return { ...PATTERN, got: JSON.stringify(wrong) };
  const numbers = list.map(Number);
  const again = numbers.find((value, k) => numbers.indexOf(value) !== k);
  if (again !== undefined) return { expected: 'each value once', got: `${again} again` };
  return { kind: 'list', list: numbers };
}

function rangeOf(from: string, to: string, by: string | undefined): AxisValues | Wrong {
  const wrong = [from, to, by ?? '1'].find((word) => !isNumber(word));
  if (wrong !== undefined) return { ...PATTERN, got: JSON.stringify(wrong) };
  const [low, high, step] = [Number(from), Number(to), Number(by)];
  if (low >= high) return { expected: 'a range from low to high', got: `${from} to ${to}` };
  if (by === undefined) return { kind: 'range', low, high };
  if (!(step > 0)) return { expected: 'a step above 0', got: by };
  return { kind: 'steps', low, step, count: Math.floor(((high - low) / step) * (1 + SLACK)) + 1 };
}

const isNumber = (word: string): boolean => word !== '' && Number.isFinite(Number(word));

/** Without the last digits, in which sums of decimals differ from what people write. */
const rounded = (value: number): number => Number(value.toPrecision(12));

const RANGE = /^\s*(\S+)\s+to\s+(\S+)(?:\s+by\s+(\S+))?\s*$/;
const PATTERN: Wrong = {
  expected: 'a place and its values',
  hint: 'such as "/heating/setpoint=17 to 21 by 0.5" or "/heating/setpoint=17, 19, 21"',
};
const NO_POINTER: Wrong = {
  expected: 'a pointer such as /heating/setpoint',
  hint: 'a slash in a name is written ~1',
};
/** Share of its width by which the end of a range may be missed through rounding. */
const SLACK = 1e-12;
