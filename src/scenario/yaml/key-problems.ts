import {
  type Document,
  isScalar,
  type LineCounter,
  type Node,
  type Pair,
  type Scalar,
  visit,
} from 'yaml';
import { firstOf, type Problem } from '../../units/problem.ts';

/** What is wrong with the keys of a document; of very many the first. */
export interface KeyProblems {
  readonly problems: readonly Problem[];
  /** Whether all else can be checked nevertheless: numbers with a decimal comma are all that is wrong. */
  readonly checkable: boolean;
}

/**
 * Keys that stand twice in one mapping, are no text, or are a name that JavaScript keeps for itself; and
 * numbers with a decimal comma, which become what was meant so that the rest can be checked.
 *
 * In time proportional to their number; the parser's own search for twins is not.
 */
export function keyProblems(
  document: Document.Parsed,
  file: string,
  lines: LineCounter,
): KeyProblems {
  const problems: Problem[] = [];
  let commas = 0;
  const placeOf = (node: Node | null) => lines.linePos(node?.range?.[0] ?? 0);
  const say = (node: Node | null, expected: string, got: string, hint = '') => {
    const { line, col } = placeOf(node);
    problems.push({ file, line, column: col, where: '', expected, got, hint });
  };
  visit(document, {
    Map(_, map) {
      const nodes = new Map<string, Node[]>();
      const cuts = new Set<Pair>();
      for (const [k, pair] of map.items.entries()) {
        const { key, value } = pair;
        const before = map.items[k - 1];
        const cut = value === null ? decimalCut(before, key) : null;
        if (cut !== null) {
          const { whole, digits, rest } = cut;
          const meant = `${whole}.${digits}${rest}`;
          const expected = 'a number with a decimal point';
          say(key as Node, expected, `${whole}, ${digits}${rest}`, `write ${meant} with a point`);
          (before!.value as Scalar).value = rest.trim() === '' ? Number(meant) : meant;
          cuts.add(pair);
          commas++;
          continue;
        }
        if (!isScalar(key) || key.value === null) {
          say(isScalar(key) ? key : map, 'keys that are text', 'a key that is none');
          continue;
        }
        const name = String(key.value);
        const twins = nodes.get(name);
        if (twins !== undefined) twins.push(key);
        else nodes.set(name, [key]);
      }
      if (cuts.size > 0) map.items = map.items.filter((pair) => !cuts.has(pair));
      for (const [name, [first, second, ...more]] of nodes) {
        const shown = JSON.stringify(name);
        if (name === '__proto__') say(first!, 'another name', shown);
        if (second === undefined) continue;
        const before = `${shown}, which stands in line ${placeOf(first!).line} already`;
        const times = more.length === 1 ? '1 time' : `${more.length} times`;
        const after = more.length === 0 ? '' : `, and ${times} more further down`;
        const hint = more.length === 0 ? 'remove one of the two' : 'keep one of them';
        say(second, 'every key once', `${before}${after}`, hint);
      }
    },
  });
  problems.sort((a, b) => a.line - b.line || a.column - b.column);
  return { problems: firstOf(problems, MOST), checkable: commas === problems.length };
}

/**
 * A number with a decimal comma in braces, such as 0,30, which YAML cuts in two: a whole number, and a
 * key of digits without a value.
 */
function decimalCut(
  before: Pair | undefined,
  key: unknown,
): { readonly whole: string; readonly digits: string; readonly rest: string } | null {
  const value = before?.value;
  if (!isScalar(value) || !isScalar(key)) return null;
  const [whole, written] = [value.source ?? '', key.source ?? ''];
  const [, digits, rest] = /^(\d+)(\s*\D*)$/.exec(written) ?? [];
  if (!/^[-+]?\d+$/.test(whole) || digits === undefined || rest === undefined) return null;
  return { whole, digits, rest };
}

const MOST = 20;
