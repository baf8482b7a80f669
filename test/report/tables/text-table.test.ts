import { describe, expect, test } from 'vitest';
import { extremeMarks } from '../../../src/report/tables/extreme-marks.ts';
import { textTable } from '../../../src/report/tables/text-table.ts';
import { wrapText } from '../../../src/report/tables/wrap-text.ts';

const ROOMS = { head: 'room', cells: ['den', 'bathroom'], align: 'left' } as const;

describe('textTable', () => {
  test('aligns numbers right, names left, heads above them on the same last line', () => {
    const heat = { head: 'heat\n[kWh]', cells: ['12', '3456'] };
    expect(textTable([ROOMS, heat], 80)).toBe(
      ['           heat', 'room      [kWh]', 'den          12', 'bathroom   3456'].join('\n'),
    );
  });

  test('keeps numbers aligned where only some have a word behind them', () => {
    const cost = { head: 'GBP', cells: ['9', '1000'], marks: ['least', ''] };
    const next = { head: 'kWh', cells: ['1', '2'] };
    expect(textTable([ROOMS, cost, next], 80)).toBe(
      ['room       GBP        kWh', 'den          9 least    1', 'bathroom  1000          2'].join(
        '\n',
      ),
    );
  });

  test('goes on in a further block, with the first column again, rather than past the width', () => {
    const columns = ['one', 'two', 'three'].map((head) => ({ head, cells: ['100', '200'] }));
    const text = textTable([ROOMS, ...columns], 20);
    expect(text.split('\n\n')).toHaveLength(2);
    expect(text.split('\n').every((line) => line.length <= 20)).toBe(true);
    expect(text.match(/bathroom/g)).toHaveLength(2);
  });

  test('a column wider than the width stands alone with the first, not for ever', () => {
    const wide = { head: 'x'.repeat(50), cells: ['1', '2'] };
    expect(textTable([ROOMS, wide, wide], 20).split('\n\n')).toHaveLength(2);
  });

  test('shows line breaks as blanks and what would steer a terminal as its code', () => {
    expect(textTable([{ head: 'room', cells: ['\u001b[31mred\nden'], align: 'left' }], 80)).toBe(
      'room\n\\u001b[31mred den',
    );
  });

  test('no columns and no rows are no trouble', () => {
    expect(textTable([], 80)).toBe('');
    expect(textTable([{ head: 'room', cells: [], align: 'left' }], 80)).toBe('room');
  });
});

describe('extremeMarks', () => {
  test('marks the least and the most', () => {
    expect(extremeMarks(['5', '3', '7', '4'])).toEqual(['', 'least', 'most', '']);
  });

  test('goes by what is printed, marks ties alike, and says nothing of dashes', () => {
    expect(extremeMarks(['1.0', '1', '2', '3'])).toEqual(['least', 'least', '', 'most']);
    expect(extremeMarks(['-', '2', '3'])).toEqual(['', 'least', 'most']);
  });

  test('leaves out a word that most would bear', () => {
    expect(extremeMarks(['0', '0', '0', '9'])).toEqual(['', '', '', 'most']);
    expect(extremeMarks(['4', '4'])).toEqual(['', '']);
    expect(extremeMarks(['4'])).toEqual(['']);
    expect(extremeMarks([])).toEqual([]);
  });
});

describe('wrapText', () => {
  test('breaks between words and sets later lines under the first', () => {
    expect(wrapText('one two three four', '- ', 10)).toBe('- one two\n  three\n  four');
  });

  test('keeps a long word whole', () => {
    expect(wrapText('a extraordinarily b', '', 5)).toBe('a\nextraordinarily\nb');
  });
});
