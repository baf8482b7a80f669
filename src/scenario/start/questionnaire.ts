import { HEATING_QUESTIONS } from './heating-questions.ts';
import { HOME_QUESTIONS } from './home-questions.ts';
import { MONEY_QUESTIONS } from './money-questions.ts';
import { PEOPLE_QUESTIONS } from './people-questions.ts';
import type { Question } from './question.ts';
import { WISH_QUESTIONS } from './wish-questions.ts';

/** The questions that make a first scenario, 25 at most. */
export const QUESTIONNAIRE: readonly Question[] = [
  ...HOME_QUESTIONS,
  ...HEATING_QUESTIONS,
  ...PEOPLE_QUESTIONS,
  ...MONEY_QUESTIONS,
  ...WISH_QUESTIONS,
];
