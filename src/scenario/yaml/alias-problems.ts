import { type Document, isAlias, isNode, type LineCounter, visit } from 'yaml';
import { firstOf, type Problem } from '../../units/problem.ts';

/** Aliases (*name) with no anchor (&name) before them; of very many the first. */
export function aliasProblems(
  document: Document.Parsed,
  file: string,
  lines: LineCounter,
): readonly Problem[] {
  const problems: Problem[] = [];
  const anchors = new Set<string>();
  visit(document, {
    Node(_, node) {
      if (isAlias(node)) {
        if (anchors.has(node.source)) return;
        const { line, col: column } = lines.linePos(node.range?.[0] ?? 0);
        const expected = `an anchor &${node.source} further up`;
        const got = `the alias *${node.source} alone`;
        problems.push({ file, line, column, where: '', expected, got, hint: '' });
      } else if (isNode(node) && node.anchor !== undefined) anchors.add(node.anchor);
    },
  });
  return firstOf(problems, MOST);
}

const MOST = 20;
