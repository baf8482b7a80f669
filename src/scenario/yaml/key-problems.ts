import { type Document, isScalar, type LineCounter, type Node, visit } from 'yaml';
import { firstOf, type Problem } from '../../units/problem.ts';

/**
 * Keys that stand twice in one mapping, are no text, or are a name that JavaScript keeps for itself;
 * of very many the first.
 *
 * In time proportional to their number; the parser's own search for twins is not.
 */
export function keyProblems(
  document: Document.Parsed,
  file: string,
  lines: LineCounter,
): readonly Problem[] {
  const problems: Problem[] = [];
  const placeOf = (node: Node | null) => lines.linePos(node?.range?.[0] ?? 0);
  const say = (node: Node | null, expected: string, got: string, hint = '') => {
    const { line, col } = placeOf(node);
    problems.push({ file, line, column: col, where: '', expected, got, hint });
  };
  visit(document, {
    Map(_, map) {
      const nodes = new Map<string, Node[]>();
      for (const { key } of map.items) {
        if (!isScalar(key) || key.value === null) {
          say(isScalar(key) ? key : map, 'keys that are text', 'a key that is none');
          continue;
        }
        const name = String(key.value);
        const twins = nodes.get(name);
        if (twins !== undefined) twins.push(key);
        else nodes.set(name, [key]);
      }
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
  return firstOf(problems, MOST);
}

const MOST = 20;
