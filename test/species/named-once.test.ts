import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

test('species are named in their own files and nowhere else in the code', () => {
  const naming = readdirSync('src', { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => posix.join(entry.parentPath, entry.name))
    .filter((file) => namesIn(readFileSync(file, 'utf8')).length > 0);
  expect(naming.sort()).toEqual(OWN_FILES);
});

test('names are found in keys, texts and stems, and not in comments', () => {
  const text = `const a = { tvoc: 1 }; // pm25
    f('co2_high', \`of \${b} PM2.5\`); g('kg CO2e');`;
  expect(namesIn(text)).toEqual(['tvoc', 'co2', 'PM2.5']);
});

const OWN_FILES = [
  'src/species/carbon-dioxide.ts',
  'src/species/coarse-grains.ts',
  'src/species/fine-particles.ts',
  'src/species/nitrogen-dioxide.ts',
  'src/species/organic-vapours.ts',
];

/** Names of species in code, comments left out. */
function namesIn(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) || ts.isLiteralExpression(node) || ts.isTemplateHead(node)) {
      found.push(...(node.text.match(NAMES) ?? []));
    } else if (ts.isTemplateMiddleOrTemplateTail(node)) {
      found.push(...(node.text.match(NAMES) ?? []));
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('text.ts', text, ts.ScriptTarget.ES2023, true));
  return found;
}

/** Not the carbon dioxide equivalent by which energy is charged with its carbon. */
const NAMES = /(?<![a-z0-9])(?:co2|tvoc|no2|pollen|pm2\.?5)(?![a-z0-9]| equivalent)/gi;
