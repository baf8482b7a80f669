import { type Answers, chose, said } from './question.ts';
import { type AnsweredRoom, roomFor, roomsOf } from './rooms-answer.ts';

/** A plan that fits what was answered: what it asks, what it changes, what has to be bought. */
export interface PlanOffer {
  readonly name: string;
  readonly description: string;
  readonly change: object;
  readonly purchases?: readonly { what: string; price: number; lasts: string }[];
}

/** Plans that fit what bothers most, beside the home as it is lived in; six at most. */
export function planOffers(answers: Answers): PlanOffer[] {
  const seen = new Set<string>();
  const wanted = BOTHERS.filter((one) => chose(answers, 'bothers', one));
  const lists = (wanted.length > 0 ? wanted : ['cost' as const]).map((one) =>
    OFFERS[one](answers).filter((offer) => offer !== null),
  );
  const offers: PlanOffer[] = [];
  for (let k = 0; k < Math.max(...lists.map((list) => list.length)); k++) {
    for (const list of lists) {
      const offer = list[k];
      if (offer === undefined || seen.has(offer.name) || offers.length >= MOST) continue;
      seen.add(offer.name);
      offers.push(offer);
    }
  }
  return offers;
}

type Offer = (answers: Answers) => PlanOffer | null;

const BOTHERS = ['cost', 'damp', 'cold', 'air', 'alerts'] as const;
const MOST = 6;

const heated = (answers: Answers): boolean => said(answers, 'heat') !== 'nothing';
const setpointOf = (answers: Answers): number => Number(said(answers, 'setpoint'));
const worst = (answers: Answers): AnsweredRoom =>
  roomsOf(answers).find(({ name }) => name === said(answers, 'worst room')) ??
  roomFor(roomsOf(answers), 'bedroom', 'living');

/** A colder or warmer setting. */
const otherSetpoint =
  (name: string, step: number): Offer =>
  (answers) => {
    if (!heated(answers)) return null;
    const setpoint = setpointOf(answers) + step;
    const description = `${setpoint} °C instead of ${setpointOf(answers)} °C`;
    return { name, description, change: { heating: { setpoint } } };
  };

const oneColder = otherSetpoint('one-degree-less', -1);
const oneWarmer = otherSetpoint('one-degree-more', 1);

/** Heat all the time against heat when it is needed, whichever of the two is not so yet. */
const otherHours: Offer = (answers) => {
  if (!heated(answers)) return null;
  if (said(answers, 'hours') === 'day and night') {
    const hours = ['06:30-09:00', '16:30-22:30'];
    const description = 'heated mornings and evenings only, 16 °C in between';
    return { name: 'when-needed', description, change: { heating: { hours, setback: 16 } } };
  }
  const description = 'the same setting, day and night';
  return { name: 'always-on', description, change: { heating: { hours: 'always' } } };
};

/** Rooms heated only while somebody is in them. */
const whenPresent: Offer = (answers) => {
  if (!heated(answers)) return null;
  const rooms = roomsOf(answers).length;
  const single = said(answers, 'thermostat') !== 'one in every room';
  const valves = { what: 'smart valves', price: 45 * rooms, lasts: '8 years' };
  const sensors = { what: 'presence sensors', price: 25 * rooms, lasts: '8 years' };
  return {
    name: 'when-present',
    description: 'rooms are heated only while a sensor sees somebody in them, 16 °C otherwise',
    change: {
      heating: {
        ...(single && { thermostat: null }),
        ...{ hours: 'always', setback: 16, gate: 'when present', lead: 'learned' },
      },
    },
    purchases: [
      ...(single ? [valves] : []),
      ...(chose(answers, 'sensors', 'presence') ? [] : [sensors]),
    ],
  };
};

/** Windows wide open for ten minutes, twice a day. */
const airing: Offer = () => ({
  name: 'airing',
  description: 'besides, all windows wide open for ten minutes every morning and evening',
  change: {
    household: {
      airing: {
        add: [{ rooms: 'all', at: ['07:30', '19:00'], lasts: '10 min', 'open share': '100 %' }],
      },
    },
  },
});

const dehumidifier: Offer = (answers) => {
  if (chose(answers, 'devices', 'dehumidifier')) return null;
  const room = worst(answers).name;
  return {
    name: 'dehumidifier',
    description: `a dehumidifier in room ${room} keeps it near 55 %`,
    change: {
      devices: {
        dehumidifier: {
          ...{ kind: 'dehumidifier', room, label: '12 L/day', 'tested at': '30 °C/80 %' },
          ...{ power: '200 W', tank: '2 L', target: '55 %' },
        },
      },
    },
    purchases: [{ what: 'dehumidifier', price: 180, lasts: '8 years' }],
  };
};

const bathroomFan: Offer = (answers) => {
  const bathroom = roomsOf(answers).find(({ use }) => use === 'bathroom');
  if (bathroom === undefined || chose(answers, 'devices', 'bathroom fan')) return null;
  return {
    name: 'bathroom-fan',
    description: 'an extract fan in the bathroom runs with showers, and half an hour on',
    change: { devices: { 'bathroom fan': showerFan(bathroom.name) } },
    purchases: [{ what: 'fan', price: 180, lasts: '12 years' }],
  };
};

const laundryOut: Offer = (answers) =>
  ['', 'not indoors'].includes(said(answers, 'laundry'))
    ? null
    : {
        name: 'laundry-elsewhere',
        description: 'no laundry dries indoors',
        change: { household: { activities: { drop: ['laundry'] } } },
      };

const draughtProofing: Offer = (answers) =>
  ['very tight', 'tight'].includes(said(answers, 'draughts'))
    ? null
    : {
        name: 'draught-proofing',
        description: 'draught-proofed doors, windows and boards',
        change: { home: { build: { draughts: 'tight' } } },
        purchases: [{ what: 'draught-proofing', price: 400, lasts: '15 years' }],
      };

/** A plug-in heater where it is coldest. */
const heater: Offer = (answers) => {
  const room = worst(answers).name;
  const target = Math.max(19, heated(answers) ? setpointOf(answers) : 19);
  return {
    name: 'plug-in-heater',
    description: `a plug-in heater keeps room ${room} at ${target} °C while somebody is in it`,
    change: {
      devices: {
        'plug-in heater': { kind: 'heater', room, power: '1500 W', target, gate: 'when present' },
      },
    },
    purchases: [{ what: 'heater', price: 60, lasts: '10 years' }],
  };
};

const purifier: Offer = (answers) => {
  if (chose(answers, 'devices', 'purifier')) return null;
  const room = worst(answers).name;
  return {
    name: 'purifier',
    description: `an air purifier in room ${room}`,
    change: { devices: { purifier: { kind: 'purifier', room } } },
    purchases: [{ what: 'purifier', price: 150, lasts: '8 years' }],
  };
};

/** Word when air is stale or damp and windows would help, at most four times a day. */
const advice: Offer = (answers) => {
  const told = { open: 'here', lasts: '10 min', probability: '60 %', delay: '5 min' };
  const quiet = { 'quiet hours': '22:00-07:00', 'most a day': 4 };
  const closed = { windows: 'closed' };
  const bought = chose(answers, 'sensors', 'air') ? [] : ['CO2 sensors'];
  return {
    name: 'advice',
    description: 'word to open windows when the air is stale, or damp and drier outside',
    change: {
      rules: [
        {
          name: 'stale air',
          rooms: 'where somebody is',
          when: [{ reading: 'co2', over: 1200, clear: 900 }, closed],
          ...{ 'on delay': '10 min', ...quiet, response: [{ tell: 'open a window' }, told] },
        },
        {
          name: 'damp air',
          rooms: 'where somebody is',
          when: [
            { reading: 'humidity', over: 65, clear: 60 },
            { reading: 'humidity above outdoors', over: 2, clear: 1 },
            closed,
          ],
          ...{ 'on delay': '15 min', ...quiet, response: [{ tell: 'air the room' }, told] },
        },
      ],
    },
    purchases: bought.map((what) => ({
      what,
      price: 50 * roomsOf(answers).length,
      lasts: '8 years',
    })),
  };
};

/** The same advice, whoever hears it: what an alert that nobody can act on comes to. */
const adviceAlways: Offer = (answers) => {
  const { change, purchases = [] } = advice(answers)!;
  const rules = (change as { rules: readonly Record<string, unknown>[] }).rules;
  const always = rules.map(({ 'quiet hours': _, 'most a day': __, ...rule }) => ({
    ...{ ...rule, rooms: 'all' },
  }));
  return {
    name: 'advice-always',
    description: 'the same advice from every room, at all hours',
    ...{ change: { rules: always }, purchases },
  };
};

/** An extract fan that runs with showers. */
export const showerFan = (room: string): object => ({
  ...{ kind: 'extract fan', room, flow: '54 m3/h', power: '8 W' },
  ...{ runs: 'with activities', with: ['shower'], 'run on': '30 min' },
});

const OFFERS: Readonly<
  Record<(typeof BOTHERS)[number], (answers: Answers) => (PlanOffer | null)[]>
> = {
  cost: (answers) =>
    [oneColder, otherHours, whenPresent, draughtProofing].map((offer) => offer(answers)),
  damp: (answers) => [airing, dehumidifier, laundryOut, bathroomFan].map((offer) => offer(answers)),
  cold: (answers) => [oneWarmer, draughtProofing, heater].map((offer) => offer(answers)),
  air: (answers) => [airing, purifier, bathroomFan].map((offer) => offer(answers)),
  alerts: (answers) => [advice, adviceAlways].map((offer) => offer(answers)),
};
