import { expect, test } from 'vitest';
import { jsonText } from '../../src/cli/json-text.ts';
import { sumText } from '../../src/units/sum-text.ts';

test('sums within words have no blanks for programs', () => {
  const words = `what is bought costs ${sumText(31_966, 0)} JPY a year`;
  expect(JSON.parse(jsonText([{ words }]))).toEqual([
    { words: 'what is bought costs 31966 JPY a year' },
  ]);
});
