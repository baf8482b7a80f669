import { expect, test, vi } from 'vitest';
import { parse } from 'yaml';
import { readSettings } from '../../../src/scenario/yaml/settings.ts';
import { problemsOf } from '../problems-of.ts';

test.each([
  ['19', 19],
  ['null', null],
  ['~', null],
  ['[&a 1, *a]', [1, 1]],
  ['{ from: "07:00" }', { from: '07:00' }],
])('a value of %s', (written, value) => {
  expect(readSettings([`/a/b=${written}`])).toEqual([
    { words: `--set /a/b=${written}`, steps: ['a', 'b'], value },
  ]);
});

test.each([
  ...['0', '-0', '007', '-012.50', '0.30000000000000004', '123456789012345', '1e3', '+4', '.5'],
  ...['1_000', '0x1F', '0o17', '1.', '12:30', '9'.repeat(40), '1.7976931348623157e308'],
])('%s is what it is in YAML', (written) => {
  const [setting] = readSettings([`/a=${written}`]);
  expect(Object.is(setting!.value, parse(written))).toBe(true);
});

test.each([
  ['{[1]: 2}', 'expected keys that are text, got a key that is none'],
  ['{a: 1, a: 2}', 'expected every key once, got "a", which stands in line 1 already'],
  ['{__proto__: 1}', 'expected another name, got "__proto__"'],
  ['&a [*a]', 'expected aliases (*) that end, got one that holds itself'],
  ['*a', 'expected an anchor &a further up, got the alias *a alone'],
  ['[*a, &a 1]', 'expected an anchor &a further up, got the alias *a alone'],
  ['[1,', 'expected a "]" that closes this "[", got none'],
  ['['.repeat(5000), 'expected no more than 100 levels of nesting, got more in line 1'],
])('%j is told with its words, and nothing is warned of', (written, told) => {
  const warn = vi.spyOn(process, 'emitWarning').mockImplementation(() => {});
  const [problem = '', ...more] = problemsOf(() => readSettings([`/a/b=${written}`]));
  expect(problem).toContain(`--set /a/b=${written.length > 800 ? LONG : written}: `);
  expect(problem).toContain(told);
  expect(more).toEqual([]);
  expect(warn).not.toHaveBeenCalled();
  warn.mockRestore();
});

test.each(['', '  ', ' # nothing'])('no value but %j is refused, and null removes', (written) => {
  expect(problemsOf(() => readSettings([`/a/b=${written}`]))).toEqual([
    `--set /a/b=${written}: expected a value after "=", got nothing (/a/b=null removes the key)`,
  ]);
});

/** What is told of 5000 brackets: 120 characters of the words at either end. */
const LONG = `${'['.repeat(109)}[... 4771 characters ...]${'['.repeat(120)}`;
