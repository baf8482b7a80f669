import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesUnder, importsOf, parse, programFiles, walk } from './reference/imports.ts';

// Each folder of src/ and the folders it may import from; docs/architecture.md gives the reasons.
// "type x" allows only imports of types from x.
const MAY_IMPORT: Record<string, readonly string[]> = {
  units: [],
  physics: ['units'],
  species: ['units'],
  weather: ['units', 'physics', 'species'],
  log: ['units', 'physics', 'species'],
  home: ['units', 'physics', 'species', 'type weather'],
  control: ['units', 'physics', 'type species', 'type home', 'type weather'],
  'engine/numerics': ['units'],
  engine: ['units', 'physics', 'engine/numerics', 'home', 'control', 'weather'],
  measures: ['units', 'physics', 'species', 'home', 'type engine', 'type weather'],
  scenario: ['units', 'species', 'weather', 'log', 'home', 'control', 'type engine'],
  studies: [
    ...['units', 'physics', 'species', 'log', 'control', 'scenario', 'engine', 'measures'],
    ...['type weather', 'type home'],
  ],
  fit: ['units', 'species', 'log', 'scenario', 'engine', 'type home', 'type weather'],
  living: ['units', 'weather', 'measures', 'scenario', 'studies'],
  report: [
    ...['units', 'species', 'measures', 'living'],
    ...['type engine', 'type scenario', 'type studies', 'type fit'],
  ],
  cli: [
    'units',
    'physics',
    'weather',
    'log',
    'home',
    'control',
    'engine',
    'measures',
    'scenario',
    'studies',
    'fit',
    'report',
    'living',
  ],
};

// Libraries, each in the one folder that knows what it is for, and only by the entry named here:
// others of csv-parse use the machine.
const MAY_USE: Record<string, readonly string[]> = {
  weather: ['csv-parse/browser/esm/sync'],
  scenario: ['yaml', 'zod', 'temporal-polyfill'],
  measures: ['simple-statistics'],
  studies: ['simple-statistics'],
  fit: ['ml-matrix', 'simple-statistics'],
  living: ['fflate'],
  report: ['fflate', 'vega', 'vega-interpreter', 'vega-lite'],
  cli: ['@clack/prompts', 'commander', 'cli-progress', 'open', 'zod'],
};

const sources = filesUnder('src').map((file) => ({
  file,
  folder: folderOf(file),
  ast: parse(file),
}));

describe('imports go only the stated way', () => {
  test.each(sources.filter((s) => s.folder !== ''))('$file', ({ file, folder, ast }) => {
    for (const { target, typeOnly } of importsOf(ast)) {
      if (!target.startsWith('.')) continue;
      const other = folderOf(posix.join(posix.dirname(file), target));
      if (other === folder) continue;
      const may = MAY_IMPORT[folder] ?? [];
      const allowed = may.includes(other) || (typeOnly && may.includes(`type ${other}`));
      expect(allowed, `${file} imports ${typeOnly ? 'types of ' : ''}${other}`).toBe(true);
    }
  });

  test('no folder reaches itself through folders beside it', () => {
    const imports = new Map<string, string[]>();
    for (const { file, ast } of sources) {
      for (const { target } of importsOf(ast)) {
        if (!target.startsWith('.')) continue;
        const arrow = besides(file, posix.join(posix.dirname(file), target));
        if (arrow !== null) imports.set(arrow[0], [...(imports.get(arrow[0]) ?? []), arrow[1]]);
      }
    }
    expect(circlesOf(imports)).toEqual([]);
  });

  test('no file reaches itself through what it imports, types included', () => {
    const imports = new Map(
      sources.map(({ file, ast }) => [
        file,
        importsOf(ast)
          .filter(({ target }) => target.startsWith('.'))
          .map(({ target }) => posix.join(posix.dirname(file), target)),
      ]),
    );
    expect(circlesOf(imports)).toEqual([]);
  });

  test('a circle is seen, and told from its first file on', () => {
    const imports = new Map([
      ['a.ts', ['b.ts']],
      ['b.ts', ['c.ts', 'd.ts']],
      ['c.ts', ['b.ts']],
      ['d.ts', []],
    ]);
    expect(circlesOf(imports)).toEqual(['b.ts -> c.ts -> b.ts']);
  });

  test('every folder of src has a rule', () => {
    const folders = [...new Set(sources.map((s) => s.folder))].filter((f) => f !== '').sort();
    expect(folders.filter((f) => MAY_IMPORT[f] === undefined)).toEqual([]);
  });
});

test('every file of src is reached from where the program begins', () => {
  const reached = programFiles();
  expect(sources.map((s) => s.file).filter((file) => !reached.has(file))).toEqual([]);
});

describe('only cli knows the machine it runs on', () => {
  test.each(sources.filter((s) => s.folder !== 'cli'))('$file', ({ folder, ast }) => {
    const libraries = importsOf(ast)
      .map((i) => i.target)
      .filter((t) => !t.startsWith('.'));
    const known = MAY_USE[folder] ?? [];
    expect(libraries.filter((l) => !known.includes(l))).toEqual([]);
    expect(machineUses(ast)).toEqual([]);
  });

  test('in cli only bin.ts touches the process', () => {
    const touching = sources
      .filter((s) => s.folder === 'cli' && machineUses(s.ast).includes('process'))
      .map((s) => s.file);
    expect(touching).toEqual(['src/cli/bin.ts']);
  });

  test('the check sees what it is for', () => {
    const planted = ts.createSourceFile(
      'planted.ts',
      `import fs from 'node:fs';
       import { type A } from '../x/a.ts';
       export type { B } from '../x/b.ts';
       export { c } from '../x/c.ts';
       const d = await import('../x/d.ts');
       type E = import('../x/e.ts').E;
       Date.now(); new Date(); new Date(5); Date(); Math.random(); process.exit(); crypto.randomUUID();
       setTimeout(() => o.process, 1); const { random } = Math; Temporal.Now.instant();`,
      ts.ScriptTarget.ES2023,
      true,
    );
    expect(importsOf(planted)).toEqual([
      { target: 'node:fs', typeOnly: false },
      { target: '../x/a.ts', typeOnly: true },
      { target: '../x/b.ts', typeOnly: true },
      { target: '../x/c.ts', typeOnly: false },
      { target: '../x/d.ts', typeOnly: false },
      { target: '../x/e.ts', typeOnly: true },
    ]);
    expect(machineUses(planted)).toEqual([
      ...['Date.now', 'new Date()', 'Date()', 'Math.random', 'process', 'crypto'],
      ...['setTimeout', 'Math.random', 'Temporal.Now'],
    ]);
  });
});

describe('docs/architecture.md', () => {
  test('names exactly the folders that exist', () => {
    const page = readFileSync('docs/architecture.md', 'utf8');
    const named = [...page.matchAll(/^\s*- `([^`]+)\/`/gm)].map((m) => m[1]!).sort();
    expect(named).toEqual(foldersThatCount());
  });

  test('states the import rules that this test holds', () => {
    const page = readFileSync('docs/architecture.md', 'utf8');
    const rows = [...page.matchAll(/^\| `([\w/]+)` \| ([^|]*) \|/gm)];
    const stated = Object.fromEntries(
      rows.map((m) => [m[1]!, m[2] === 'nothing' ? [] : m[2]!.split(', ').sort()]),
    );
    const held = Object.fromEntries(
      Object.entries(MAY_IMPORT).map(([folder, may]) => [
        folder,
        may.map((m) => m.replace('type ', 'types of ')).sort(),
      ]),
    );
    expect(stated).toEqual(held);
  });
});

test('no page, code or test speaks of how or where it was made', () => {
  const files = ['src', 'test', 'docs', 'scenarios', 'weather', 'reports'].flatMap(filesIn);
  const roots = ['README.md', 'DEVELOPERS.md', 'package.json'];
  const found = [...files, ...roots]
    .filter((file) => file !== 'test/architecture.test.ts' && !file.startsWith('docs/validation'))
    .flatMap((file) =>
      readFileSync(file, 'utf8')
        .split('\n')
        .flatMap((line, k) => (NOT_HERE.test(line) ? [`${file}:${k + 1}: ${line.trim()}`] : [])),
    );
  expect(found).toEqual([]);
});

// Places on somebody's machine, and numbers of tasks.
const NOT_HERE = /(?:^|[\s'"`(=])\/(?:root|work|tmp|Users)\/\w|\bissues? #\d|\bthis session\b/i;

/** Uses of the process, the clock, timers and unseeded chance. */
function machineUses(ast: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(ast, (node) => {
    if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) {
      const name = `${node.expression.text}.${node.name.text}`;
      if (['Date.now', 'Math.random', 'Temporal.Now'].includes(name)) found.push(name);
    }
    if (ts.isNewExpression(node) && isNamed(node.expression, 'Date') && !node.arguments?.length) {
      found.push('new Date()');
    }
    if (ts.isCallExpression(node) && isNamed(node.expression, 'Date')) found.push('Date()');
    if (ts.isBindingElement(node) && isNamed(node.propertyName ?? node.name, 'random')) {
      found.push('Math.random');
    }
    if (ts.isIdentifier(node) && GLOBALS.has(node.text) && standsAlone(node)) found.push(node.text);
  });
  return found;
}

const isNamed = (node: ts.Node, name: string): boolean =>
  ts.isIdentifier(node) && node.text === name;

/** Not the name of a property, a declared thing or a type member. */
function standsAlone(node: ts.Identifier): boolean {
  const p = node.parent;
  if (ts.isPropertyAccessExpression(p)) return p.expression === node;
  if (ts.isPropertyAssignment(p)) return p.initializer === node;
  return !(ts.isPropertySignature(p) || ts.isMethodSignature(p) || ts.isMethodDeclaration(p));
}

const GLOBALS = new Set([
  ...['process', 'Buffer', 'require', '__dirname', '__filename', 'globalThis', 'console', 'crypto'],
  ...['performance', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'fetch'],
]);

/** The two folders side by side in which two files lie; null where one of them lies above the other. */
function besides(file: string, other: string): [string, string] | null {
  const [from, to] = [file.split('/'), other.split('/')];
  const k = from.findIndex((part, at) => part !== to[at]);
  if (k + 1 >= from.length || k + 1 >= to.length) return null;
  return [from.slice(0, k + 1).join('/'), to.slice(0, k + 1).join('/')];
}

/** Circles of files or folders, each told once. */
function circlesOf(imports: ReadonlyMap<string, readonly string[]>): string[] {
  const circles: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, way: readonly string[]): void => {
    const before = way.indexOf(file);
    if (before >= 0) circles.push([...way.slice(before), file].join(' -> '));
    if (before >= 0 || done.has(file)) return;
    for (const next of imports.get(file) ?? []) visit(next, [...way, file]);
    done.add(file);
  };
  for (const file of imports.keys()) visit(file, []);
  return circles;
}

/** "engine/numerics" for that folder, otherwise the first folder under src/; '' for src/ itself. */
function folderOf(file: string): string {
  const [, first = '', second = ''] = file.split('/');
  if (file.split('/').length <= 2) return '';
  return first === 'engine' && second === 'numerics' ? 'engine/numerics' : first;
}

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => posix.join(entry.parentPath, entry.name))
    .filter((file) => !/^reports\/(?!README)/.test(file))
    .sort();
}

/**
 * Every folder of the repository with something kept in it, except what is made or fetched. Folders
 * of test/ that mirror one of src/ or of test/reference/ need no name of their own, nor do the
 * subjects of test/reference/physics/.
 */
function foldersThatCount(): string[] {
  const ignored = readFileSync('.gitignore', 'utf8').split('\n');
  const roots = readdirSync('.', { withFileTypes: true })
    .filter((e) => e.isDirectory() && e.name !== '.git' && !ignored.includes(`${e.name}/`))
    .map((e) => e.name);
  const files = roots.flatMap((root) => filesIn(root));
  const folders = files.flatMap((file) => {
    const parts = file.split('/').slice(0, -1);
    return parts.map((_, k) => join(...parts.slice(0, k + 1)));
  });
  const mirrors = (folder: string) =>
    folder.startsWith('test/reference/physics/') ||
    ['src/', 'test/reference/'].some((root) => folders.includes(folder.replace('test/', root)));
  return [...new Set(folders)].filter((f) => !f.startsWith('test/') || !mirrors(f)).sort();
}
