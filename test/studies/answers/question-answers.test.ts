import { expect, test } from 'vitest';
import type { AskedPlan } from '../../../src/studies/answers/asked.ts';
import { comparisonAnswers } from '../../../src/studies/answers/comparison-answers.ts';
import { askedPlan } from '../../../src/studies/answers/plan-questions.ts';
import { questionAnswers } from '../../../src/studies/answers/question-answers.ts';
import { surpriseOf } from '../../../src/studies/answers/surprise.ts';
import { planFigures } from '../../../src/studies/effects/plan-figures.ts';
import { somePlan } from '../some-plan.ts';
import { askedPlans } from './asked.ts';

const NINETEEN = `  now: { change: {} }
  nineteen: { change: { heating: { setpoint: 19 } } }
`;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const answers = (...args: Parameters<typeof askedPlans>) =>
  questionAnswers(askedPlans(...args)).map(({ title, sentences }) =>
    plain(`${title} ${sentences.join(' ')}`),
  );
/** Share of a year of two rooms. [h] */
const share = (percent: number) => (percent / 100) * 2 * 8760;

test('a saving says what is given up for it, in shares and hours a day', () => {
  const damp = { outside: { humidity_high: share(17) } };
  const damper = {
    outside: { humidity_high: share(36) },
    over: { winter_cold_hours_per_day: 1.2 },
  };
  expect(answers(NINETEEN, [{ den: damp }, { energy: 840, den: damper }])).toEqual([
    '19 °C or 21 °C? nineteen saves 160 GBP a year, but rooms are too damp 36 % of the time ' +
      '(was 17 %) and people are in rooms that are too cold 1.2 h a day (den).',
  ]);
});

test('a saving without loss, a cost without gain, and nothing at all', () => {
  expect(answers(NINETEEN, [{}, { energy: 840 }])).toEqual([
    '19 °C or 21 °C? nineteen saves 160 GBP a year and changes little else.',
  ]);
  expect(answers(NINETEEN, [{}, { energy: 1040 }])).toEqual([
    '19 °C or 21 °C? nineteen costs 40 GBP a year more and makes nothing clearly better.',
  ]);
  expect(answers(NINETEEN)).toEqual([
    '19 °C or 21 °C? nineteen costs the same and changes little else.',
  ]);
});

test('of a cost two gains are told and one loss, of a saving two losses and one gain', () => {
  const [low, high] = [
    {
      outside: { humidity_high: share(30) },
      over: { winter_cold_hours_per_day: 3, mould_index_peak: 0 },
    },
    {
      outside: { humidity_low: share(30) },
      occupied: { temperature_high: 1800 },
      over: { winter_cold_hours_per_day: 0 },
    },
  ];
  const [cost] = answers(NINETEEN, [{ den: low }, { energy: 1040, den: high }]);
  expect(cost).toMatch(
    /more: nobody is .* \(den\) and rooms are dry enough .*; but people are too/,
  );
  expect(cost).not.toContain('too dry');
  const [saving] = answers(NINETEEN, [{ den: high }, { energy: 840, den: low }]);
  expect(saving).toMatch(/a year: hardly anybody is .*; but people are .* and rooms are too damp /);
  expect(saving).not.toContain('moist enough');
});

test('what gets better is told by what is good about it', () => {
  const wet = { outside: { humidity_high: share(40) }, over: { mould_index_peak: 0.4 } };
  const dry = { outside: { humidity_high: share(10) }, over: { mould_index_peak: 0.1 } };
  const plans = `  now: { change: {} }
  drier:
    change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } } }
    purchases: [{ what: drier, price: 180, lasts: 8 years }]
`;
  expect(answers(plans, [{ den: wet }, { energy: 1030, purchaseCost: 22.5, den: dry }])).toEqual([
    'Buy drier for 180 GBP? Buy it if drier rooms are worth 53 GBP a year to you. With drier, ' +
      'rooms are dry enough 90 % of the time (was 60 %), though mould is not likely to start ' +
      'without it (index up to 0.4 of 6). Nothing else that was tried does as much for less ' +
      'without making something else worse. Even as a gift it costs 27 GBP a year.',
  ]);
  // Where rooms are seldom damp and no mould starts, it guards against nothing.
  const fine = { outside: { humidity_high: share(9) }, over: { mould_index_peak: 0.4 } };
  expect(answers(plans, [{ den: fine }, { energy: 1030, purchaseCost: 22.5 }])).toEqual([
    'Buy drier for 180 GBP? Not needed: what drier guards against does not happen here. Mould is ' +
      'not likely to start without it (index up to 0.4 of 6). Corners are hardly ever wet. Rooms ' +
      'are too damp 18 % of the time at most (den). What drier does besides would have to be worth 53 GBP a ' +
      'year to you; even as a gift it costs 27 GBP a year. What it changes: rooms are dry enough ' +
      '100 % of the time (was 91 %).',
  ]);
});

test('names the plan that answers, unless that is measured by another than the baseline', () => {
  const plans = `  now: { change: {} }
  cooler: { change: { heating: { setpoint: 17 } } }
  cooler-and-aired:
    based on: cooler
    change: { household: { airing: [{ rooms: all, at: "07:30", lasts: 10 min, open share: 100 % }] } }
`;
  const named = questionAnswers(askedPlans(plans, [{}, { energy: 900 }, { energy: 950 }]));
  expect(named.map(({ plan, told }) => [told[0]!.figures.plan, plan])).toEqual([
    ['cooler', 'cooler'],
    ['cooler-and-aired', ''],
  ]);
});

test('in short it is the verdict of a purchase, else the money and a word', () => {
  const inShort = (...args: Parameters<typeof askedPlans>): string[] =>
    questionAnswers(askedPlans(...args)).map((answer) => answer.inShort);
  const short = (...own: Parameters<typeof inShort>) =>
    inShort(...own).map((words) => words.replaceAll('\u00a0', ' '));
  expect(short(NINETEEN, [{}, { energy: 840 }])).toEqual([
    'nineteen saves 160 GBP a year and changes little else.',
  ]);
  expect(short(NINETEEN)).toEqual(['nineteen costs the same and changes little else.']);
  const damp = { den: { outside: { humidity_high: 3000 } } };
  expect(short(NINETEEN, [damp, damp])).toEqual([
    'nineteen costs the same and changes little else.',
  ]);
  expect(short(NINETEEN, [{}, { energy: 840, ...damp }])).toEqual([
    'nineteen saves 160 GBP a year, but damper.',
  ]);
  expect(short(NINETEEN, [damp, { energy: 1090 }])).toEqual([
    'nineteen costs 90 GBP a year more: drier.',
  ]);
  expect(short(NINETEEN, [{}, { energy: 1090, ...damp }])).toEqual([
    'nineteen costs 90 GBP a year more, and damper.',
  ]);
  const plans = `  now: { change: {} }
  drier:
    change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } } }
    purchases: [{ what: drier, price: 180, lasts: 8 years }]
`;
  expect(inShort(plans, [{}, { energy: 1030, purchaseCost: 22.5 }])).toEqual([
    'Not needed: what drier guards against does not happen here.',
  ]);
});

test('who keeps what is bought anyway buys nothing of what stands in its place', () => {
  const bought = (price: number) => `purchases: [{ what: drier, price: ${price}, lasts: 8 years }]`;
  const plans = `  now: { change: { devices: { old: { kind: dehumidifier, room: den, label: 12 L/day } } }, ${bought(200)} }
  new: { change: { devices: { new: { kind: dehumidifier, room: den, label: 20 L/day } } }, ${bought(300)} }
  aired: { based on: now, change: { household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } } }
`;
  const damp = { den: { outside: { humidity_high: 3000 }, mould: 4 } };
  const asked = (aired: number) =>
    answers(plans, [
      { purchaseCost: 30, ...damp },
      { purchaseCost: 45, energy: 1000 },
      { purchaseCost: 30, energy: aired },
    ]).find((answer) => answer.startsWith('Buy'));
  expect(asked(1005)).toMatch(
    /^Buy drier for 300 GBP in place of drier for 200 GBP\? Something else first: aired does/,
  );
  expect(asked(1050)).toMatch(/\? Buy it/);
});

test('laundry outdoors is no rival of a heat pump, another source of heat is', () => {
  const bought = (what: string) => `purchases: [{ what: ${what}, price: 4000, lasts: 20 years }]`;
  const plans = `  now: { change: {} }
  pump: { change: { heating: { source: heat pump } }, ${bought('pump')} }
  laundry-out: { change: { household: { activities: [] } } }
  electric: { change: { heating: { source: direct electric } }, ${bought('heaters')} }
`;
  const cost = (energy: number) => ({ energy, purchaseCost: 200 });
  const told = (electric: number) =>
    answers(plans, [{}, cost(600), { energy: 700 }, cost(electric)]).find((answer) =>
      answer.startsWith('Buy pump'),
    );
  expect(told(900)).toMatch(/^Buy pump for 4000 GBP\? Buy it: pump saves 200 GBP a year/);
  expect(told(500)).toMatch(/^Buy pump for 4000 GBP\? Something else first: electric does/);
});

test('rules say how often they ring, whether anybody hears, and which rings most', () => {
  const plans = `  now: { change: {} }
  told: { change: { rules: [{ name: damp, when: [{ room: den, reading: humidity, over: 65 }], response: [{ tell: air }] }] } }
`;
  const [now, told] = askedPlans(plans);
  const rule = {
    tells: true,
    ...{ fired: 520, per_week: 10, someone_home: 400, someone_awake: 300, could_act: 390 },
    ...{ acted_on: 200, duplicates: 52, active_hours: 900, missed: 3, held_back: 0 },
    by_hour: Array.from({ length: 24 }, (_, hour) => (hour === 7 ? 60 : 20)),
    could_act_by_hour: Array(24).fill(0),
  };
  const alerts = {
    fired: 520,
    someone_home: 400,
    acted_on: 200,
    per_week: 10,
    by_rule: { damp: rule },
  };
  const rung = { ...told!, measures: { ...told!.measures, alerts } };
  expect(plain(questionAnswers([now!, rung])[0]!.sentences.join(' '))).toBe(
    'told costs the same, rings 10 times a week (25 % with nobody awake at home within the hour) ' +
      'and changes little else. "damp" rings most, 10 times a week, most often from 7 to 8 h; 10 % of that is within ' +
      'an hour of the time before.',
  );
  // Behind the cheapest plan and the best one as well.
  const louder = { ...rung.prepared, plan: 'louder' };
  const cheaper = askedPlan(louder, {
    ...somePlan('louder', { energy: 950, den: { over: { winter_cold_hours_per_day: 6 } } }),
    alerts,
  });
  const all = questionAnswers([now!, rung, cheaper])[0]!.sentences;
  expect(all.map((sentence) => sentence.split(' ')[0])).toEqual(['louder', 'told', '"damp"']);
});

test('of many plans that ask the same, the cheapest and the best for its money answer', () => {
  const plans = `  now: { change: {} }
  a: { change: { heating: { setpoint: 17 } } }
  b: { change: { heating: { setpoint: 19 } } }
  c: { change: { heating: { setpoint: 20 } } }
`;
  const cold = { over: { winter_cold_hours_per_day: 6 } };
  const [first] = questionAnswers(
    askedPlans(plans, [{}, { energy: 700, den: cold }, { energy: 800 }, { energy: 900 }]),
  );
  expect(first!.sentences.map((sentence) => sentence.split(' ')[0])).toEqual(['a', 'b']);
  // Of the second what matters most is all.
  const two = { outside: { humidity_low: share(5) }, occupied: { temperature_high: 120 } };
  const [, second] = questionAnswers(
    askedPlans(plans, [{}, { energy: 700, den: cold }, { energy: 800, den: two }, { energy: 900 }]),
  )[0]!.sentences;
  expect(plain(second!)).toBe(
    'b saves 200 GBP a year, but people are too warm 2 % of the time (was 0 %).',
  );
});

test('more energy for less money is a surprise, with its reason', () => {
  const plans = `  timer: { change: { heating: { source: direct electric } } }
  always: { based on: timer, change: { heating: { hours: "00:00-06:00" } } }
`;
  /** All heat is electric; `spent` is its money. */
  const run = (always: Parameters<typeof askedPlans>[1], spent = [900, 850]) =>
    surpriseOf(
      askedPlans(plans, always).map((plan, k) =>
        heatedWith({ electricity: plan.measures.heating.useful_kwh }, spent[k]!, plan),
      ),
    );
  expect(
    run([
      { useful: 9000, energy: 1000 },
      { useful: 9900, energy: 950 },
    ]),
  ).toMatch(
    /^always takes \d+ kWh a year more and still costs 50 GBP less, because it heats in cheap hours\.$/,
  );
  expect(
    run([
      { useful: 9000, energy: 1000 },
      { useful: 9900, energy: 1100 },
    ]),
  ).not.toContain('still');
  // Two per cent cheaper is cheaper: 9900 kWh at 0.098 instead of 0.100.
  const little = [
    { useful: 9000, energy: 1000 },
    { useful: 9900, energy: 950 },
  ];
  expect(run(little, [900, 970.2])).toContain('because it heats in cheap hours');
  // What heat costs does not explain it: something else runs in cheap hours.
  const other = run(
    [
      { useful: 9000, energy: 1000 },
      { useful: 9900, energy: 950 },
    ],
    [900, 1000],
  );
  expect(other).toMatch(/still costs 50 GBP less\.$/);
});

test('less energy of a dearer fuel is no matter of hours, whatever the tariff', () => {
  const plans = `  boiler: { change: {} }
  electric: { change: { heating: { source: direct electric } } }
`;
  const [boiler, electric] = askedPlans(plans, [
    { useful: 9000, energy: 1000 },
    { useful: 9000, energy: 2500 },
  ]) as [AskedPlan, AskedPlan];
  const asked = [
    heatedWith({ gas: 10_000 }, 700, boiler),
    heatedWith({ electricity: 9000 }, 2250, electric),
  ];
  expect(surpriseOf(asked)).toBe(
    'electric takes 1000 kWh a year less and still costs 1500 GBP more, because a kWh of what it ' +
      'heats with costs 0.250 GBP, was 0.070.',
  );
  // Nothing is bought for emitters, and prices go by the clock: no reason is known.
  const figures = [{}, { useful: 8000, energy: 1500 }];
  const [was, plugged] = askedPlans(plans, figures) as [AskedPlan, AskedPlan];
  const bare = heatedWith({}, 0, plugged);
  expect(surpriseOf([was, bare])).toMatch(/ a year less and still costs 500 GBP more\.$/);
  const flat = (plan: AskedPlan): AskedPlan => {
    const fuels = { gas: plan.prepared.prices.fuels.gas! };
    return { ...plan, prepared: { ...plan.prepared, prices: { currency: 'GBP', fuels } } };
  };
  expect(surpriseOf([flat(was), flat(bare)])).toMatch(
    /500 GBP more, because it takes more of a dearer fuel\.$/,
  );
});

test('money for nothing and saving for nothing are told, the first of them first', () => {
  const worse = { over: { winter_cold_hours_per_day: 2 } };
  const plans = `${NINETEEN}  eighteen: { change: { heating: { setpoint: 18 } } }\n`;
  expect(surpriseOf(askedPlans(plans, [{}, { energy: 1050, den: worse }, { energy: 900 }]))).toBe(
    'nineteen costs 50 GBP a year more and makes nothing clearly better.',
  );
  expect(surpriseOf(askedPlans(plans, [{}, { energy: 900 }, { energy: 800, den: worse }]))).toBe(
    'nineteen saves 100 GBP a year and makes nothing worse.',
  );
  expect(surpriseOf(askedPlans(plans, [{}, { energy: 990, den: worse }, {}]))).toBe('');
});

test('what an answer says already surprises nobody', () => {
  const worse = { over: { winter_cold_hours_per_day: 2 } };
  const dearer = askedPlans(NINETEEN, [{}, { energy: 1050, den: worse }]);
  expect(surpriseOf(dearer)).toContain('nineteen costs');
  expect(surpriseOf(dearer, [dearer[0]!])).toContain('nineteen costs');
  expect(surpriseOf(dearer, [dearer[1]!])).toBe('');
  const cheaper = askedPlans(NINETEEN, [{}, { energy: 900 }]);
  expect(surpriseOf(cheaper, [cheaper[1]!])).toBe('');
  const [answer] = questionAnswers(dearer);
  expect(answer!.told).toEqual([dearer[1]]);
});

test('of a stove the air is told first, where it is clearly otherwise', () => {
  const plans =
    askedPlans(`  now: { change: { devices: { stove: { kind: stove, room: den, burns: "06:00-22:00" } } } }
  evenings: { change: { devices: { stove: { kind: stove, room: den, burns: "18:00-22:00" } } } }
`);
  const losses = (co2: number): string => {
    const figures = plans.map((plan, k) => ({
      ...plan.figures,
      damp: k === 0 ? 10 : 60,
      air: [
        {
          ...{ name: 'co2', label: 'CO2', unit: 'ppm', kind: 'worst night' as const },
          ...{ value: k === 0 ? 1000 : co2, over: 20, minded: false },
        },
      ],
    }));
    const told = questionAnswers(plans.map((plan, k) => ({ ...plan, figures: figures[k]! })));
    return told
      .flatMap(({ sentences }) => sentences)
      .join(' ')
      .replaceAll('\u00a0', ' ');
  };
  expect(losses(1240)).toMatch(
    /, but rooms are too damp 60 % of the time \(was 10 %\) and there is more CO2/,
  );
  expect(losses(1260)).toMatch(
    /, but there is more CO2 \(1260 ppm at night, was 1000\) and rooms are too damp/,
  );
});

test('a part of a year does not tell what is of use in another season, nor that mould stays away', () => {
  const worse = { over: { winter_cold_hours_per_day: 2 } };
  const [now, nineteen] = [{ hours: 720 }, { hours: 720, energy: 1050, den: worse }];
  expect(surpriseOf(askedPlans(NINETEEN, [now, nineteen]))).toBe('');
});

test('cold is told of the room worst off, and of both where that is another', () => {
  const cold = (hours: number) => ({ over: { winter_cold_hours_per_day: hours } });
  const words = (now: number, bath: number) =>
    answers(NINETEEN, [
      { den: cold(2) },
      { energy: 1100, den: cold(now), bath: cold(bath) },
    ])[0]!.slice('19 °C or 21 °C? nineteen costs 100 GBP a year more'.length);
  expect(words(1, 0)).toBe(
    ': people are in rooms that are too cold only 1.0 h a day (was 2.0, den).',
  );
  expect(words(0, 1)).toBe(
    ': people are in rooms that are too cold only 1.0 h a day (bath; was 2.0, den).',
  );
  expect(words(0, 0)).toBe(': nobody is in a room that is too cold any more (den).');
  expect(words(1.9, 0)).toBe(' and makes nothing clearly better.'); // six minutes a day
});

test.each([
  [59, 'nineteen rings 2 times a week, 41 % of them with nobody awake at home within the hour.'],
  [61, ''],
])('rules that %d of 100 times somebody could hear', (could_act, words) => {
  const asked = askedPlans(NINETEEN).map((plan, k) => {
    if (k === 0) return plan;
    const rule = { tells: true, could_act } as (typeof plan.measures.alerts.by_rule)[string];
    const alerts = { ...plan.measures.alerts, fired: 100, per_week: 2, by_rule: { damp: rule } };
    return { ...plan, measures: { ...plan.measures, alerts } };
  });
  expect(surpriseOf(asked)).toBe(words);
});

test('a part of a year tells its own money, and decides on no purchase', () => {
  const plans = `  now: { change: {} }
  nineteen: { change: { heating: { setpoint: 19 } } }
  drier:
    change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } } }
    purchases: [{ what: drier, price: 180, lasts: 8 years }]
`;
  const summer = { hours: 78 * 24 };
  const wet = { over: { mould_index_peak: 3 } };
  const years = [
    { ...summer, energy: 200, den: wet },
    { ...summer, energy: 162, den: wet },
    { ...summer, energy: 213, purchaseCost: 22.5 },
  ];
  const [, short] = questionAnswers(askedPlans(plans, years));
  expect(short!.inShort.replaceAll('\u00a0', ' ')).toBe(
    'drier costs 13 GBP more in these 78 days (its price not counted): less mould.',
  );
  expect(answers(plans, years)).toEqual([
    '19 °C or 21 °C? nineteen saves 38 GBP in these 78 days and changes little else.',
    'Buy drier for 180 GBP? drier costs 13 GBP more in these 78 days (its price not counted): ' +
      'mould is less likely (index 0.0, was 3.0, den).',
  ]);
});

test.each([
  [8760, ''],
  [8784, ''],
  [2 * 8760, ''],
  [
    78 * 24,
    '78 days were run, which is no whole year: they cannot tell what a year costs, nor whether a purchase pays.',
  ],
  [
    400 * 24,
    '400 days were run, which is no whole year: they cannot tell what a year costs, nor whether a purchase pays.',
  ],
])('what to know of %i hours before any answer', (hours, caveat) => {
  expect(comparisonAnswers(askedPlans(NINETEEN, [{ hours }, { hours }])).caveat).toBe(caveat);
});

/** A plan whose emitters take so many kWh of each fuel, for so much money together. */
function heatedWith(kwh: Record<string, number>, spent: number, plan: AskedPlan): AskedPlan {
  const { heating, money } = plan.measures;
  const by_use = Object.fromEntries(
    Object.keys(kwh).map((fuel) => [fuel, { heating: spent, cooling: 0, other: 0 }]),
  );
  const measures = {
    ...plan.measures,
    heating: { ...heating, delivered_kwh: kwh },
    money: { ...money, by_use },
  };
  return { ...plan, measures, figures: planFigures(measures) };
}

test('that a stove lets out smoke is told with one question, that of the air', () => {
  const stove = 'devices: { stove: { kind: stove, room: den } }';
  const found = questionAnswers(
    askedPlans(`  now: { change: { ${stove} } }
  nineteen: { based on: now, change: { heating: { setpoint: 19 } } }
  aired: { based on: now, change: { household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } } }
`),
  );
  expect(found.map(({ title, first }) => [title, first !== ''])).toEqual([
    ['19 °C or 21 °C?', false],
    ['Open windows otherwise?', true],
  ]);
});
