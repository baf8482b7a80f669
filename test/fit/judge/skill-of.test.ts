import { expect, test } from 'vitest';
import { skillOf } from '../../../src/fit/judge/skill-of.ts';

/** Skill with what repeats every day, and without. */
const judged = (...skills: readonly (readonly [number, number])[]) =>
  skillOf(skills.map(([skill, alone]) => ({ judgement: { skill }, alone: { skill: alone } })));

test('a fit is skilled where the scenario alone beats guessing in more than half of the cases', () => {
  expect(judged([0.5, 0.2], [0.5, 0.1], [0.5, -1])).toEqual({ skilled: true, reliable: true });
  expect(judged([0.5, 0.2], [0.5, -1])).toEqual({ skilled: false, reliable: false });
  expect(judged([0.5, 0])).toEqual({ skilled: false, reliable: false });
  expect(judged()).toEqual({ skilled: false, reliable: false });
});

test('it is not reliable where nothing that is foreseen does', () => {
  expect(judged([0, 0.2], [-0.1, 0.1])).toEqual({ skilled: true, reliable: false });
  expect(judged([0, 0.2], [0.1, 0.1])).toEqual({ skilled: true, reliable: true });
});
