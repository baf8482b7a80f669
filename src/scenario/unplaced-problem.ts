import type * as z from 'zod';
import { speciesCalled } from '../species/species-lists.ts';
import { nearestName } from '../units/nearest-name.ts';
import type { Problem } from '../units/problem.ts';
import { decimalCommaHint } from '../units/quantity.ts';
import { clockHint, numberHint } from './everyday-hints.ts';
import { renamedKey } from './renamed-keys.ts';
import { type Layer, writtenAt } from './yaml/layers.ts';
import { pathWords, valueAt, valueWords } from './yaml/path-words.ts';
import type { Path } from './yaml/place-of.ts';

/** Something wrong at a path of the merged scenario, before anybody looked where that stands. */
export interface Finding {
  readonly path: Path;
  readonly expected: string;
  /** What came; where not given, the value at the path in words. */
  readonly got?: string;
  readonly hint?: string;
  /** Names that would have been known, to find the nearest of. */
  readonly names?: Iterable<string>;
  /** True where the key itself is wrong, not its value. */
  readonly key?: boolean;
}

/** Findings as problems with a file, a line and a column, in the order they stand there. */
export function placed(
  findings: readonly Finding[],
  raw: unknown,
  layers: readonly Layer[],
): Problem[] {
  const problems: Problem[] = findings
    .slice(0, MOST)
    .map(({ path, expected, got, hint, names, key }) => {
      const value = valueAt(raw, path);
      const typed = key === true ? path.at(-1) : value;
      const near = typeof typed === 'string' ? nearOf(typed, names) : null;
      return {
        ...writtenAt(layers, path, key),
        where: pathWords(path),
        expected,
        got: got ?? valueWords(value),
        hint: hint ?? hintOf(near, value, expected, key === true),
      };
    });
  if (findings.length > MOST) {
    const got = `${findings.length}, of which the rest is not listed`;
    const rest = { where: '', expected: `no more than ${MOST} problems`, got, hint: '' };
    problems.push({ ...writtenAt(layers, []), ...rest });
  }
  const once = new Map(problems.map((problem) => [JSON.stringify(problem), problem]));
  return [...once.values()].sort((a, b) => a.line - b.line || a.column - b.column);
}

/** The known name that was most likely meant; null where none is near. */
function nearOf(typed: string, names: Iterable<string> = []): string | null {
  const known = [...names];
  const species = speciesCalled(typed);
  return species !== null && known.includes(species) ? species : nearestName(typed, known);
}

function hintOf(near: string | null, value: unknown, expected: string, key: boolean): string {
  if (near !== null) return `did you mean ${JSON.stringify(near)}?`;
  // "{ description: dry, warm }" is a description and a key without a value.
  if (key && value === null) return 'between braces, text with a comma needs quotes';
  if (typeof value !== 'string') return '';
  if (expected.includes('local time')) return clockHint(value);
  return decimalCommaHint(value) || (/^a (number|price)/.test(expected) ? numberHint(value) : '');
}

/** What the model found wrong. A message of the model is the end of the sentence "expected ...". */
export function findingsOf(issues: readonly z.core.$ZodIssue[], under: Path = []): Finding[] {
  return issues.flatMap((issue) => findingsOfOne(issue, under));
}

function findingsOfOne(issue: z.core.$ZodIssue, under: Path): Finding[] {
  const path = [...under, ...issue.path.map((step) => (typeof step === 'symbol' ? '' : step))];
  const expected = issue.message;
  if (issue.code === 'unrecognized_keys') {
    const known = expected.split(', ');
    return issue.keys.map((key) => unknownKey(path, key, known));
  }
  if (issue.code === 'invalid_value') {
    return [{ path, expected, names: issue.values.map(String) }];
  }
  if (issue.code === 'invalid_union') {
    const meant = issue.errors.filter((branch) => !branch.some(isOtherForm));
    if (meant.length === 1) return findingsOf(meant[0]!, path);
    if ('options' in issue) return [{ path, expected, names: (issue.options ?? []).map(String) }];
    const words = issue.errors.flat().flatMap((e) => (e.code === 'invalid_value' ? e.values : []));
    return [{ path, expected, names: words.map(String) }];
  }
  if (issue.code === 'custom') {
    const { got, hint } = (issue.params ?? {}) as { got?: string; hint?: string };
    return [{ path, expected, ...(got && { got }), ...(hint && { hint }) }];
  }
  return [{ path, expected }];
}

/** True where a branch of a union was not meant at all: it wanted another kind of value, or a number. */
const isOtherForm = (issue: z.core.$ZodIssue): boolean =>
  issue.path.length === 0 &&
  (['invalid_type', 'invalid_value', 'invalid_union'].includes(issue.code) ||
    (issue.code === 'custom' && issue.params?.['isWord'] === true));

function unknownKey(path: Path, key: string, known: readonly string[]): Finding {
  const now = renamedKey(key, known);
  const expected = `one of the keys ${known.join(', ')}`;
  const got = `${JSON.stringify(key)}, which is not known`;
  const finding = { path: [...path, key], expected, got, key: true };
  if (now === null) return { ...finding, names: known };
  return { ...finding, hint: `here it is called ${JSON.stringify(now)}` };
}

const MOST = 200; // problems that anybody reads
