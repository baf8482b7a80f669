import { describe, expect, test } from 'vitest';
import { columnOfCell, splitCells, splitLines } from '../../src/weather/text-table.ts';

describe('splitCells', () => {
  test.each([
    ['a,b,,d', ',', ['a', 'b', '', 'd']],
    ['', ',', ['']],
    ['1,"HARBOUR, OLD",3', ',', ['1', 'HARBOUR, OLD', '3']],
    ['"say ""hm""",2', ',', ['say "hm"', '2']],
    ['"",x', ',', ['', 'x']],
    ['never "closed, so one', ',', ['never closed, so one']],
    ['a;"b;c"', ';', ['a', 'b;c']],
    ['  2023 01   -15 ', ' ', ['2023', '01', '-15']],
  ])('%s', (line, delimiter, cells) => {
    expect(splitCells(line, delimiter)).toEqual(cells);
  });
});

describe('columnOfCell', () => {
  test.each([
    ['a,b,,d', ',', [1, 3, 5, 6]],
    ['1,"HARBOUR, OLD",3', ',', [1, 3, 18]],
    ['2023 01   -15', ' ', [1, 6, 11]],
  ])('%s', (line, delimiter, columns) => {
    const table = { file: 'a', lines: [line], delimiter };
    expect(columns.map((_, cell) => columnOfCell(table, 1, cell))).toEqual(columns);
  });

  test('a cell that the line has not is past its end', () => {
    expect(columnOfCell({ file: 'a', lines: ['a,b'], delimiter: ',' }, 1, 5)).toBe(4);
    expect(columnOfCell({ file: 'a', lines: ['a b'], delimiter: ' ' }, 1, 5)).toBe(4);
  });
});

test('splitLines takes any line end and drops empty lines at the end', () => {
  expect(splitLines('\ufeffa\r\nb\n\nc\r \n\n')).toEqual(['a', 'b', '', 'c']);
  expect(splitLines('')).toEqual([]);
});
