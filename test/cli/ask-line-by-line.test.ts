import { PassThrough } from 'node:stream';
import { expect, test } from 'vitest';
import { askLineByLine } from '../../src/cli/ask-line-by-line.ts';
import { Interrupted } from '../../src/cli/asking.ts';

/** A terminal without a cursor, and the lines that somebody types, one whenever an answer is waited for. */
function typing(...lines: readonly string[]) {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let shown = '';
  const left = [...lines];
  output.on('data', (piece) => {
    shown += piece;
    if (!shown.endsWith('] ')) return;
    const next = left.shift();
    setTimeout(() => (next === undefined ? input.end() : input.write(`${next}\n`)), 5);
  });
  return { asking: askLineByLine(input, output), shown: () => shown };
}

const OPTIONS = ['a', 'b', 'c'].map((value) => ({ value, label: `the ${value}` }));

test('a line, the usual one by Enter, and what will not do is asked again', async () => {
  const check = (line: string) => (/^\d+$/.test(line) ? null : 'A number, please.');
  expect(await typing('').asking.line('How many?', '1', check)).toBe('1');
  const { asking, shown } = typing('many', '12');
  expect(await asking.line('How many?', '1', check)).toBe('12');
  expect(shown()).toBe('How many? [1] A number, please.\nHow many? [1] ');
});

test('one of several by number, by name, and by Enter', async () => {
  const { asking, shown } = typing('3');
  expect(await asking.one('Which?', OPTIONS, 'b')).toBe('c');
  expect(shown()).toBe('Which?\n  1 the a\n  2 the b\n  3 the c\nNumber [2] ');
  expect(await typing('a').asking.one('Which?', OPTIONS, 'b')).toBe('a');
  expect(await typing('').asking.one('Which?', OPTIONS, 'b')).toBe('b');
  expect(await typing('4', '1').asking.one('Which?', OPTIONS, 'b')).toBe('a');
});

test('several, none, and the usual', async () => {
  expect(await typing('1 3').asking.several('Which?', OPTIONS, ['b'])).toEqual(['a', 'c']);
  expect(await typing('1, 3').asking.several('Which?', OPTIONS, ['b'])).toEqual(['a', 'c']);
  expect(await typing('0').asking.several('Which?', OPTIONS, ['b'])).toEqual([]);
  expect(await typing('').asking.several('Which?', OPTIONS, ['b'])).toEqual(['b']);
  expect(await typing('1 9', '2').asking.several('Which?', OPTIONS, [])).toEqual(['b']);
});

test('yes and no', async () => {
  expect(await typing('').asking.confirm('So?', true)).toBe(true);
  expect(await typing('maybe', 'no').asking.confirm('So?', true)).toBe(false);
});

test('no escape sequence is ever written', async () => {
  const { asking, shown } = typing('');
  await asking.several('Which?', OPTIONS, ['b']);
  expect(shown()).not.toMatch(/\p{Cc}(?<!\n)/u);
});

test('where nothing more comes, that is no answer', async () => {
  await expect(typing().asking.confirm('So?', true)).rejects.toThrow(Interrupted);
});

test('answers that come at once, or in pieces, each go to their question', async () => {
  const input = new PassThrough();
  const asking = askLineByLine(input, { write: () => true });
  input.write('2\r\nKü');
  expect(await asking.one('Which?', OPTIONS, 'a')).toBe('b');
  const all = Buffer.from('che\nno\n1 2');
  for (const byte of all) input.write(Buffer.of(byte));
  input.end();
  expect(await asking.line('Where?', '', () => null)).toBe('Küche');
  expect(await asking.confirm('So?', true)).toBe(false);
  expect(await asking.several('Which?', OPTIONS, [])).toEqual(['a', 'b']);
  await expect(asking.confirm('So?', true)).rejects.toThrow(Interrupted);
  await expect(asking.confirm('So?', true)).rejects.toThrow(Interrupted); // and does not wait
});
