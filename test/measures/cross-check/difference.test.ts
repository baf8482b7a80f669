import { expect, test } from 'vitest';
import {
  becauseOf,
  differenceCell,
  differenceInWords,
  differencePct,
  mainReasons,
  needsReason,
} from '../../../src/measures/cross-check/difference.ts';

const effects = (...sizes: readonly number[]) =>
  sizes.map((size) => ({ size, words: String(size) }));

test('how far an estimate lies above a simulation, by the definition', () => {
  expect(differencePct(120, 100)).toBe(20);
  expect(differencePct(-120, -100)).toBe(-20);
  expect(differencePct(0, 0)).toBe(0);
  expect(differencePct(5, 0)).toBe(100);
  expect([85, 115, 84, 116].map((estimate) => needsReason(estimate, 100, 1))).toEqual([
    false,
    false,
    true,
    true,
  ]);
});

test('next to nothing is too little to compare', () => {
  const little = 'that is too little to compare';
  for (const [estimate, simulated, least] of [
    [0, -0.21, 0.3],
    [0.8, 0.9, 1],
    [7643, 0.9, 1],
  ] as const) {
    expect(differenceInWords(estimate, simulated, least)).toBe(little);
    expect(differenceCell(estimate, simulated, least)).toBe('-');
    expect(needsReason(estimate, simulated, least)).toBe(false);
  }
  expect(differenceInWords(0.6, -0.3, 0.3)).toBe('the rule of thumb is 300 % higher');
  expect(differenceCell(0.6, -0.3, 0.3)).toBe('+300');
});

test('an estimate of many times as much says how many, and needs a reason', () => {
  expect(differenceInWords(7643, 10, 1)).toBe('the rule of thumb is 764 times as much');
  expect(differenceCell(7643, 10, 1)).toBe('764 times');
  expect(needsReason(7643, 10, 1)).toBe(true);
  expect(differenceInWords(-30, -3, 1)).toBe('the rule of thumb is 10 times as much');
  expect(differenceInWords(9.9, 1, 1)).toBe('the rule of thumb is 890 % higher');
  expect(differenceInWords(1, 30, 1)).toBe('the rule of thumb is 97 % lower');
});

test('only effects that pull the way of the difference are reasons, the largest first', () => {
  expect(mainReasons(effects(30, -500, 70), 100)).toEqual(['70', '30']);
  expect(mainReasons(effects(300, -40, -60), -100)).toEqual(['-60', '-40']);
});

test('a second reason has to make up a fifth of the difference, and there is no third', () => {
  expect(mainReasons(effects(80, 20), 100)).toEqual(['80', '20']);
  expect(mainReasons(effects(81, 19), 100)).toEqual(['81']);
  expect(mainReasons(effects(15, 10), 100)).toEqual(['15']);
  expect(mainReasons(effects(30, 40, 30), 100)).toHaveLength(2);
});

test('one reason and two in words', () => {
  expect(becauseOf(['a'])).toBe('The main reason: a.');
  expect(becauseOf(['a', 'b'])).toBe('The main reasons: a; and b.');
});
