// Compiles what the engine does in every step to WebAssembly, from the same functions of src that run
// as JavaScript.
//
// AssemblyScript has no word for some of TypeScript, which is put into its own here: records become
// classes in linear memory, typed arrays unchecked views of it, destructuring single constants, and
// constants of a file the numbers they come to. The module and the place of every field of a record go
// to src/engine/step-module.ts.
//
//   node tools/build-step.mjs           writes that file, if its sources have changed
//   node tools/build-step.mjs --check   ends with status 1 if it is not up to date
import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { build } from 'esbuild';
import ts from 'typescript';

const ENTRY = 'src/engine/step.ts';
const TARGET = 'src/engine/step-module.ts';

/** Functions that stay with the machine which runs the module: their powers and exponentials would differ in the last bit. */
const MACHINE = ['outputAtExcess', 'saturationPressure'];

/** Views of linear memory that stand for typed arrays: name, type of an element in code and in memory, log2 of its bytes. */
const VIEWS = {
  Float64Array: ['Reals', 'f64', 'f64', 3],
  Int32Array: ['Integers', 'i32', 'i32', 2],
  Uint8Array: ['Bytes', 'i32', 'u8', 0],
};
const WORDS = {
  'Number.POSITIVE_INFINITY': 'Infinity',
  'Number.NEGATIVE_INFINITY': '-Infinity',
  'Number.isNaN': 'isNaN',
  'Number.NaN': 'NaN',
};

const trees = new Map();
/** Names of the functions in use, by file. */
const used = new Map();
/** Record interfaces in use, by name. */
const interfaces = new Map();
reach(ENTRY, functionsOf(ENTRY).map(({ name }) => name.text));

const own = readFileSync('tools/build-step.mjs', 'utf8');
const records = layOutRecords();
const translated = await Promise.all(
  [...used.keys()].map(async (path) => [nameOf(path), await translate(path)]),
);
const digest = createHash('sha256')
  .update(JSON.stringify([own, translated, [...records]]))
  .digest('hex')
  .slice(0, 16);
const current = existsSync(TARGET) && readFileSync(TARGET, 'utf8').includes(digest);
if (process.argv.includes('--check')) process.exitCode = current ? 0 : 1;
else if (!current) await write();

function treeOf(path) {
  if (!trees.has(path)) {
    const text = readFileSync(path, 'utf8');
    trees.set(path, ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true));
  }
  return trees.get(path);
}

function functionsOf(path) {
  return treeOf(path).statements.filter(ts.isFunctionDeclaration);
}

/** What a file imports from others of src: name here, name there, and the file. */
function importsOf(path) {
  return treeOf(path)
    .statements.filter(ts.isImportDeclaration)
    .filter(({ moduleSpecifier }) => moduleSpecifier.text.startsWith('.'))
    .flatMap(({ importClause, moduleSpecifier }) =>
      (importClause?.namedBindings?.elements ?? []).map(({ name, propertyName, isTypeOnly }) => ({
        isType: isTypeOnly || importClause.isTypeOnly,
        name: name.text,
        origin: (propertyName ?? name).text,
        from: join(dirname(path), moduleSpecifier.text),
      })),
    );
}

/** Note functions of a file as used, with every function and record that they name. */
function reach(path, names) {
  const seen = used.get(path) ?? new Set();
  used.set(path, seen);
  const here = functionsOf(path);
  const imported = importsOf(path);
  const visit = (node) => {
    if (ts.isIdentifier(node)) follow(node.text);
    ts.forEachChild(node, visit);
  };
  const follow = (name) => {
    const local = here.find((f) => f.name.text === name);
    if (local !== undefined && !seen.has(name)) {
      seen.add(name);
      visit(local);
    }
    const foreign = imported.find((i) => i.name === name);
    if (foreign === undefined || MACHINE.includes(name)) return;
    const { from, origin } = foreign;
    if (functionsOf(from).some((f) => f.name.text === origin)) {
      if (!used.get(from)?.has(origin)) reach(from, [origin]);
    } else noteRecord(from, origin);
  };
  for (const name of names) follow(name);
}

function noteRecord(path, name) {
  if (interfaces.has(name)) return;
  if (name === 'Home') return; // plain data that the step never reads
  const found = treeOf(path).statements.find(
    (node) => ts.isInterfaceDeclaration(node) && node.name.text === name,
  );
  if (found === undefined) return;
  const members = found.members.filter(ts.isPropertySignature);
  interfaces.set(name, members);
  const imported = importsOf(path);
  for (const { type } of members) {
    if (type === undefined || !ts.isTypeReferenceNode(type)) continue;
    const foreign = imported.find((i) => i.name === type.typeName.text);
    if (foreign !== undefined) noteRecord(foreign.from, foreign.origin);
    else noteRecord(path, type.typeName.text);
  }
}

/** Fields of every record that can lie in linear memory, and where. */
function layOutRecords() {
  const kept = (members) => members.filter(({ type, questionToken }) => !questionToken && kindOf(type));
  for (let before = -1; before !== interfaces.size; ) {
    before = interfaces.size;
    for (const [name, members] of interfaces) if (kept(members).length === 0) interfaces.delete(name);
  }
  return new Map(
    [...interfaces].map(([name, members]) => {
      let end = 0;
      const fields = kept(members).map((member) => {
        const type = kindOf(member.type);
        const size = type === 'f64' ? 8 : 4;
        const at = Math.ceil(end / size) * size;
        end = at + size;
        return [member.name.text, type, at];
      });
      return [name, { size: Math.ceil(end / 8) * 8, fields }];
    }),
  );
}

function kindOf(type) {
  if (type.kind === ts.SyntaxKind.NumberKeyword) return 'f64';
  if (!ts.isTypeReferenceNode(type) || !ts.isIdentifier(type.typeName)) return undefined;
  const name = type.typeName.text;
  if (name === 'i32') return name;
  return VIEWS[name]?.[0] ?? (interfaces.has(name) ? name : undefined);
}

function declareRecords() {
  const views = Object.values(VIEWS).map(
    ([name, type, stored, shift]) => `@unmanaged export class ${name} {
  @inline @operator('[]') get(i: i32): ${type} { return load<${stored}>(changetype<usize>(this) + (<usize>i << ${shift})); }
  @inline @operator('[]=') set(i: i32, value: ${type}): void { store<${stored}>(changetype<usize>(this) + (<usize>i << ${shift}), <${stored}>value); }
  @inline at(i: i32, field: i32): ${type} { return load<${stored}>(changetype<usize>(this) + (<usize>i << ${shift}) + (<usize>field << ${shift})); }
  @inline put(i: i32, field: i32, value: ${type}): void { store<${stored}>(changetype<usize>(this) + (<usize>i << ${shift}) + (<usize>field << ${shift}), <${stored}>value); }
}`,
  );
  const classes = [...records].map(([name, { fields }]) => {
    const lines = fields.map(([field, type]) => `  ${field}: ${type};`);
    return `@unmanaged export class ${name} {\n${lines.join('\n')}\n}`;
  });
  return [...views, ...classes].join('\n');
}

/** The used functions of a file in AssemblyScript, with the constants that they name. */
async function translate(path) {
  const names = used.get(path);
  const functions = functionsOf(path).filter(({ name }) => names.has(name.text));
  const printer = ts.createPrinter({ removeComments: true });
  const bodies = functions.map((node) => {
    const { transformed } = ts.transform(node, [toAssemblyScript]);
    return printer.printNode(ts.EmitHint.Unspecified, transformed[0], treeOf(path));
  });
  const body = bodies.join('\n');
  const named = (name) => new RegExp(`\\b${name}\\b`).test(body);
  const classes = [...Object.values(VIEWS).map(([name]) => name), ...records.keys()].filter(named);
  const imports = [`import { ${classes.join(', ')} } from './records';`];
  for (const { name, origin, from } of importsOf(path).filter((i) => named(i.name))) {
    if (MACHINE.includes(name)) imports.push(declareMachine(name, from));
    else if (used.get(from)?.has(origin)) {
      imports.push(`import { ${origin} as ${name} } from './${nameOf(from).slice(0, -3)}';`);
    }
  }
  const constants = Object.entries(await constantsOf(path, named)).map(([name, value]) => {
    const whole = Number.isInteger(value) && Math.abs(value) < 2 ** 31;
    return `const ${name}: ${whole ? 'i32' : 'f64'} = ${value};`;
  });
  return [...imports, ...constants, body].join('\n');
}

function declareMachine(name, from) {
  const { parameters } = functionsOf(from).find((f) => f.name.text === name);
  const list = parameters.map((p) => `${p.name.text}: f64`).join(', ');
  return `@external('machine', '${name}') declare function ${name}(${list}): f64;`;
}

/** Numbers that a file's own and imported constants come to, of those that are named. */
async function constantsOf(path, named) {
  const values = importsOf(path).filter(({ isType }) => !isType);
  const names = new Set(values.map(({ name }) => name));
  const collect = (name) => {
    if (ts.isIdentifier(name)) names.add(name.text);
    else for (const element of name.elements) collect(element.name);
  };
  for (const node of treeOf(path).statements.filter(ts.isVariableStatement)) {
    for (const { name } of node.declarationList.declarations) collect(name);
  }
  const asked = [...names].filter(named);
  if (asked.length === 0) return {};
  const { outputFiles } = await build({
    stdin: {
      contents: `${treeOf(path).text}\nexport const ALL_OF_THEM = { ${asked.join(', ')} };`,
      loader: 'ts',
      resolveDir: resolve(dirname(path)),
      sourcefile: basename(path),
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
    logLevel: 'error',
  });
  const encoded = Buffer.from(outputFiles[0].text).toString('base64');
  const { ALL_OF_THEM } = await import(`data:text/javascript;base64,${encoded}`);
  return Object.fromEntries(Object.entries(ALL_OF_THEM).filter(([, v]) => typeof v === 'number'));
}

function toAssemblyScript(context) {
  const { factory } = context;
  const constant = (name, value) =>
    factory.createVariableStatement(
      undefined,
      factory.createVariableDeclarationList(
        [factory.createVariableDeclaration(name, undefined, undefined, value)],
        ts.NodeFlags.Const,
      ),
    );
  /** `const { a, b: { c } } = value` as one constant a name. */
  const unfold = (pattern, value) =>
    pattern.elements.flatMap(({ name, propertyName }) => {
      const field = factory.createPropertyAccessExpression(value, propertyName ?? name);
      return ts.isIdentifier(name) ? [constant(name, field)] : unfold(name, field);
    });
  const visitFunction = (node) => {
    const first = [];
    const parameters = node.parameters.map(({ name, type }, k) => {
      const plain = ts.isIdentifier(name) ? name : factory.createIdentifier(`given${k}`);
      if (plain !== name) first.push(...unfold(name, plain));
      const kind = ts.visitNode(type, visit);
      return factory.createParameterDeclaration(undefined, undefined, plain, undefined, kind);
    });
    const body = ts.visitEachChild(node.body, visit, context);
    return factory.createFunctionDeclaration(
      [factory.createModifier(ts.SyntaxKind.ExportKeyword)],
      undefined,
      node.name,
      undefined,
      parameters,
      ts.visitNode(node.type, visit),
      factory.createBlock([...first, ...body.statements], true),
    );
  };
  /** `view[place + field]` with a constant of a file or a whole number for field. */
  const fieldOf = (node) => {
    const access = ts.isNonNullExpression(node) ? node.expression : node;
    if (!ts.isElementAccessExpression(access)) return undefined;
    const { expression: view, argumentExpression: index } = access;
    if (!ts.isBinaryExpression(index) || index.operatorToken.kind !== ts.SyntaxKind.PlusToken) return undefined;
    const { left: place, right: field } = index;
    const constant = ts.isNumericLiteral(field) || (ts.isIdentifier(field) && /^[A-Z_]+$/.test(field.text));
    return constant ? { view, place, field } : undefined;
  };
  const call = ({ view, place, field }, method, more) =>
    factory.createCallExpression(
      factory.createPropertyAccessExpression(visit(view), method),
      undefined,
      [visit(place), field, ...more],
    );
  const visit = (node) => {
    if (ts.isNonNullExpression(node)) return visit(node.expression);
    if (node.kind === ts.SyntaxKind.NumberKeyword) return factory.createTypeReferenceNode('f64');
    if (ts.isTypeReferenceNode(node) && node.typeName.text in VIEWS) {
      return factory.createTypeReferenceNode(VIEWS[node.typeName.text][0]);
    }
    if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) {
      const word = WORDS[`${node.expression.text}.${node.name.text}`];
      if (word !== undefined) return factory.createIdentifier(word);
    }
    if (ts.isVariableStatement(node)) {
      const { declarations } = node.declarationList;
      if (declarations.some(({ name }) => ts.isObjectBindingPattern(name))) {
        return declarations.flatMap(({ name, initializer }) => unfold(name, visit(initializer)));
      }
    }
    const place = fieldOf(node);
    if (place !== undefined) return call(place, 'at', []);
    if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.EqualsToken) {
      const target = fieldOf(node.left);
      if (target !== undefined) return call(target, 'put', [visit(node.right)]);
    }
    return ts.isFunctionDeclaration(node) ? visitFunction(node) : ts.visitEachChild(node, visit, context);
  };
  return (node) => ts.visitNode(node, visit);
}

async function write() {
  const folder = process.env.STEP_FOLDER ?? mkdtempSync(join(tmpdir(), 'step-'));
  try {
    writeFileSync(join(folder, 'records.ts'), declareRecords());
    for (const [name, text] of translated) writeFileSync(join(folder, name), text);
    writeFileSync(TARGET, moduleText(await compile(folder)));
  } finally {
    if (process.env.STEP_FOLDER === undefined) rmSync(folder, { recursive: true });
  }
}

async function compile(folder) {
  const { default: asc } = await import('assemblyscript/asc');
  const { error, stderr } = await asc.main(
    [
      nameOf(ENTRY),
      ...['--outFile', 'step.wasm', '--runtime', 'stub', '--importMemory', '--use', 'abort='],
      ...['-O3', '--converge', '--noAssert', '--baseDir', folder],
    ],
    {
      readFile: (name, base) => {
        const path = resolve(base, name);
        return existsSync(path) ? readFileSync(path, 'utf8') : null;
      },
      writeFile: (name, contents, base) => writeFileSync(resolve(base, name), contents),
      listFiles: () => [],
    },
  );
  if (error) throw new Error(`${stderr.toString()}\n${error.message}`);
  return readFileSync(join(folder, 'step.wasm'));
}

function moduleText(wasm) {
  return `// Written by tools/build-step.mjs from what src/engine/step.ts reaches; not to be edited. Sources: ${digest}

/** The step of the engine as a WebAssembly module, in base64. */
export const STEP_MODULE =
  '${wasm.toString('base64')}';

/** Where the fields of each record lie in linear memory: name, type, and bytes from the record's start. */
export const STEP_RECORDS: Readonly<
  Record<string, { readonly size: number; readonly fields: readonly (readonly [string, string, number])[] }>
> = ${JSON.stringify(Object.fromEntries(records))};
`;
}

function nameOf(path) {
  return path.replace(/^src\//, '').replaceAll('/', '_');
}
