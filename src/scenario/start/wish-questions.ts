import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';
import { plain } from './home-questions.ts';
import { chose, type Question } from './question.ts';
import { roomFor, roomsOf } from './rooms-answer.ts';

/** Which devices and sensors there are, and what is wanted. */
export const WISH_QUESTIONS: readonly Question[] = [
  {
    id: 'devices',
    kind: 'several',
    text: () => 'Which of these does it have?',
    choices: () => [
      { value: 'dehumidifier' },
      { value: 'humidifier' },
      { value: 'bathroom fan', label: 'an extract fan in the bathroom' },
      { value: 'kitchen fan', label: 'a cooker hood or fan that leads outdoors' },
      { value: 'ventilation', label: 'ventilation with heat recovery' },
      { value: 'purifier', label: 'an air purifier' },
      { value: 'stove', label: 'a wood stove' },
      { value: 'air conditioner', label: 'an air conditioner, its hot part outdoors' },
    ],
    initial: () => [],
  },
  {
    id: 'sensors',
    kind: 'several',
    text: () => 'Which sensors are there, in most rooms?',
    choices: () => [
      { value: 'presence', label: 'presence (who is in a room)' },
      { value: 'humidity', label: 'temperature and humidity' },
      { value: 'air', label: `${CARBON_DIOXIDE.symbol} or air quality` },
    ],
    initial: () => ['humidity'],
  },
  {
    id: 'bothers',
    kind: 'several',
    text: () => 'What bothers you most?',
    choices: () => [
      { value: 'cost', label: 'what heating costs' },
      { value: 'damp', label: 'damp, wet windows, mould' },
      { value: 'dry', label: 'dry air in winter' },
      { value: 'cold', label: 'cold rooms' },
      { value: 'heat', label: 'rooms that are too hot in summer' },
      { value: 'air', label: 'stale or dirty air' },
      { value: 'alerts', label: 'what to be told, and when' },
    ],
    initial: () => ['cost', 'damp'],
  },
  {
    id: 'worst room',
    kind: 'one',
    text: () => 'In which room is that worst?',
    unless: (answers) =>
      ['damp', 'dry', 'cold', 'heat', 'air'].some((one) => chose(answers, 'bothers', one))
        ? null
        : 'neither damp, dry, cold, heat nor stale air bothers you',
    choices: (answers) => plain(roomsOf(answers).map(({ name }) => name)),
    initial: (answers) => roomFor(roomsOf(answers), 'bedroom', 'living').name,
  },
];
