import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { filesUnder, parse, walk } from '../reference/imports.ts';

test('species are named in their own files and nowhere else in the code', () => {
  const naming = filesUnder('src')
    .filter((file) => readFileSync(file, 'utf8').match(NAMES) !== null) // the others need no parser
    .filter((file) => namesIn(parse(file)).length > 0);
  expect(naming).toEqual(OWN_FILES);
});

test('names are found in keys, texts and stems, and not in comments', () => {
  const text = `const a = { tvoc: 1 }; // pm25
    f('co2_high', \`of \${b} PM2.5\`); g('kg CO2e');`;
  const ast = ts.createSourceFile('text.ts', text, ts.ScriptTarget.ES2023, true);
  expect(namesIn(ast)).toEqual(['tvoc', 'co2', 'PM2.5']);
});

const OWN_FILES = [
  'src/species/carbon-dioxide.ts',
  'src/species/coarse-grains.ts',
  'src/species/fine-particles.ts',
  'src/species/nitrogen-dioxide.ts',
  'src/species/organic-vapours.ts',
];

/** Names of species in code, comments left out. */
function namesIn(ast: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(ast, (node) => {
    if (ts.isIdentifier(node) || ts.isLiteralExpression(node) || ts.isTemplateHead(node)) {
      found.push(...(node.text.match(NAMES) ?? []));
    } else if (ts.isTemplateMiddleOrTemplateTail(node)) {
      found.push(...(node.text.match(NAMES) ?? []));
    }
  });
  return found;
}

/** Not the carbon dioxide equivalent by which energy is charged with its carbon. */
const NAMES = /(?<![a-z0-9])(?:co2|tvoc|no2|pollen|pm2\.?5)(?![a-z0-9]| equivalent)/gi;
