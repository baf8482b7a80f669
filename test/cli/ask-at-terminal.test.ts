import { PassThrough } from 'node:stream';
import { expect, test } from 'vitest';
import { askAtTerminal } from '../../src/cli/ask-at-terminal.ts';
import { Interrupted } from '../../src/cli/asking.ts';

const DOWN = '\u001b[B';
const CTRL_C = '\u0003';

/** A terminal, and the keys that somebody presses as soon as a question stands there. */
function pressing(...keys: readonly string[]) {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let shown = '';
  let pressed = false;
  output.on('data', (piece) => {
    shown += piece;
    if (pressed) return;
    pressed = true;
    keys.forEach((key, k) => {
      setTimeout(() => input.write(key), 20 * (k + 1));
    });
  });
  return { asking: askAtTerminal(input, output), shown: () => shown };
}

const OPTIONS = ['a', 'b', 'c'].map((value) => ({ value, label: `the ${value}` }));

test('a line, with what most would answer to begin with', async () => {
  const { asking, shown } = pressing('2', '\r');
  expect(await asking.line('How many?', '1', () => null)).toBe('12');
  expect(shown()).toContain('How many?');
});

test('one of several by the arrows', async () => {
  expect(await pressing(DOWN, '\r').asking.one('Which?', OPTIONS, 'b')).toBe('c');
});

test('several by the space bar', async () => {
  const { asking } = pressing(' ', DOWN, ' ', '\r');
  expect(await asking.several('Which?', OPTIONS, ['a'])).toEqual(['b']);
});

test('yes by Enter', async () => {
  expect(await pressing('\r').asking.confirm('So?', true)).toBe(true);
});

test('breaking off is no answer', async () => {
  await expect(pressing(CTRL_C).asking.confirm('So?', true)).rejects.toThrow(Interrupted);
  await expect(pressing(CTRL_C).asking.one('Which?', OPTIONS, 'a')).rejects.toThrow(Interrupted);
});
