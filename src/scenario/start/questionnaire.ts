import { HEATING_QUESTIONS } from './heating-questions.ts';
import { HOME_QUESTIONS } from './home-questions.ts';
import { MONEY_QUESTIONS } from './money-questions.ts';
import { PEOPLE_QUESTIONS } from './people-questions.ts';
import type { Question } from './question.ts';
import { WISH_QUESTIONS } from './wish-questions.ts';

/** Questions about one thing. */
export interface QuestionGroup {
  readonly title: string;
  readonly questions: readonly Question[];
}

/** The questions that make a first scenario, by what they are about. */
export const QUESTION_GROUPS: readonly QuestionGroup[] = [
  { title: 'The home', questions: HOME_QUESTIONS },
  { title: 'Heating', questions: HEATING_QUESTIONS },
  { title: 'People', questions: PEOPLE_QUESTIONS },
  { title: 'Money', questions: MONEY_QUESTIONS },
  { title: 'Devices and wishes', questions: WISH_QUESTIONS },
];

/** All of them, 25 at most. */
export const QUESTIONNAIRE: readonly Question[] = QUESTION_GROUPS.flatMap(
  ({ questions }) => questions,
);
