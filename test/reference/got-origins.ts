import ts from 'typescript';
import { importedNames, walk } from './imports.ts';

/**
 * Files and libraries that judged values go back to, by whatever names of the test's file between.
 *
 * @param lines  where the comparison is called, and where what called it is called [from 1]
 */
export function originsOf(file: string, ast: ts.SourceFile, lines: readonly number[]): string[] {
  const imported = importedNames(file, ast);
  const values = valuesOf(ast);
  const found = new Set<string>();
  const seen = new Set<ts.Node>();
  const visit = (root: ts.Node): void => {
    if (seen.has(root)) return;
    seen.add(root);
    walk(root, (node) => {
      if (!ts.isIdentifier(node) || isKey(node)) return;
      const origin = imported.get(node.text);
      if (origin !== undefined) found.add(origin);
      for (const { scope, value } of values.get(node.text) ?? []) {
        if (isWithin(node, scope)) visit(value);
      }
    });
  };
  for (const node of judgedAt(ast, lines)) visit(node);
  return [...found];
}

/** Value of `got` of comparisons, or all they are given where it is not written there; arguments of other calls. */
function judgedAt(ast: ts.SourceFile, lines: readonly number[]): ts.Node[] {
  const found: ts.Node[] = [];
  walk(ast, (node) => {
    if (!ts.isCallExpression(node) || !ts.isIdentifier(node.expression)) return;
    if (!lines.includes(ast.getLineAndCharacterOfPosition(node.getStart()).line + 1)) return;
    const given = node.arguments[0];
    const compared = /^compare(Band)?$/.test(node.expression.text);
    const got =
      compared && given !== undefined && ts.isObjectLiteralExpression(given)
        ? given.properties.find((p) => p.name?.getText() === 'got')
        : undefined;
    found.push(...(got === undefined ? node.arguments : [got]));
  });
  return found;
}

interface Value {
  /** Where the name may be used. */
  readonly scope: ts.Node;
  /** What it stands for, or an expression that gives it. */
  readonly value: ts.Node;
}

/** What the names of a file stand for: functions, variables, their later values, parameters of callbacks. */
function valuesOf(ast: ts.SourceFile): Map<string, Value[]> {
  const found = new Map<string, Value[]>();
  const note = (names: ts.Node, value: ts.Node | undefined, scope: ts.Node) => {
    if (value === undefined) return;
    walk(names, (name) => {
      if (!ts.isIdentifier(name)) return;
      found.set(name.text, [...(found.get(name.text) ?? []), { scope, value }]);
    });
  };
  walk(ast, (node) => {
    if (ts.isFunctionDeclaration(node) && node.name) note(node.name, node, scopeOf(node));
    if (ts.isVariableDeclaration(node)) {
      const loop = node.parent.parent;
      const value = ts.isForOfStatement(loop) ? loop.expression : node.initializer;
      note(node.name, value, scopeOf(node));
    }
    // A callback's parameters come from what it is handed to: a table of cases, a list, a run.
    if (ts.isParameter(node) && ts.isCallExpression(node.parent.parent))
      note(node.name, node.parent.parent.expression, node.parent);
  });
  walk(ast, (node) => {
    for (const [name, given] of laterGiven(node)) {
      const declared = found.get(name.getText())?.find(({ scope }) => isWithin(node, scope));
      if (declared !== undefined) note(name, given, declared.scope);
    }
  });
  return found;
}

/** What a variable is set to after it is declared, or a list is given: `x = 1`, `x += 1`, `x[0] = 1`, `x.push(1)`. */
function laterGiven(node: ts.Node): (readonly [ts.Node, ts.Node])[] {
  if (ts.isBinaryExpression(node)) {
    const { left, right, operatorToken } = node;
    const { kind } = operatorToken;
    if (kind < ts.SyntaxKind.FirstAssignment || kind > ts.SyntaxKind.LastAssignment) return [];
    return [[ts.isElementAccessExpression(left) ? left.expression : left, right]];
  }
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return [];
  const { expression, name } = node.expression;
  return name.text === 'push' ? node.arguments.map((given) => [expression, given] as const) : [];
}

function scopeOf(node: ts.Node): ts.Node {
  let up = node.parent ?? node;
  while (up.parent && !ts.isFunctionLike(up) && !ts.isBlock(up) && !ts.isForOfStatement(up)) {
    up = up.parent;
  }
  return up;
}

/** Whether a name is only that of a property: `{ name: 1 }`, `x.name`. */
function isKey(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAssignment(parent) || ts.isPropertyAccessExpression(parent)) &&
    parent.name === node
  );
}

function isWithin(node: ts.Node, scope: ts.Node): boolean {
  return scope.pos <= node.pos && node.end <= scope.end;
}
