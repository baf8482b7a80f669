import { plain } from './home-questions.ts';
import { peopleTrouble } from './people-answer.ts';
import type { Question } from './question.ts';
import { roomsOf } from './rooms-answer.ts';

/** Who lives there, when they are home, and where laundry dries. */
export const PEOPLE_QUESTIONS: readonly Question[] = [
  {
    id: 'people',
    kind: 'line',
    text: () => 'Who lives there (adults, frail adults, children, infants)?',
    initial: () => '2 adults',
    check: peopleTrouble,
  },
  {
    id: 'weekdays',
    kind: 'one',
    text: () => 'Who is at home by day on weekdays?',
    choices: () => [
      { value: 'nobody', label: 'nobody: all adults go out to work' },
      { value: 'one works at home' },
      { value: 'one is at home' },
      { value: 'all are at home' },
    ],
    initial: () => 'nobody',
  },
  {
    id: 'laundry',
    kind: 'one',
    text: () => 'Where does laundry dry in winter?',
    choices: (answers) => [
      { value: 'not indoors', label: 'not indoors, or in a dryer' },
      ...plain(roomsOf(answers).map(({ name }) => name)),
    ],
    initial: () => 'not indoors',
  },
];
