import { type Document, isScalar, type LineCounter, type Node, visit } from 'yaml';
import type { Problem } from '../../units/problem.ts';

/**
 * Keys that stand twice in one mapping, are no text, or are a name that JavaScript keeps for itself.
 *
 * In time proportional to their number; the parser's own search for twins is not.
 */
export function keyProblems(
  document: Document.Parsed,
  file: string,
  lines: LineCounter,
): Problem[] {
  const problems: Problem[] = [];
  const say = (node: Node | null, expected: string, got: string, hint = '') => {
    const { line, col } = lines.linePos(node?.range?.[0] ?? 0);
    problems.push({ file, line, column: col, where: '', expected, got, hint });
  };
  visit(document, {
    Map(_, map) {
      const seen = new Map<string, number>();
      for (const { key } of map.items) {
        if (!isScalar(key) || key.value === null) {
          say(isScalar(key) ? key : map, 'keys that are text', 'a key that is none');
          continue;
        }
        const name = String(key.value);
        const first = seen.get(name);
        if (first !== undefined) {
          const got = `${JSON.stringify(name)}, which stands in line ${first} already`;
          say(key, 'every key once', got, 'remove one of the two');
        } else seen.set(name, lines.linePos(key.range?.[0] ?? 0).line);
        if (name === '__proto__') say(key, 'another name', JSON.stringify(name));
      }
    },
  });
  return problems;
}
