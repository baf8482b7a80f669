import { readQuantity } from '../../units/quantity.ts';
import { UNKNOWN } from './home-questions.ts';
import { type Answers, type Question, said } from './question.ts';

/** What heats the home, and how that is controlled. */
export const HEATING_QUESTIONS: readonly Question[] = [
  {
    id: 'heat',
    kind: 'one',
    text: () => 'What makes the heat?',
    choices: () => [
      { value: 'gas boiler' },
      { value: 'oil boiler' },
      { value: 'lpg boiler', label: 'boiler with bottled or tank gas' },
      { value: 'wood boiler', label: 'boiler with pellets or logs' },
      { value: 'heat pump' },
      { value: 'electric heaters' },
      { value: 'district heat' },
      { value: 'nothing' },
    ],
    initial: () => 'gas boiler',
  },
  {
    id: 'setpoint',
    kind: 'line',
    text: () => 'How warm is it kept, in °C?',
    unless: unheated,
    initial: () => '20',
    check: (line) => (setpointIn(line) === null ? 'a number of °C from 10 to 28' : null),
  },
  {
    id: 'hours',
    kind: 'one',
    text: () => 'When is it heated?',
    unless: unheated,
    choices: () => [
      { value: 'mornings and evenings', hint: '06:30-09:00 and 16:30-22:30' },
      { value: 'all day', hint: '06:30-22:30' },
      { value: 'day and night' },
    ],
    initial: () => 'mornings and evenings',
  },
  {
    id: 'thermostat',
    kind: 'one',
    text: () => 'What decides when it heats?',
    unless: unheated,
    choices: () => [
      { value: 'one for the home', label: 'one thermostat for the whole home' },
      { value: 'one in every room', label: 'a thermostat or smart valve in every room' },
      UNKNOWN,
    ],
    initial: (answers) =>
      said(answers, 'heat') === 'electric heaters' ? 'one in every room' : 'one for the home',
  },
];

/** Fuel that the heat is bought as; null where that is electricity, or nothing. */
export function fuelOf(answers: Answers): string | null {
  const heat = said(answers, 'heat');
  if (heat === 'district heat') return heat;
  return /^(\w+) boiler$/.exec(heat)?.[1] ?? null;
}

/** The setting that was answered, to a tenth of a degree. [°C] */
export const setpointOf = (answers: Answers): number => setpointIn(said(answers, 'setpoint'))!;

/** A line as a setting of 10 to 28 °C, which may be said in °F; null for none. */
function setpointIn(line: string): number | null {
  const read = readQuantity(line.trim(), '°C');
  if (!('value' in read) || !(read.value >= 10 && read.value <= 28)) return null;
  return Number(read.value.toFixed(1));
}

function unheated(answers: Answers): string | null {
  return said(answers, 'heat') === 'nothing' ? 'nothing heats the home' : null;
}
