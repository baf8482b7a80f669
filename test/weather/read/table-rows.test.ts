import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Problem, problemText } from '../../../src/units/problem.ts';
import { type TableRow, tableRows, trimmedCells } from '../../../src/weather/read/table-rows.ts';

function rowsOf(text: string, delimiter = ','): { rows: TableRow[]; problems: string[] } {
  const problems: Problem[] = [];
  const lines = text.split('\n');
  const rows = tableRows({ file: 'a.csv', lines, delimiter }, 0, lines.length, problems);
  return { rows, problems: problems.map(problemText) };
}

describe('tableRows', () => {
  test.each([
    ['a,b,,d', ',', ['a', 'b', '', 'd']],
    ['1,"HARBOUR, OLD",3', ',', ['1', 'HARBOUR, OLD', '3']],
    ['"say ""hm""",2', ',', ['say "hm"', '2']],
    ['"",x', ',', ['', 'x']],
    ['a;"b;c"', ';', ['a', 'b;c']],
    ['"a"\t"b"', '\t', ['a', 'b']],
    ['"é °C",ü', ',', ['é °C', 'ü']],
    ['  2023 01   -15 ', ' ', ['2023', '01', '-15']],
  ])('%s', (line, delimiter, cells) => {
    expect(rowsOf(line, delimiter)).toEqual({ rows: [{ line: 1, cells }], problems: [] });
  });

  test('the lines stay right over blank ones, long and short ones, and cells of several lines', () => {
    const text = 'a,b\n\n  \n"1\n2",3\n"4",5,6\n7';
    expect(rowsOf(text).rows).toEqual([
      { line: 1, cells: ['a', 'b'] },
      { line: 4, cells: ['1\n2', '3'] },
      { line: 6, cells: ['4', '5', '6'] },
      { line: 7, cells: ['7'] },
    ]);
  });

  test('counts lines from the top of the file, also where it starts below', () => {
    const table = { file: 'a.csv', lines: ['# x', 'a,b', '"1",2'], delimiter: ',' };
    expect(tableRows(table, 2, 3, [])).toEqual([{ line: 3, cells: ['1', '2'] }]);
  });

  test('plain cells are the same with and without marks around them', () => {
    const cell = fc.stringMatching(/^[-0-9a-z.: é]*$/);
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1 });
    fc.assert(
      fc.property(table, (cells) => {
        const plain = cells.map((row) => row.join(',')).join('\n');
        const marked = cells.map((row) => row.map((c) => `"${c}"`).join(',')).join('\n');
        expect(rowsOf(marked).rows).toEqual(rowsOf(plain).rows);
        expect(rowsOf(marked).rows).toEqual(cells.map((c, k) => ({ line: k + 1, cells: c })));
      }),
    );
  });
});

describe('marks that do not pair', () => {
  test('each wrong row is told once, with its place, and the others are read', () => {
    const { rows, problems } = rowsOf('"a",b\n1,2" or 3" or\n"3",4\n5,6" and\n7,8\n9,"10\n1,2');
    expect(problems).toEqual([
      'a.csv:2:3: quotation marks: expected marks only around whole cells, got one inside a cell (inside a quoted cell a mark is written twice)',
      'a.csv:4:3: quotation marks: expected marks only around whole cells, got one inside a cell (inside a quoted cell a mark is written twice)',
      'a.csv:6:3: quotation marks: expected a mark that closes this cell, got none',
    ]);
    expect(rows.map(({ line }) => line)).toEqual([1, 3, 5]);
  });

  test('a mark left open is told where it opens', () => {
    const { rows, problems } = rowsOf('"a","b"\n"1","2\n"3","4"\n"5","6"');
    expect(problems).toEqual([
      'a.csv:2:5: quotation marks: expected marks only around whole cells, got text behind the closing one in line 3 (inside a quoted cell a mark is written twice)',
    ]);
    expect(rows.map(({ line }) => line)).toEqual([1, 4]);
  });

  test('what follows from a mark left open is not told again', () => {
    const { rows, problems } = rowsOf('a,b\n"1" x,2\n3,4\n5,"6" y\n7,8');
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/^a\.csv:2:1: .* in line 2 /);
    expect(rows.map(({ line }) => line)).toEqual([1]);
  });

  test('a header with such marks has no cells', () => {
    const problems: Problem[] = [];
    const table = { file: 'a.csv', lines: ['a,"b'], delimiter: ',' };
    expect(trimmedCells(table, 0, problems)).toEqual([]);
    expect(problems).toHaveLength(1);
  });
});

test('the library needs nothing of the machine: it runs where there is only the language', () => {
  const file = fileURLToPath(import.meta.resolve('csv-parse/browser/esm/sync'));
  const source = readFileSync(file, 'utf8');
  expect(source).not.toMatch(/^\s*import\b/m);
  const script = source.replace(/^export \{.*\};$/m, '');
  const cells: string[][] = runInNewContext(`${script}\nparse('a,"b\u00e9, c"\\n1,2')`);
  expect(JSON.parse(JSON.stringify(cells))).toEqual([
    ['a', 'bé, c'],
    ['1', '2'],
  ]);
});
