import { describe, expect, test } from 'vitest';
import { questionBetween, questionsOf } from '../../../src/studies/answers/plan-questions.ts';
import { questionAnswers } from '../../../src/studies/answers/question-answers.ts';
import { changesBetween, planParts } from '../../../src/studies/effects/plan-changes.ts';
import { askedPlans, preparedPlans } from './asked.ts';

const RULES = `rules: [{ name: damp, when: [{ room: den, reading: humidity, over: 65 }], response: [{ tell: air }] }]`;
const DRIER = `devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } }`;

/** Titles, plans and what they are measured by. */
const asked = (plans: string) =>
  questionsOf(askedPlans(plans)).map(({ title, asked: each }) => [
    title,
    ...each.map(({ plan, against }) => `${plan.figures.plan} - ${against.figures.plan}`),
  ]);

test('what a plan asks is seen from what it changes, whatever its name', () => {
  const plans = `  a: { change: {} }
  b: { change: { heating: { setpoint: 19 } } }
  c: { change: { heating: { gate: when present, setback: 16 } } }
  d: { change: { ${DRIER} }, purchases: [{ what: drier, price: 180, lasts: 8 years }] }
  e: { change: { ${RULES} } }
  f: { change: { heating: { hours: "06:00-22:00" } } }
  g: { change: { ${DRIER} } }
  h: { change: { household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } } }
`;
  expect(asked(plans)).toEqual([
    ['19 °C or 21 °C?', 'b - a'],
    ['Heat only where somebody is?', 'c - a'],
    ['Buy drier for 180 GBP?', 'd - a'],
    ['Do the rules help?', 'e - a'],
    ['When to heat?', 'f - a'],
    ['Open windows otherwise?', 'h - a'],
    ['With or without the drier?', 'g - a'],
  ]);
});

test('what is bought for another source of heat is asked about with the tariff that comes with it', () => {
  const bought = 'purchases: [{ what: heat pump, price: 9000, lasts: 18 years }]';
  const pump = 'heating: { source: heat pump }';
  const plans = `  a: { change: { heating: { source: boiler, fuel: oil } } }
  b: { change: { ${pump} }, ${bought} }
  c: { change: { ${pump}, money: { electricity: 0.2 } }, ${bought} }
`;
  expect(asked(plans)).toEqual([['Buy heat pump for 9000 GBP?', 'b - a', 'c - a']]);
});

test('nobody asks what it would be not to buy what is bought anyway', () => {
  const boiler = 'purchases: [{ what: boiler, price: 3000, lasts: 15 years }]';
  const plans = `  a: { change: {}, ${boiler} }
  patched: { change: { heating: { hours: "06:00-22:00" } } }
`;
  expect(asked(plans)).toEqual([]);
});

describe('what is bought in place of something else', () => {
  const device = (name: string, label: number) =>
    `${name}: { kind: dehumidifier, room: den, label: ${label} L/day }`;
  const buy = (price: number, lasts = 8) =>
    `purchases: [{ what: drier, price: ${price}, lasts: ${lasts} years }]`;
  const small = `{ old drier: null, ${device('small', 10)} }`;

  test('of what the home has names that', () => {
    const plans = `  a: { change: { devices: { ${device('old drier', 12)} } } }
  small: { based on: a, change: { devices: ${small} }, ${buy(150)} }
`;
    expect(asked(plans)).toEqual([
      ['Buy drier for 150 GBP in place of the old drier?', 'small - a'],
    ]);
  });

  test.each([150, 200, 250])('of what is bought anyway, for %i instead of 200', (price) => {
    const plans = `  a: { change: { devices: { ${device('old drier', 12)} } }, ${buy(200, 6)} }
  small: { change: { devices: { ${device('small', 10)} } }, ${buy(price)} }
`;
    expect(asked(plans)).toEqual([
      [`Buy drier for ${price} GBP in place of drier for 200 GBP?`, 'small - a'],
    ]);
  });

  test('and who goes without what is bought asks whether it is of use', () => {
    const shut = 'household: { airing: [] }';
    const plans = `  a: { change: { ${shut}, devices: { ${device('old drier', 12)} } }, ${buy(200)} }
  without: { change: { ${shut} } }
`;
    expect(asked(plans)).toEqual([['With or without the old drier?', 'without - a']]);
    const [a, without] = askedPlans(plans);
    expect(questionBetween(a!, without!)).toBe('With or without the old drier?');
  });

  test('and so of a source of heat', () => {
    const pump = 'purchases: [{ what: heat pump, price: 9000, lasts: 18 years }]';
    const plans = `  a: { change: { heating: { source: heat pump } }, ${pump} }
  boiler: { change: { heating: { source: boiler, fuel: oil } } }
`;
    expect(asked(plans)).toEqual([['Another source of heat?', 'boiler - a']]);
  });

  test('nothing is bought where one the home has stands for another', () => {
    const plans = `  a: { change: { devices: { ${device('old drier', 12)} } } }
  small: { based on: a, change: { devices: ${small} } }
`;
    expect(asked(plans)).toEqual([['The small in place of the old drier?', 'small - a']]);
  });

  test('each device has a question of its own', () => {
    const both = `{ ${device('old drier', 12)}, ${device('small', 10)} }`;
    const plans = `  a: { change: { devices: ${both} } }
  no-old: { based on: a, change: { devices: { old drier: null } } }
  no-small: { based on: a, change: { devices: { small: null } } }
`;
    expect(asked(plans)).toEqual([
      ['With or without the old drier?', 'no-old - a'],
      ['With or without the small?', 'no-small - a'],
    ]);
  });

  test('but not of another plan that tries it', () => {
    const cool = 'heating: { setpoint: 19, hours: "06:00-22:00" }';
    const plans = `  a: { change: { household: { airing: [] } } }
  dry: { change: { ${cool}, devices: { ${device('old drier', 12)} } }, ${buy(200)} }
  cool: { change: { ${cool} } }
`;
    expect(asked(plans).flat()).not.toContain('cool - dry');
  });
});

test('what is bought is named and counted, beyond what the other plan buys too', () => {
  const drier = '{ what: drier, price: 180, lasts: 8 years }';
  const fan = '{ what: fan, price: 240, lasts: 12 years }';
  const plans = `  a: { change: {}, purchases: [${drier}] }
  two: { change: { ${DRIER} }, purchases: [${drier}, ${drier}, ${drier}] }
  mixed: { change: { ${DRIER} }, purchases: [${drier}, ${drier}, ${fan}] }
`;
  expect(asked(plans).map(([title]) => title)).toEqual([
    'Buy 2 × drier for 360 GBP?',
    'Buy drier and fan for 420 GBP?',
  ]);
});

test('a plan on top of another is measured by that one; several changes at once are named', () => {
  const plans = `  a: { change: {} }
  cool: { change: { heating: { hours: "06:00-22:00" } } }
  told: { based on: cool, change: { ${RULES} } }
  everything: { change: { ${RULES}, ${DRIER}, heating: { setpoint: 19, gate: when present, setback: 16 } } }
`;
  expect(asked(plans)).toEqual([
    ['Do the rules help?', 'told - cool'],
    ['When to heat?', 'cool - a'],
    ['Another setting, heat by presence, devices and rules at once?', 'everything - a'],
  ]);
});

test.each([
  [
    'devices and other habits at once',
    `{ ${DRIER}, household: { activities: [{ what: shower, room: bath }] } }`,
  ],
  [
    'other people or hours',
    '{ household: { people: [{ who: infant, pattern: at home, sleeps in: den }] } }',
  ],
  ['other habits', '{ household: { activities: [{ what: shower, room: bath }] } }'],
  ['other prices', '{ money: { gas: { price: 0.2 } } }'],
  // What is carried by the air is no part that plans are told apart by.
  ['is b worth it', '{ air: { window penetration: { pm25: 0.3 } } }'],
])('what changes no one thing is asked about as it is: %s', (title, change) => {
  const plans = askedPlans(`  a: { change: {} }\n  b: { change: ${change} }\n`);
  const [question] = questionsOf(plans);
  expect(question!.title.toLowerCase()).toBe(`${title}?`);
  expect(question!.asked[0]!.against).toBe(plans[0]);
});

test('after all purchases too, each that changes other things by itself', () => {
  const buy = (name: string, label: number) =>
    `{ change: { devices: { ${name}: { kind: dehumidifier, room: den, label: ${label} L/day } } }, purchases: [{ what: ${name}, price: ${label}0, lasts: 8 years }] }`;
  const plans = `  a: { change: {} }
  both: { change: { ${RULES}, ${DRIER} } }
  dear: { change: { money: { gas: { price: 0.2 } } } }
  small: ${buy('small', 10)}
  large: ${buy('large', 20)}
`;
  const titles = questionAnswers(askedPlans(plans)).map(({ title }) => title);
  expect(titles.slice(0, 2).toSorted()).toEqual([
    ...['Buy large for 200 GBP?', 'Buy small for 100 GBP?'],
  ]);
  expect(titles.slice(2)).toEqual(['Devices and rules at once?', 'Other prices?']);
});

test('several things at once are asked about after all else', () => {
  const plans = `  a: { change: {} }
  both: { change: { ${RULES}, ${DRIER} } }
  buy: { change: { ${DRIER} }, purchases: [{ what: drier, price: 180, lasts: 8 years }] }
  told: { change: { ${RULES} } }
`;
  const titles = questionAnswers(askedPlans(plans)).map(({ title }) => title);
  expect(titles).toEqual([
    'Buy drier for 180 GBP?',
    'Do the rules help?',
    'Devices and rules at once?',
  ]);
});

describe('a device that comes with the rule that runs it is about the device', () => {
  const FAN = 'fan: { kind: extract fan, room: bath, runs: by rules }';
  const fan = `devices: { ${FAN} }`;
  const rule = (response: string, name = 'moist') =>
    `{ name: ${name}, when: [{ room: bath, reading: humidity, over: 65 }], response: [${response}] }`;
  const runs = rule('{ run: fan }');
  const bought = 'purchases: [{ what: fan, price: 120, lasts: 10 years }]';

  test('bought or not', () => {
    const plans = `  a: { change: {} }\n  b: { change: { ${fan}, rules: [${runs}] } }\n`;
    expect(asked(plans)).toEqual([['With or without the fan?', 'b - a']]);
    expect(asked(plans.replace('] } }', `] }, ${bought} }`))).toEqual([
      ['Buy fan for 120 GBP?', 'b - a'],
    ]);
  });

  test('whatever other devices and rules there are before and after', () => {
    const other = 'drier: { kind: dehumidifier, room: den, label: 12 L/day }';
    const damp = rule('{ stop: drier }', 'damp');
    const plans = `  a: { change: { devices: { ${other} }, rules: [${damp}] } }
  b: { change: { devices: { ${FAN}, ${other} }, rules: [${runs}, ${damp}] } }
`;
    expect(asked(plans)).toEqual([['With or without the fan?', 'b - a']]);
  });

  test('not where a rule does something else', () => {
    const plans = `  a: { change: {} }\n  b: { change: { ${fan}, rules: [${runs}, ${rule('{ tell: air }', 'told')}] } }\n`;
    expect(asked(plans)).toEqual([['Devices and rules at once?', 'b - a']]);
  });
});

test('whether rules help at all is another question than which', () => {
  const [none, had, other] = askedPlans(
    `  none: { change: {} }\n  had: { change: { ${RULES} } }\n  other: { change: { ${RULES.replace('65', '70')} } }\n`,
  );
  const plans = [had!, none!, other!];
  const titles = questionsOf(plans).map(({ title, asked }) => [
    title,
    asked[0]!.plan.prepared.plan,
  ]);
  expect(titles.sort()).toEqual([
    ['Do the rules help?', 'none'],
    ['Other rules?', 'other'],
  ]);
});

test('who has rules, or heats by presence, asks whether to go on; nobody does of what another plan tries', () => {
  for (const more of [RULES, 'heating: { gate: when present, setback: 16 }']) {
    const plans = askedPlans(`  a: { change: {} }\n  b: { change: { ${more} } }\n`);
    expect(questionsOf(plans)).toHaveLength(1);
    const [question] = questionsOf(plans.toReversed());
    expect(question!.title).toBe(questionsOf(plans)[0]!.title);
    expect(question!.asked.map(({ plan }) => plan.prepared.plan)).toEqual(['a']);
    const warm = 'heating: { setpoint: 23 }';
    const third = askedPlans(`  a: { change: {} }
  b: { change: { ${more.replace('heating: {', 'heating: { setpoint: 23,')}${more === RULES ? `, ${warm}` : ''} } }
  c: { change: { ${warm} } }
`);
    // c is b without them, and the baseline at another setting.
    expect(
      questionsOf(third).flatMap(({ asked }) => asked.map(({ against }) => against.prepared.plan)),
    ).not.toContain('b');
  }
});

test.each([
  [
    'a list',
    'setpoint: [{ from: "22:00", to: "06:00", setpoint: 22 }, { from: "06:00", to: "22:00", setpoint: 20 }]',
  ],
  ['hours and a setback', 'setpoint: 22, hours: "00:30-05:30", setback: 20'],
])('heat moved to other hours by %s, of a home that was kept at one setting', (_, heating) => {
  expect(
    asked(
      `  a: { change: { heating: { hours: null } } }\n  stored: { based on: a, change: { heating: { ${heating} } } }\n`,
    ),
  ).toEqual([['Warmer at some hours, cooler at others?', 'stored - a']]);
});

test('less heat, and heat at other hours, are two questions', () => {
  const plans = `  a: { change: { heating: { hours: "07:00-23:00", setback: 16 } } }
  less: { change: { heating: { setpoint: 19, hours: "07:00-23:00", setback: 16 } } }
  evening: { change: { heating: { hours: null, setback: 16, setpoint: [{ from: "07:00", to: "17:00", setpoint: 21 }, { from: "17:00", to: "23:00", setpoint: 23 }] } } }
  stored: { change: { heating: { hours: null, setback: 16, setpoint: [{ from: "00:30", to: "07:00", setpoint: 23 }, { from: "07:00", to: "23:00", setpoint: 19 }] } } }
  most: { change: { heating: { setpoint: 23, hours: "07:00-23:00", setback: 16 } } }
`;
  expect(asked(plans)).toEqual([
    ['19 °C or 21 °C?', 'less - a', 'evening - a', 'most - a'],
    ['Warmer at some hours, cooler at others?', 'stored - a'],
  ]);
});

test('a setting of one room names it', () => {
  const plans = `  a: { change: {} }
  b: { change: { heating: { rooms: { bath: { setpoint: 24 } } } } }
`;
  expect(asked(plans)).toEqual([['21 °C or 24 °C (bath)?', 'b - a']]);
});

test('a setting of three rooms names them, of four two and how many more', () => {
  const more = 'a: { floor area: 9 }, b: { floor area: 9 }, c: { floor area: 9 }';
  const warm = (...rooms: string[]) =>
    `{ heating: { rooms: { ${rooms.map((room) => `${room}: { setpoint: 24 }`).join(', ')} } } }`;
  const plans = `  base: { change: { home: { rooms: { ${more} } } } }
  three: { based on: base, change: ${warm('den', 'a', 'b')} }
  four: { based on: base, change: ${warm('den', 'a', 'b', 'c')} }
`;
  expect(asked(plans.replace(/ {2}four.*\n/, ''))).toEqual([
    ['21 °C or 24 °C (den, a and b)?', 'three - base'],
  ]);
  expect(asked(plans.replace(/ {2}three.*\n/, ''))).toEqual([
    ['21 °C or 24 °C (den, a and 2 more)?', 'four - base'],
  ]);
});

test('one plan alone asks nothing', () => {
  const plans = `  a: { change: {} }
  b: { change: { household: { people: [{ who: infant, pattern: at home, sleeps in: den }] } } }
`;
  const [a, b] = preparedPlans(plans).map(planParts);
  expect([...changesBetween(a!, a!)]).toEqual([]);
  expect([...changesBetween(a!, b!)]).toContain('people');
  expect(questionsOf(askedPlans(plans).slice(0, 1))).toEqual([]);
});
