import { AGES, DRAUGHTS, GLAZINGS, SHAPES } from '../choices.ts';
import { zoneClock } from '../zone-clock.ts';
import {
  farness,
  nearestInClimate,
  placeOf,
  placeTrouble,
  usualPlace,
  zoneOf,
} from './place-answer.ts';
import { type Answers, type Choice, type Question, said } from './question.ts';
import { roomsTrouble, usualRooms } from './rooms-answer.ts';
import type { StartContext } from './start-context.ts';

/** Where the home stands, what it is, and its rooms. */
export const HOME_QUESTIONS: readonly Question[] = [
  {
    id: 'title',
    kind: 'line',
    text: () => 'What shall the home be called?',
    initial: () => 'My home',
    check: (line) => (line !== '' && line.length <= 100 ? null : 'a name of 1 to 100 letters'),
  },
  {
    id: 'place',
    kind: 'line',
    text: () => 'Where is it: latitude,longitude (such as 54.2,-1.9) or a large town?',
    initial: (_, context) => usualPlace(context),
    check: placeTrouble,
  },
  {
    id: 'timezone',
    kind: 'line',
    text: () => 'Which time zone has it?',
    initial: (answers) => zoneOf(answers),
    check: (line) =>
      zoneClock(line) !== null ? null : 'a time zone by its IANA name, such as Europe/London',
  },
  {
    id: 'weather',
    kind: 'one',
    text: () => 'Which weather?',
    choices: weatherChoices,
    initial: (answers, context) => weatherChoices(answers, context)[1]?.value ?? FETCH,
  },
  {
    id: 'kind',
    kind: 'one',
    text: () => 'What kind of home is it?',
    choices: () =>
      SHAPES.flatMap((shape) => [{ value: shape }, ...(shape === 'flat' ? FLATS : [])]),
    initial: () => 'flat',
  },
  {
    id: 'built',
    kind: 'one',
    text: () => 'When was it built?',
    choices: () => plain(AGES),
    initial: () => '1967-1975',
  },
  {
    id: 'size',
    kind: 'one',
    text: () => 'How many rooms to live and sleep in, kitchen and bathroom not counted?',
    choices: () => plain(['1', '2', '3', '4', '5', '6']),
    initial: (answers) => (isFlat(answers) ? '2' : '4'),
  },
  {
    id: 'rooms',
    kind: 'line',
    text: () => 'Which rooms, with their square metres (a / before those upstairs)?',
    initial: (answers) => usualRooms(isFlat(answers), said(answers, 'size')),
    check: roomsTrouble,
  },
  {
    id: 'glazing',
    kind: 'one',
    text: () => 'What glass have the windows?',
    choices: () => [...plain(GLAZINGS), UNKNOWN],
    initial: () => UNKNOWN.value,
  },
  {
    id: 'draughts',
    kind: 'one',
    text: () => 'How draughty is it?',
    choices: () => [...plain(DRAUGHTS), UNKNOWN],
    initial: () => UNKNOWN.value,
  },
];

/** Flats that have more than neighbours above and below. */
const FLATS: readonly Choice[] = [
  { value: 'flat under the roof' },
  { value: 'flat on the ground floor' },
];

/** Whether the home is a flat of any kind. */
export const isFlat = (answers: Answers): boolean => said(answers, 'kind').startsWith('flat');

/** Answer to "Which weather?" that asks the network for a typical year. */
export const FETCH = 'fetch';

/** Fetched for the place, or a file at hand, the nearest in climate first. */
function weatherChoices(answers: Answers, { weather }: StartContext): Choice[] {
  const place = placeOf(answers);
  const files = nearestInClimate(place, weather).map((file, k) => ({
    value: file.name,
    label: `${file.title} (at hand)`,
    hint: `${farness(place, file)}${k === 0 ? '; the nearest in climate of those at hand' : ''}`,
  }));
  const hint = 'uses the network: PVGIS will be told the place, rounded to 0.01°';
  return [{ value: FETCH, label: 'a typical year of the place', hint }, ...files];
}

/** What nobody need know. */
export const UNKNOWN: Choice = { value: 'unknown', label: 'I do not know' };

/** Words that say what they mean. */
export const plain = (values: readonly string[]): Choice[] => values.map((value) => ({ value }));
