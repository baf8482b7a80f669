import { mapping, textOf } from '../checks/tolerant-readers.ts';
import { hasOpenFluedStove } from '../edits/scenario-facts.ts';
import { useOfName } from '../presets/rooms.ts';
import { setpointOf } from './heating-questions.ts';
import { type Answers, chose, said } from './question.ts';
import { type AnsweredRoom, roomFor, roomsOf } from './rooms-answer.ts';

/** What decides which plans fit a home. */
export interface PlanFacts {
  readonly rooms: readonly Pick<AnsweredRoom, 'name' | 'use'>[];
  /** Where what bothers is worst. */
  readonly worst: string;
  /** Null where nothing heats, or where it is not one setting. [°C] */
  readonly setpoint: number | null;
  /** Whether something heats at hours that a plan can change. */
  readonly heated: boolean;
  readonly dayAndNight: boolean;
  /** Whether one thermostat calls for the whole home. */
  readonly oneThermostat: boolean;
  readonly has: (device: 'dehumidifier' | 'humidifier' | 'extract fan' | 'purifier') => boolean;
  /** Whether a stove burns with air of the rooms, which an extract fan can make spill its smoke. */
  readonly openFlue: boolean;
  readonly sensors: { readonly presence: boolean; readonly air: boolean };
  /** Name of the laundry that dries indoors; null for none. */
  readonly laundry: string | null;
  readonly tight: boolean;
  /** Whether something cools, and whether something shades windows, already. */
  readonly cooled: boolean;
  readonly shaded: boolean;
  /** Whether rules stand there already, to which others are added. */
  readonly rules: boolean;
  /** What prices are in; empty where nobody said. */
  readonly currency: string;
}

/** Names of the rooms to live, cook and sleep in, which have windows; all where there are none such. */
export function livedIn({ rooms }: Pick<PlanFacts, 'rooms'>): string[] {
  const names = (some: PlanFacts['rooms']) => some.map(({ name }) => name);
  const found = rooms.filter(({ use }) => LIVED_IN.includes(use));
  return names(found.length > 0 ? found : rooms);
}

/** What complete answers say. */
export function factsOfAnswers(answers: Answers): PlanFacts {
  const rooms = roomsOf(answers);
  const heated = said(answers, 'heat') !== 'nothing';
  const named = {
    dehumidifier: 'dehumidifier',
    humidifier: 'humidifier',
    'extract fan': 'bathroom fan',
    purifier: 'purifier',
  };
  return {
    rooms,
    worst: said(answers, 'worst room') || roomFor(rooms, 'bedroom', 'living').name,
    setpoint: heated ? setpointOf(answers) : null,
    heated,
    dayAndNight: said(answers, 'hours') === 'day and night',
    oneThermostat: said(answers, 'thermostat') === 'one for the home',
    has: (device) => chose(answers, 'devices', named[device]),
    openFlue: chose(answers, 'devices', 'stove'),
    sensors: {
      presence: chose(answers, 'sensors', 'presence'),
      air: chose(answers, 'sensors', 'air'),
    },
    laundry: ['', 'not indoors'].includes(said(answers, 'laundry')) ? null : 'laundry',
    tight: ['very tight', 'tight'].includes(said(answers, 'draughts')),
    cooled: chose(answers, 'devices', 'air conditioner'),
    shaded: false,
    rules: false,
    currency: said(answers, 'currency'),
  };
}

/** What a scenario says. @param raw  as plain values */
export function factsOfScenario(raw: unknown): PlanFacts {
  const top = mapping(raw);
  const home = mapping(top['home']);
  const heating = mapping(top['heating']);
  const rooms = Object.entries(mapping(home['rooms'])).map(([name, room]) => ({
    name,
    use: (mapping(room)['use'] ?? useOfName(name)) as AnsweredRoom['use'],
  }));
  const devices = Object.values(mapping(top['devices'])).map((one) => mapping(one));
  const activities = mapping(top['household'])['activities'];
  const laundry = (Array.isArray(activities) ? activities : [])
    .map((one) => mapping(one))
    .find(({ what }) => what === 'laundry dried indoors');
  const setpoint = heating['setpoint'];
  return {
    rooms,
    worst: (rooms.find(({ use }) => use === 'bedroom') ?? rooms[0]!).name,
    setpoint: typeof setpoint === 'number' ? setpoint : null,
    heated: heating['source'] !== 'none' && !Array.isArray(setpoint),
    dayAndNight: heating['hours'] === undefined || heating['hours'] === 'always',
    oneThermostat: heating['thermostat'] !== undefined,
    has: (device) => devices.some(({ kind }) => kind === device),
    openFlue: hasOpenFluedStove(raw),
    sensors: { presence: mapping(top['sensors'])['presence'] !== undefined, air: false },
    laundry: textOf(laundry?.['name']) || null,
    tight: ['very tight', 'tight'].includes(textOf(mapping(home['build'])['draughts'])),
    cooled: top['cooling'] !== undefined && mapping(top['cooling'])['source'] !== 'none',
    shaded: top['blinds'] !== undefined,
    rules: Array.isArray(top['rules']) && top['rules'].length > 0,
    currency: textOf(mapping(top['money'])['currency']),
  };
}

const LIVED_IN: readonly string[] = ['living', 'kitchen', 'dining', 'bedroom', 'study'];
