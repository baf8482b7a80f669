import { expect } from 'vitest';
import { getCurrentTest } from 'vitest/suite';
import type { Place } from './judged-code.ts';

/**
 * One figure from outside set beside ours. Asserts, and leaves a row for docs/validation.md.
 *
 * `mark` says how well the expectation is known:
 * - published: somebody read it where `source` says;
 * - published arithmetic: the same, and the printed answer follows from the printed inputs;
 * - from memory: of the named standard or handbook, to be checked against a bought copy;
 * - common practice: no source;
 * - closed form: worked out from an exact solution, so it tests our numerics, not the world;
 * - library: another program's routine gave it.
 */
export interface Comparison {
  /** Heading it stands under in the table. */
  readonly topic: string;
  /** What is compared, in words. */
  readonly what: string;
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
  readonly expected: number;
  readonly got: number;
  /** Tolerance, and the reason for it: the source's promise or the rounding of its print. */
  readonly tolerance: { readonly absolute: number } | { readonly relative: number };
  readonly because: string;
}

type Mark =
  | 'published'
  | 'published arithmetic'
  | 'from memory'
  | 'common practice'
  | 'closed form'
  | 'library';

/** Figures from outside that promise a range rather than a number. */
export interface BandComparison extends Omit<Comparison, 'expected' | 'tolerance' | 'because'> {
  readonly low: number;
  readonly high: number;
  readonly because: string;
}

/** Assert that a figure agrees with the one from outside, and note it for the validation table. */
export function compare(c: Comparison): void {
  const allowed =
    'absolute' in c.tolerance ? c.tolerance.absolute : c.tolerance.relative * Math.abs(c.expected);
  note({ ...c, kind: 'figure', allowed, at: placeOf(compare) });
  const off = Math.abs(c.got - c.expected);
  expect(
    off <= allowed,
    `${c.what}: expected ${c.expected} ${c.unit} within ${allowed}, got ${c.got} (${c.source})`,
  ).toBe(true);
}

/** Assert that a figure lies in the range that the outside reports, and note it. */
export function compareBand(c: BandComparison): void {
  note({ ...c, kind: 'band', at: placeOf(compareBand) });
  expect(
    c.got >= c.low && c.got <= c.high,
    `${c.what}: expected ${c.low} to ${c.high} ${c.unit}, got ${c.got} (${c.source})`,
  ).toBe(true);
}

export type ComparisonNote = { readonly at: Place } & (
  | (Comparison & { readonly kind: 'figure'; readonly allowed: number })
  | (BandComparison & { readonly kind: 'band' })
);

declare module 'vitest' {
  interface TaskMeta {
    comparisons?: ComparisonNote[];
  }
}

function note(row: ComparisonNote): void {
  const meta = getCurrentTest()?.meta;
  if (meta === undefined) throw new Error('compare() must be called inside a test');
  meta.comparisons ??= [];
  meta.comparisons.push(row);
}

/** Lines of a test's file that led to a function of this one, the innermost first. */
function placeOf(callee: (...given: never[]) => void): Place {
  const here = { stack: '' };
  Error.captureStackTrace(here, callee);
  const frames = [...here.stack.matchAll(/([^\s()]+\.test\.ts):(\d+):\d+/g)];
  if (frames.length === 0) throw new Error('compare() must be called from the file of a test');
  return {
    file: frames[0]![1]!.replace('file://', ''),
    lines: frames.map((frame) => Number(frame[2])),
  };
}
