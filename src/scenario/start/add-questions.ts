import { mapping } from '../checks/tolerant-readers.ts';
import { USES } from '../choices.ts';
import { isLegalEdit } from '../edits/edit.ts';
import { useOfName } from '../presets/rooms.ts';
import { plain } from './home-questions.ts';
import type { Insertion } from './insert-yaml.ts';
import { factsOfScenario, livedIn } from './plan-facts.ts';
import { type PlanOffer, planOffers, showerFan } from './plan-offers.ts';
import { type Answers, type Question, said } from './question.ts';
import { roomsIn } from './rooms-answer.ts';
import { ruleOffers } from './rule-offers.ts';
import { planLines } from './write-scenario.ts';

/** What can be added to a scenario that is there. */
export type Addition = 'room' | 'device' | 'rule' | 'plan';

/** The questions for one thing more, and what the answers put where. */
export interface Adding {
  readonly questions: readonly Question[];
  readonly insertions: (answers: Answers) => readonly Insertion[];
}

/** @param raw  the scenario as plain values */
export function adding(what: Addition, raw: unknown): Adding {
  return ADDING[what](raw);
}

const ADDING: Readonly<Record<Addition, (raw: unknown) => Adding>> = {
  room: (raw) => {
    const rooms = namesIn(mapping(raw)['home'], 'rooms');
    const doorways = mapping(raw, 'home')['doorways'];
    return {
      questions: [
        {
          id: 'room',
          kind: 'line',
          text: () => 'Which room, with its square metres (such as study 9)?',
          initial: () => `${freeName('study', rooms)} 9`,
          check: (line) => {
            const { rooms: read, trouble } = roomsIn(line);
            if (trouble !== null) return trouble;
            if (read.length > 1) return 'one room';
            return rooms.includes(read[0]!.name) ? `another room than ${read[0]!.name}` : null;
          },
        },
        {
          id: 'use',
          kind: 'one',
          text: () => 'What is it for?',
          choices: () => plain(USES),
          initial: (answers) => useOfName(said(answers, 'room')),
        },
        {
          id: 'opens to',
          kind: 'one',
          text: () => 'Which room does its door open to?',
          unless: () => (Array.isArray(doorways) ? null : 'every room opens to the hall'),
          choices: () => plain(rooms),
          initial: () =>
            factsOfScenario(raw).rooms.find(({ use }) => use === 'hall')?.name ?? rooms[0]!,
        },
      ],
      insertions: (answers) => {
        const { name, area } = roomsIn(said(answers, 'room')).rooms[0]!;
        const value = { use: said(answers, 'use'), 'floor area': area };
        const room = { path: ['home', 'rooms'], name, value };
        const to = said(answers, 'opens to');
        const doorway = { path: ['home', 'doorways'], name: null, value: { between: [name, to] } };
        return to === '' ? [room] : [room, doorway];
      },
    };
  },
  device: (raw) => {
    const rooms = namesIn(mapping(raw)['home'], 'rooms');
    const taken = namesIn(raw, 'devices');
    return {
      questions: [
        {
          id: 'device',
          kind: 'one',
          text: () => 'What kind of device?',
          choices: () =>
            plain(['dehumidifier', 'humidifier', 'extract fan', 'purifier', 'heater', 'stove']),
          initial: () => 'dehumidifier',
        },
        {
          id: 'in',
          kind: 'one',
          text: () => 'In which room does it stand?',
          choices: () => plain(rooms),
          initial: () => factsOfScenario(raw).worst,
        },
        nameQuestion(taken, (answers) => `${said(answers, 'in')} ${said(answers, 'device')}`),
      ],
      insertions: (answers) => {
        const [kind, room] = [said(answers, 'device'), said(answers, 'in')];
        const bath =
          factsOfScenario(raw).rooms.find(({ name }) => name === room)?.use === 'bathroom';
        const fan = bath ? showerFan(room) : { kind, room, runs: 'by humidity' };
        const value = kind === 'extract fan' ? fan : { kind, room };
        return [{ path: ['devices'], name: said(answers, 'name'), value }];
      },
    };
  },
  rule: (raw) => {
    const rooms = namesIn(mapping(raw)['home'], 'rooms');
    const list = mapping(raw)['rules'];
    const usual = livedIn(factsOfScenario(raw));
    const offers = ruleOffers(usual);
    const taken = (Array.isArray(list) ? list : []).map((rule) => String(mapping(rule)['name']));
    return {
      questions: [
        {
          id: 'rule',
          kind: 'one',
          text: () => 'What shall it be about?',
          choices: () => plain(offers.map(({ name }) => name)),
          initial: () => offers[0]!.name,
        },
        {
          id: 'in',
          kind: 'one',
          text: () => 'In which rooms?',
          choices: () => [{ value: LIVED_IN, label: usual.join(', ') }, ...plain(rooms)],
          initial: () => LIVED_IN,
        },
        nameQuestion(taken, (answers) => said(answers, 'rule')),
      ],
      insertions: (answers) => {
        const offer = offers.find(({ name }) => name === said(answers, 'rule'))!;
        const where = said(answers, 'in');
        const value = {
          ...{ ...offer, name: said(answers, 'name') },
          rooms: where === LIVED_IN ? usual : [where],
        };
        return [{ path: ['rules'], name: null, value }];
      },
    };
  },
  plan: (raw) => {
    const taken = namesIn(raw, 'plans');
    const all = planOffers(factsOfScenario(raw), undefined, Number.POSITIVE_INFINITY);
    const offers = all.filter(({ change }) => isLegalEdit(raw, mapping(change)));
    return {
      questions: [
        {
          id: 'plan',
          kind: 'one',
          text: () => 'What shall it try?',
          choices: () =>
            offers.map(({ name, description }) => ({ value: name, label: description })),
          initial: () => (offers.find(({ name }) => !taken.includes(name)) ?? offers[0]!).name,
        },
        nameQuestion(taken, (answers) => said(answers, 'plan')),
      ],
      insertions: (answers) => {
        const offer = offers.find(({ name }) => name === said(answers, 'plan'))!;
        const first = { name: 'as-lived', description: 'as it is', change: {} };
        const named = { ...offer, name: said(answers, 'name') };
        return (taken.length === 0 ? [first, named] : [named]).map(planInsertion);
      },
    };
  },
};

function planInsertion(plan: PlanOffer): Insertion {
  const { name, ...value } = plan;
  return { path: ['plans'], name, value, lines: planLines(plan) };
}

const LIVED_IN = 'rooms to live in';

/** What it is called: the usual name with a number where that is taken. */
function nameQuestion(taken: readonly string[], usual: (answers: Answers) => string): Question {
  return {
    id: 'name',
    kind: 'line',
    text: () => 'What shall it be called?',
    initial: (answers) => freeName(usual(answers), taken),
    check: (line) => {
      if (!/^[^,\n]{1,60}$/.test(line)) return 'a name of 1 to 60 letters without commas';
      return taken.includes(line) ? `another name than ${taken.join(', ')}` : null;
    },
  };
}

function freeName(name: string, taken: readonly string[], k = 2): string {
  if (!taken.includes(name)) return name;
  return taken.includes(`${name} ${k}`) ? freeName(name, taken, k + 1) : `${name} ${k}`;
}

const namesIn = (within: unknown, key: string): string[] => Object.keys(mapping(within, key));
