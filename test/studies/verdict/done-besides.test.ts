import { expect, test } from 'vitest';
import { doneBesides } from '../../../src/studies/verdict/done-besides.ts';
import { preparedPlans } from '../answers/asked.ts';

/** Which of the other plans could be done as well as the first, and whether that heats otherwise. */
function found(changes: Readonly<Record<string, string>>, before = '{}') {
  const lines = Object.entries(changes).map(
    ([name, change]) => `  ${name}: { change: ${change} }\n`,
  );
  const [baseline, plan, ...rivals] = preparedPlans(
    `  before: { change: ${before} }\n${lines.join('')}`,
  );
  const { besides, heatsOtherwise } = doneBesides(baseline!, plan!, rivals);
  return [[...besides].join(' '), heatsOtherwise];
}
const PUMP = '{ heating: { source: heat pump } }';
const device = (name: string, more: string) => `{ devices: { ${name}: { room: den, ${more} } } }`;

test('beside a heat pump goes what leaves the source of heat alone', () => {
  expect(
    found({
      pump: PUMP,
      electric: '{ heating: { source: direct electric } }',
      aired: '{ household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } }',
      cool: '{ heating: { setpoint: 19 } }',
    }),
  ).toEqual(['aired cool', true]);
});

test('heat in a home that had none is not heat otherwise', () => {
  expect(found({ heated: PUMP }, '{ heating: { source: none } }')).toEqual(['', false]);
});

test('two settings are one or the other; devices go together unless they are of one kind', () => {
  expect(
    found({
      nineteen: '{ heating: { setpoint: 19 } }',
      eighteen: '{ heating: { setpoint: 18 } }',
      drier: device('drier', 'kind: dehumidifier'),
    }),
  ).toEqual(['drier', false]);
  expect(
    found({
      drier: device('drier', 'kind: dehumidifier'),
      other: device('other', 'kind: dehumidifier'),
      fan: device('fan', 'kind: extract fan'),
    }),
  ).toEqual(['fan', false]);
});

test('a tighter home and larger rooms are two parts of the building', () => {
  const tight = '{ home: { leakage: { ach50: 3 } } }';
  expect(
    found({
      tight,
      tighter: '{ home: { leakage: { ach50: 2 } } }',
      wide: '{ home: { rooms: { den: { floor area: 20, height: 2.4 } } } }',
    })[0],
  ).not.toContain('tighter');
});

test('prices alone set nothing aside, and two settings of one device are one or the other', () => {
  const price = 'money: { gas: { price: 0.09 } }';
  expect(
    found({
      pump: `{ heating: { source: heat pump }, ${price} }`,
      aired: `{ household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] }, ${price} }`,
    }),
  ).toEqual(['aired', true]);
  const drier = (target: number) => device('drier', `kind: dehumidifier, target: ${target}`);
  expect(found({ drier: drier(50), wetter: drier(60) }, drier(55))).toEqual(['', false]);
});
