import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';

/** Files of src that the program reaches from where it begins, types included. */
export function programFiles(): ReadonlySet<string> {
  const reached = new Set<string>();
  const visit = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const { target } of importsOf(parse(file))) {
      if (target.startsWith('.')) visit(posix.join(posix.dirname(file), target));
    }
  };
  for (const entry of ENTRIES) visit(entry);
  return reached;
}

/** Static, dynamic and type-position imports, and re-exports, in the order of the text; kept for whoever asks again. */
export function importsOf(ast: ts.SourceFile): readonly Import[] {
  const known = imports.get(ast) ?? importsIn(ast);
  imports.set(ast, known);
  return known;
}

interface Import {
  readonly target: string;
  readonly typeOnly: boolean;
}

const imports = new WeakMap<ts.SourceFile, readonly Import[]>();

function importsIn(ast: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const note = (target: ts.Node | undefined, typeOnly: boolean) => {
    if (target !== undefined && ts.isStringLiteral(target))
      found.push({ target: target.text, typeOnly });
  };
  walk(ast, (node) => {
    if (ts.isImportDeclaration(node)) note(node.moduleSpecifier, onlyTypes(node.importClause));
    if (ts.isExportDeclaration(node)) note(node.moduleSpecifier, exportsOnlyTypes(node));
    if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      note(node.argument.literal, true);
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      note(node.arguments[0], false);
    }
  });
  return found;
}

/** Names that a file imports for a value, each with the file or the library it comes from. */
export function importedNames(file: string, ast: ts.SourceFile): Map<string, string> {
  const found = new Map<string, string>();
  walk(ast, (node) => {
    if (!ts.isImportSpecifier(node) || node.isTypeOnly || onlyTypes(node.parent.parent)) return;
    const from = node.parent.parent.parent.moduleSpecifier as ts.StringLiteral;
    const target = from.text.startsWith('.')
      ? posix.join(posix.dirname(file), from.text)
      : from.text;
    found.set(node.name.text, target);
  });
  return found;
}

function onlyTypes(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const named = clause.namedBindings;
  if (clause.name !== undefined || named === undefined || !ts.isNamedImports(named)) return false;
  return named.elements.every((e) => e.isTypeOnly);
}

function exportsOnlyTypes(node: ts.ExportDeclaration): boolean {
  if (node.isTypeOnly) return true;
  const clause = node.exportClause;
  return (
    clause !== undefined && ts.isNamedExports(clause) && clause.elements.every((e) => e.isTypeOnly)
  );
}

/** Visit a node and all below it. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

/** Syntax of a file, kept for whoever asks again. */
export function parse(file: string): ts.SourceFile {
  const known = parsed.get(file);
  if (known !== undefined) return known;
  const text = readFileSync(file, 'utf8');
  const ast = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true);
  parsed.set(file, ast);
  return ast;
}

const parsed = new Map<string, ts.SourceFile>();

/** TypeScript files of a folder and of all below it. */
export function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => posix.join(entry.parentPath, entry.name))
    .sort();
}

/** Where the program begins: its commands, their workers, the script of the page, the library. */
const ENTRIES = (JSON.parse(readFileSync('knip.json', 'utf8')) as { entry: string[] }).entry
  .filter((entry) => entry.endsWith('!'))
  .map((entry) => entry.slice(0, -1));
