import { expect, test } from 'vitest';
import { bandWords } from '../../../src/report/page/band-words.ts';

const room = (name: string, text: string) => ({ name, text });

test('the band of most rooms is told once, and the others by their names', () => {
  const usual = ['den', 'nook', 'hall'].map((name) => room(name, '40 to 60 %'));
  expect(bandWords(usual)).toBe('relative humidity outside 40 to 60 %');
  expect(bandWords([room('pantry', '0 to 70 %'), ...usual])).toBe(
    'relative humidity outside 40 to 60 % (pantry 0 to 70 %)',
  );
});
