import { describe, expect, test } from 'vitest';
import {
  countOf,
  endsOf,
  nthValue,
  readAxes,
  valueAtShare,
} from '../../../src/studies/sweep/axis.ts';

const values = (words: string) => {
  const [axis] = readAxes([words]);
  return Array.from({ length: countOf(axis!) }, (_, k) => nthValue(axis!, k));
};

describe('what an axis takes', () => {
  test.each([
    ['/a=17 to 21 by 1', [17, 18, 19, 20, 21]],
    ['/a=17 to 20.9 by 1', [17, 18, 19, 20]],
    ['/a=0 to 0.3 by 0.1', [0, 0.1, 0.2, 0.3]],
    ['/a=-2 to -1 by 0.5', [-2, -1.5, -1]],
    ['/a=1 to 2 by 5', [1]],
    ['/a=21, 17,19.5', [21, 17, 19.5]],
    ['/a=21', [21]],
    ['"/a=b"=1, 2', [1, 2]],
  ])('%s', (words, expected) => {
    expect(values(words)).toEqual(expected);
  });

  test('a share of it: every value of a list as often, any value of a range', () => {
    const [list, range] = readAxes(['/a=5, 7, 9', '/b=10 to 20']);
    expect([0, 0.3, 0.34, 0.67, 0.999].map((share) => valueAtShare(list!, share))).toEqual([
      ...[5, 5, 7, 9, 9],
    ]);
    expect([0, 0.25, 0.999].map((share) => valueAtShare(range!, share))).toEqual([10, 12.5, 19.99]);
    expect([endsOf(list!), endsOf(range!)]).toEqual([
      [5, 9],
      [10, 20],
    ]);
    const [steps] = readAxes(['/a=17 to 20.9 by 1']);
    expect(endsOf(steps!)).toEqual([17, 20]);
    expect(countOf(range!)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('what is no axis is told in words', () => {
  const such = 'such as "/heating/setpoint=17 to 21 by 0.5" or "/heating/setpoint=17, 19, 21"';
  test.each([
    ['/a=21 to 17 by 1', 'expected a range from low to high, got 21 to 17'],
    ['/a=17 to 17', 'expected a range from low to high, got 17 to 17'],
    ['/a=1 to 2 by 0', 'expected a step above 0, got 0'],
    ['/a=1 to 2 by -1', 'expected a step above 0, got -1'],
    ['/a=1, 2, 1', 'expected each value once, got 1 again'],
    ['/a=warm', `expected a place and its values, got "warm" (${such})`],
    ['/a=', `expected a place and its values, got "" (${such})`],
    ['/a=1 to NaN by 2', `expected a place and its values, got "NaN" (${such})`],
    [
      'a=1',
      'expected a pointer such as /heating/setpoint, got "a=1" (a slash in a name is written ~1)',
    ],
    ['/a', `expected a place and its values, got "/a" (${such})`],
  ])('%s', (words, expected) => {
    expect(() => readAxes([words])).toThrow(`--vary ${words}: ${expected}`);
  });

  test('all at once, and a place only once', () => {
    expect(() => readAxes(['/a=2 to 1', '/b=x', '/c=1', '/c=2'])).toThrow(
      /\/a.*\n.*\/b.*\n.*\/c: expected each place once, got it again$/,
    );
  });
});
