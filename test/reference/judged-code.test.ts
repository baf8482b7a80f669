import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { originsOf } from './got-origins.ts';
import { judgedAt } from './judged-code.ts';

const PLANTED = `import { run } from '../engine/run-it.ts';
import { formula } from '../../src/physics/formula.ts';
import { input, type Unit } from '../../src/physics/input.ts';
import { other } from './physics/other.ts';
const helper = (x: number) => formula(x);
test.each([['a', () => other(1)]])('%s', (what, work) => {
  compare({ what, expected: input(3), got: work() });
});
test('b', () => {
  const got = helper(2);
  compare({ what: 'b', expected: other(2), got });
});
test('c', () => {
  let got = 0;
  const list: number[] = [];
  run((t) => { got += t; });
  for (const x of [formula]) list.push(x(1));
  list.forEach((each) => compareBand({ what: 'c', got: each }));
  compare({ what: 'c', expected: formula(1), got });
});
function agree(what: string, pair: () => [number, number]) {
  const [got, expected] = pair();
  compare({ what, expected, got });
}
agree('d', () => [other(1), 2]);
`;

test.each([
  ['a row of a table', [7], ['physics/other']],
  ['a value and a function by their names, not those of another test', [11], ['physics/formula']],
  ['a list that is filled', [18], ['physics/formula']],
  ['a value set by a run', [19], ['engine/run-it']],
  ['a function that compares, to what it was given', [23, 25], ['physics/other']],
] as const)('what is judged goes back through %s', (_, lines, files) => {
  const file = 'test/reference/planted.test.ts';
  const ast = ts.createSourceFile(file, PLANTED, ts.ScriptTarget.ES2023, true);
  const found = originsOf(file, ast, lines);
  expect(found.map((target) => target.replace(/^(src|test)\/|(reference\/)|\.ts$/g, ''))).toEqual(
    files,
  );
});

test.each([
  ['program', 'test/physics/moist-air/saturation-table.test.ts'],
  ['program', 'test/measures/air/airing.test.ts'],
  ['program', 'test/units/add-normal.test.ts'],
  ['oracle', 'test/physics/comfort/predicted-mean-vote.test.ts'],
  ['both', 'test/physics/moisture/pane-surface-temperature.test.ts'],
] as const)('judged is %s in %s', (judged, file) => {
  const all = linesOfComparisons(file).map((line) => judgedAt({ file, lines: [line] }));
  expect(all.length).toBeGreaterThan(0);
  expect(all).toContain(judged);
});

test('a comparison that judges nothing is refused with its place', () => {
  expect(() => judgedAt({ file: 'test/reference/compare.ts', lines: [1] })).toThrow(
    'test/reference/compare.ts:1: judges neither the program nor an oracle',
  );
});

function linesOfComparisons(file: string): number[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((line, k) => (/\bcompare(Band)?\(/.test(line) ? [k + 1] : []));
}
