import { USUAL } from '../choices.ts';
import { USUAL_WORDS, USUAL_WORDS_COOLED } from '../presets/airing.ts';
import { firstUsedAs } from '../presets/rooms.ts';
import { fuelOf, setpointOf } from './heating-questions.ts';
import { peopleOf } from './people-answer.ts';
import { placeOf } from './place-answer.ts';
import { showerFan } from './plan-offers.ts';
import { priceIn } from './price-answer.ts';
import { type Answers, chose, said } from './question.ts';
import { roomFor, roomsOf } from './rooms-answer.ts';
import { indented, inline, keyLine } from './yaml-text.ts';

/** Lines of `money`. */
export function moneyLines(answers: Answers): string[] {
  const fuel = fuelOf(answers);
  return [
    'money: # a kWh',
    ...indented([
      keyLine('currency', said(answers, 'currency')),
      ...(fuel === null ? [] : [keyLine(fuel, Number(said(answers, 'fuel price')))]),
      keyLine('electricity', electricity(answers)),
    ]),
  ];
}

function electricity(answers: Answers): unknown {
  const price = priceIn(said(answers, 'electricity'))!;
  if ('price' in price) return price.price;
  if ('file' in price) return { prices: price.file };
  return { day: price.day, night: price.night, 'night hours': price.hours };
}

/** Lines of `heating`. */
export function heatingLines(answers: Answers): string[] {
  const heat = said(answers, 'heat');
  if (heat === 'nothing') return ['heating: { source: none }'];
  const hall = roomFor(roomsOf(answers), 'hall', 'living').name;
  const setpoint = setpointOf(answers);
  const thermostat = said(answers, 'thermostat');
  return [
    'heating:',
    ...indented([
      ...sourceLines(heat),
      keyLine('setpoint', setpoint),
      keyLine('hours', HOURS[said(answers, 'hours')]),
      keyLine('setback', Math.min(16, setpoint), 'at other times: assumed'),
      ...(thermostat === 'one for the home'
        ? [keyLine('thermostat', hall, 'the room with the only one: assumed')]
        : []),
    ]),
  ];
}

function sourceLines(heat: string): string[] {
  if (heat.endsWith(' boiler')) {
    return [keyLine('source', 'boiler'), keyLine('fuel', heat.replace(' boiler', ''))];
  }
  return [keyLine('source', heat === 'electric heaters' ? 'direct electric' : heat)];
}

/** Lines of `cooling`; none where nothing cools. */
export function coolingLines(answers: Answers): string[] {
  if (!chose(answers, 'devices', 'air conditioner')) return [];
  const cooling = inline({ source: 'split', setpoint: 25 });
  return [`cooling: ${cooling} # rooms to live and sleep in: assumed`, ''];
}

/** Lines of `household`. */
export function householdLines(answers: Answers): string[] {
  const rooms = roomsOf(answers);
  const has = (use: string) => rooms.some((room) => room.use === use);
  const people = peopleOf(answers);
  const showers = people
    .filter(({ who }) => who !== 'infant')
    .reduce((sum, { number }) => sum + number, 0);
  const times = SHOWERS.slice(0, Math.max(1, showers));
  const laundry = said(answers, 'laundry');
  return [
    'household:',
    ...indented([
      'people:',
      ...indented(personLines(answers)),
      'activities: # usual amounts; each takes at, lasts, water, energy',
      ...indented([
        ...(has('bathroom') ? [`- ${inline({ what: 'shower', at: times })}`] : []),
        ...ALWAYS_DONE.map((what) => `- ${inline({ what })}`),
        ...(laundry === 'not indoors'
          ? []
          : [
              `- ${inline({
                ...{ what: 'laundry dried indoors', name: 'laundry', room: laundry },
                ...{ days: ['Tue', 'Sat'], months: wintry(answers) },
              })} # two loads a week: assumed`,
            ]),
      ]),
      `airing: [${USUAL}] # assumed: ${airingWords(answers)}`,
    ]),
  ];
}

const airingWords = (answers: Answers): string =>
  chose(answers, 'devices', 'air conditioner') ? USUAL_WORDS_COOLED : USUAL_WORDS;

function personLines(answers: Answers): string[] {
  const atHome = AT_HOME[said(answers, 'weekdays')] ?? [];
  let adult = 0;
  return peopleOf(answers).flatMap(({ who, number }) =>
    Array.from({ length: number }, () => {
      if (who !== 'adult') return `- ${inline({ who })}`;
      const first = atHome[Math.min(adult, atHome.length - 1)];
      adult++;
      return `- ${inline({ who, pattern: first ?? 'works away on weekdays' })}`;
    }),
  );
}

/** Lines of `devices` and `sensors`; none where there are none. */
export function deviceLines(answers: Answers): string[] {
  const devices = Object.entries(DEVICES).filter(([name]) => chose(answers, 'devices', name));
  const present = chose(answers, 'sensors', 'presence');
  const lines = devices.flatMap(([name, of]) => {
    const device = of(answers);
    return device === null ? [] : [keyLine(name, device)];
  });
  return [
    ...(lines.length === 0
      ? []
      : [
          'devices: # usual ones of their kind; put in what the label says',
          ...indented(lines),
          '',
        ]),
    present
      ? 'sensors: # temperature, humidity and air too, with usual errors'
      : '# Without sensors of their own rooms count as measured, for what rules and devices ask.',
    ...(present ? ['  presence: { hold on: 10 min }', ''] : ['']),
  ];
}

const DEVICES: Readonly<Record<string, (answers: Answers) => object | null>> = {
  dehumidifier: (answers) => ({
    ...{ kind: 'dehumidifier', room: said(answers, 'worst room') || bedroom(answers) },
  }),
  humidifier: (answers) => ({
    ...{ kind: 'humidifier', room: said(answers, 'worst room') || bedroom(answers) },
  }),
  'bathroom fan': (answers) => {
    const rooms = roomsOf(answers);
    const bathroom = rooms[firstUsedAs(rooms, 'bathroom')];
    return bathroom === undefined ? null : showerFan(bathroom.name);
  },
  'kitchen fan': (answers) => ({
    ...{ kind: 'extract fan', room: roomFor(roomsOf(answers), 'kitchen', 'living').name },
    ...{ runs: 'with activities', with: ['cooking'], 'run on': '10 min' },
  }),
  ventilation: (answers) => {
    const rooms = roomsOf(answers);
    const wet = rooms.filter(({ use }) => ['bathroom', 'kitchen', 'utility'].includes(use));
    const dry = rooms.filter(({ use }) => ['bedroom', 'living', 'study', 'dining'].includes(use));
    if (wet.length === 0 || dry.length === 0) return null;
    const shared = (some: typeof rooms) =>
      Object.fromEntries(
        some.map(({ name }) => [name, (FLOW * wet.length * dry.length) / some.length]),
      );
    return { kind: 'balanced ventilation', supplies: shared(dry), extracts: shared(wet) };
  },
  purifier: (answers) => ({
    ...{ kind: 'purifier', room: said(answers, 'worst room') || bedroom(answers) },
  }),
  stove: (answers) => ({ kind: 'stove', room: roomFor(roomsOf(answers), 'living').name }),
};

const bedroom = (answers: Answers): string => roomFor(roomsOf(answers), 'bedroom', 'living').name;
const south = (answers: Answers): boolean => placeOf(answers).latitude < 0;
const wintry = (answers: Answers): string => (south(answers) ? 'Apr-Oct' : 'Oct-Apr');

const HOURS: Readonly<Record<string, string | readonly string[]>> = {
  'mornings and evenings': ['06:30-09:00', '16:30-22:30'],
  'all day': '06:30-22:30',
  'day and night': 'always',
};
const SHOWERS = ['07:00', '07:15', '07:30', '21:00', '21:15', '21:30'];
const ALWAYS_DONE = [
  'cooking',
  'light meal',
  'dishes',
  'fridge',
  'lights and appliances',
  'standby',
];
/** Patterns of the first adults; the last goes on for the others. */
const AT_HOME: Readonly<Record<string, readonly string[]>> = {
  nobody: ['works away on weekdays'],
  'one works at home': ['works at home', 'works away on weekdays'],
  'one is at home': ['at home', 'works away on weekdays'],
  'all are at home': ['at home'],
};
/** A supply and an extract each get this much a room of the other kind. [m3/h] */
const FLOW = 15;
