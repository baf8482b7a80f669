import { expect, test } from 'vitest';
import { planVerdict } from '../../../src/studies/answers/plan-sentence.ts';
import { planFigures } from '../../../src/studies/effects/plan-figures.ts';
import { somePlan } from '../some-plan.ts';

/** A plan by its money a year and its room-hours above the humidity band, 876 of them 5 %. */
const verdict = (money: number, damp: number) =>
  planVerdict(of('baseline', 1000, 1752), of('plan', money, damp));
const of = (name: string, energy: number, damp: number) =>
  planFigures(somePlan(name, { energy, den: { outside: { humidity_high: damp } } }));

test.each([
  [900, 1752, 'cheaper'],
  [1100, 1752, 'dearer'],
  [1000, 876, 'drier'],
  [1000, 3504, 'damper'],
  [900, 3504, 'cheaper, but damper'],
  [1100, 876, 'drier, but dearer'],
  [1000, 1752, 'changes little'],
])('%s a year and %s h of damp are told as: %s', (money, damp, words) => {
  expect(verdict(money, damp)).toBe(words);
});

test('half a percent of the money is the least that is told, and the first of several effects', () => {
  expect([verdict(995.1, 1752), verdict(995, 1752)]).toEqual(['changes little', 'cheaper']);
  expect([verdict(1004.9, 1752), verdict(1005, 1752)]).toEqual(['changes little', 'dearer']);
  expect(verdict(900, 876)).toBe('cheaper');
});
