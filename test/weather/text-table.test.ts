import { describe, expect, test } from 'vitest';
import { columnOfCell, splitLines } from '../../src/weather/text-table.ts';

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
