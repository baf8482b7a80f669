import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import {
  type Answers,
  completed,
  nextQuestion,
  troublesOf,
} from '../../../src/scenario/start/question.ts';
import { QUESTIONNAIRE } from '../../../src/scenario/start/questionnaire.ts';
import { answersText, readAnswers } from '../../../src/scenario/start/read-answers.ts';
import { scenarioText } from '../../../src/scenario/start/write-scenario.ts';

const CONTEXT = {
  weather: [
    { name: 'far.csv', title: 'Far', place: { latitude: 40, longitude: 10 } },
    { name: 'near.csv', title: 'Near', place: { latitude: 54.2, longitude: -1.9 } },
  ],
};
const PATHS = { weather: 'w.csv', schema: 's.json', usual: [], remark: null };
const all = (given: Answers): Answers => completed(QUESTIONNAIRE, given, CONTEXT).answers;
const write = (given: Answers): string => scenarioText(all(given), PATHS);

describe('the questions', () => {
  test('are 25 at most, each with an id of its own', () => {
    const ids = QUESTIONNAIRE.map(({ id }) => id);
    expect(ids.length).toBeLessThanOrEqual(25);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('are listed in docs/start.md, in their order', () => {
    const page = readFileSync('docs/start.md', 'utf8');
    const [questions = ''] = page.split('## One thing more');
    const rows = [...questions.matchAll(/^\| (`.*?) \|/gm)].map((row) => row[1]!);
    const listed = rows.flatMap((row) => [...row.matchAll(/`([^`]+)`/g)].map((name) => name[1]!));
    expect(listed).toEqual(QUESTIONNAIRE.map(({ id }) => id));
  });

  test('are plain questions', () => {
    for (const { text } of QUESTIONNAIRE) expect(text(all({}))).toMatch(/^[A-Z].*\?$/);
  });

  test('take their own usual answers', () => {
    expect(troublesOf(QUESTIONNAIRE, all({}), CONTEXT)).toEqual([]);
  });

  test('know what a bill and a thing cost in another currency, of which a euro is 150 or so', () => {
    const yen = { currency: 'JPY', heat: 'gas boiler', bothers: ['damp'] };
    expect(all(yen)).toMatchObject({ electricity: '41', 'fuel price': '11' });
    expect(troublesOf(QUESTIONNAIRE, all({ ...yen, electricity: '31' }), CONTEXT)).toEqual([]);
    expect(write(yen)).toContain('what: dehumidifier, price: 27000');
    expect(write({ ...yen, currency: 'EUR' })).toContain('what: dehumidifier, price: 180');
  });

  test.each(['day and night', 'cheap night'])('a %s tariff is cheaper at night', (tariff) => {
    const price = String(all({ tariff })['electricity']);
    const [, day, night, from, to] = /^([\d.]+) \/ ([\d.]+) (\d+):\d\d-(\d+):\d\d$/.exec(price)!;
    expect(Number(night)).toBeLessThan(Number(day));
    expect([Number(from) % 23 === 0, Number(to) < 8]).toEqual([true, true]);
  });

  test('begin with the first that has no answer, and pass over those that do not matter', () => {
    const asked = (given: Answers) => nextQuestion(QUESTIONNAIRE, given)?.id;
    expect(asked({})).toBe('title');
    expect(asked({ title: 'x' })).toBe('place');
    const { setpoint: _, ...others } = all({});
    expect(asked(others)).toBe('setpoint');
    expect(asked({ ...others, heat: 'nothing' })).toBeUndefined();
  });

  test('offer the weather at hand that is nearest in climate first', () => {
    const weather = QUESTIONNAIRE.find(({ id }) => id === 'weather')!;
    if (weather.kind !== 'one') throw new Error('not one of several');
    const offered = (place: string) =>
      weather.choices({ place }, CONTEXT).map(({ value, hint }) => `${value}: ${hint}`);
    // 1 ° of latitude is 111 km: from 55 to 54.2 north it is 89.
    expect(offered('55,-1.9')).toEqual([
      'fetch: uses the network: PVGIS will be told the place, rounded to 0.01°',
      'near.csv: 90 km away, 0.8° further south; the nearest in climate of those at hand',
      expect.stringMatching(/^far\.csv: 1\d{3} km away, 15\.0° further south$/),
    ]);
    expect(offered('Rome')[1]).toMatch(/^far\.csv/);
  });
});

describe('answers that will not do are told with their place', () => {
  test.each([
    [
      'place: 91,0',
      'a.yaml:1:8: place: expected latitude and longitude in degrees, such as 54.2,-1.9 (north and east positive) (are they swapped? did you mean 0,91?), got "91,0"',
    ],
    ['place: Lndon', '(did you mean London?), got "Lndon"'],
    ['place: Brigadoon', '(that town is not known here)'],
    ['timezone: Mars/North', 'expected a time zone by its IANA name, such as Europe/London'],
    ['kind: flatt', '(did you mean "flat"?)'],
    [
      'kind: [flat]',
      'expected one of: flat, flat under the roof, flat on the ground floor, terrace',
    ],
    ['rooms: living', '("living" is none)'],
    ['rooms: living 18, living 9', '(two are called living)'],
    ['rooms: ballroom 300', '(ballroom has 1 to 120 m2)'],
    ['rooms: all 12', '(no room can be called all)'],
    ['setpoint: 68', 'expected a number of °C from 10 to 28, got 68'],
    ['setpoint: 28.5', 'expected a number of °C from 10 to 28, got 28.5'],
    ['people: a cat', 'expected how many of adults, frail adults, children and infants'],
    ['people: 0 adults', 'such as 2 adults, 1 child'],
    ['laundry: attic', 'expected one of: not indoors, living'],
    ['electricity: 27', '(pounds or euros, not pence or cents), got 27'],
    ['currency: JPY\nelectricity: 3100', 'expected a price of a kWh, such as 41, got 3100'],
    [
      'currency: JPY\nheat: gas boiler\nfuel price: much',
      'expected a price of a kWh, such as 11, got "much"',
    ],
    [
      'tariff: day and night\nelectricity: 0.27',
      'expected prices by day and by night, and the night hours, such as 0.30 / 0.10 00:30-05:30',
    ],
    ['tariff: file\nelectricity: 0.27', 'expected the name of a CSV file, such as prices.csv'],
    ['devices: dehumidifier, heat pump', 'expected any of: dehumidifier'],
    ['devices: [dehumidifer]', '(did you mean "dehumidifier"?)'],
    ['worst room: ballroom', 'expected one of: living'],
    ['kinde: flat', 'did you mean "kind"? Expected one of the questions: title, place'],
    ['title: { a: 1 }', 'expected text, or a list of texts'],
    ['- 1', 'expected a mapping from questions to answers, such as kind: flat'],
  ])('%s', (text, words) => {
    expect(() => readAnswers(text, 'a.yaml', QUESTIONNAIRE, CONTEXT)).toThrow(words);
  });

  test('several of several may stand in a list or behind each other', () => {
    const read = (text: string) => readAnswers(text, 'a.yaml', QUESTIONNAIRE, CONTEXT);
    expect(read('bothers: damp, cost')).toEqual(read('bothers: [damp, cost]'));
    expect(read('devices: stove')).toEqual({ devices: ['stove'] });
  });

  test.each([
    ['electricity: 0.30 / 0.10 00:30-05:30', 'day and night'],
    ['electricity: prices.csv', 'file'],
    ['electricity: 0.27', undefined],
  ])('%s tells how electricity is priced', (text, tariff) => {
    expect(readAnswers(text, 'a.yaml', QUESTIONNAIRE, CONTEXT)['tariff']).toBe(tariff);
  });

  test.each([
    ['1990', '1983-1990'],
    ['1880', 'before 1900'],
    ['2024', '2007 on'],
  ])('built in %s lies in the band %s', (year, band) => {
    const read = readAnswers(`built: ${year}`, 'a.yaml', QUESTIONNAIRE, CONTEXT);
    expect(read['built']).toBe(band);
  });

  test('what contradicts the price is refused', () => {
    const read = (text: string) => () => readAnswers(text, 'a.yaml', QUESTIONNAIRE, CONTEXT);
    expect(read('tariff: one price\nelectricity: 0.30 / 0.10 00:30-05:30')).toThrow(
      'a.yaml:2:14: electricity: expected a price of a kWh, such as 0.27',
    );
    expect(read('electricity: 0,30')).toThrow('got "0,30" (write 0.30 with a point)');
  });

  test('contradictions: a heat pump with a price of gas only', () => {
    expect(() =>
      readAnswers('heat: heat pump\nfuel price: 0.07\n', 'a.yaml', QUESTIONNAIRE, CONTEXT),
    ).toThrow(
      'a.yaml:2:13: fuel price: expected no such answer, got 0.07 (the heat is heat pump: its price is that of electricity)',
    );
  });

  test('contradictions: a setting without heat, a worst room where nothing bothers', () => {
    const read = (text: string) => () => readAnswers(text, 'a.yaml', QUESTIONNAIRE, CONTEXT);
    expect(read('heat: nothing\nsetpoint: 20')).toThrow('(nothing heats the home)');
    expect(read('rooms: living 20\nbothers: [cost]\nworst room: living')).toThrow(
      '(neither damp, dry, cold, heat nor stale air bothers you)',
    );
  });

  test('all at once', () => {
    const text = 'kind: tent\nsetpoint: warm\n';
    expect(() => readAnswers(text, 'a.yaml', QUESTIONNAIRE, CONTEXT)).toThrow(
      /a\.yaml:1:7: kind: .*\na\.yaml:2:11: setpoint: /,
    );
  });
});

test('answers written are the answers read', () => {
  const answers = all({ title: 'Number 7: "the mill", off #2', place: 'Dublin' });
  expect(readAnswers(answersText(answers), 'a.yaml', QUESTIONNAIRE, CONTEXT)).toEqual(answers);
});

describe('the scenario written', () => {
  const heats = ['gas boiler', 'oil boiler', 'lpg boiler', 'wood boiler'];
  const others = ['heat pump', 'electric heaters', 'district heat', 'nothing'];
  const everything = {
    devices: [
      ...['dehumidifier', 'humidifier', 'bathroom fan', 'kitchen fan', 'ventilation', 'purifier'],
      ...['stove', 'air conditioner'],
    ],
    sensors: ['presence', 'humidity', 'air'],
    bothers: ['cost', 'damp', 'dry', 'cold', 'heat', 'air', 'alerts'],
  };

  test.each(
    [...heats, ...others].flatMap((heat, k) =>
      ['flat', 'flat under the roof', 'terrace', 'detached'].map((kind) => [
        heat,
        kind,
        String(1 + ((k * 3) % 6)),
      ]),
    ),
  )('%s in a %s of %s rooms is one', (heat, kind, size) => {
    for (const more of [{}, everything]) {
      const text = write({ heat: heat!, kind: kind!, size: size!, ...more });
      expect(() => readScenario(text, 'home.yaml')).not.toThrow();
    }
  });

  test.each(['cost', 'damp', 'dry', 'cold', 'heat', 'air', 'alerts'])(
    'plans that fit %s can be run',
    (one) => {
      const { plans } = readScenario(write({ bothers: [one], laundry: 'living' }), 'home.yaml');
      expect(plans[0]!.name).toBe('as-lived');
      expect(plans.length).toBeGreaterThanOrEqual(3);
      expect(plans.length).toBeLessThanOrEqual(7);
    },
  );

  test('dry air is met by a humidifier, a cooler home and fewer draughts', () => {
    const names = (more: Answers) =>
      readScenario(write({ bothers: ['dry'], ...more }), 'home.yaml').plans.map(({ name }) => name);
    const others = ['as-lived', 'one-degree-less', 'draught-proofing'];
    expect(names({}).toSorted()).toEqual([...others, 'humidifier'].toSorted());
    expect(write({ bothers: ['dry'] })).toMatch(
      /keeps it near 45 %[\s\S]*kind: humidifier[^}]*target: 45 %/,
    );
    expect(names({ devices: ['humidifier'] }).toSorted()).toEqual(others.toSorted());
  });

  test('square feet and Fahrenheit are understood', () => {
    const text = write({
      ...{ rooms: 'living 350 sq ft, kitchen 150 sqft, bedroom 12 m2, bathroom 54 ft2' },
      ...{ setpoint: '68 F', bothers: ['cost'] },
    });
    expect(text).toMatch(/^ {2}setpoint: 20$/m);
    expect(text).toContain('19 °C instead of 20 °C');
    const areas = [...text.matchAll(/floor area: ([\d.]+)/g)].map(([, area]) => area);
    expect(areas).toEqual(['32.52', '13.94', '12', '5.02']);
    expect(() => readScenario(text, 'home.yaml')).not.toThrow();
  });

  test.each([
    ['37.4,-6.0', 'Europe/Madrid'],
    ['Houston', 'America/Chicago'],
    ['-27.5,153', 'Australia/Brisbane'],
  ])('%s keeps the clock of %s', (place, zone) => {
    expect(write({ place })).toContain(`timezone: ${zone}`);
  });

  test('heat is met by shutters, night air and an air conditioner, where there is none yet', () => {
    const names = (more: Answers) =>
      readScenario(write({ bothers: ['heat'], ...more }), 'home.yaml').plans.map(
        ({ name }) => name,
      );
    expect(names({})).toEqual(['as-lived', 'shutters', 'night-air', 'air-conditioner']);
    const cooled = { devices: ['air conditioner'] };
    expect(names(cooled)).toEqual(['as-lived', 'shutters', 'night-air']);
    expect(write(cooled)).toContain('\ncooling: { source: split, setpoint: 25 } # rooms to live');
    expect(write(cooled)).toContain('summer nights when nothing cools');
    expect(write({})).not.toMatch(/cooling:|nothing cools/);
  });

  test('no fan is offered beside a stove that it can make spill its smoke', () => {
    const text = (more: Answers) => write({ bothers: ['damp'], ...more });
    expect(text({})).toContain('  bathroom-fan:\n');
    expect(text({ devices: ['stove'] })).not.toContain('bathroom-fan');
  });

  test('says the schema, the weather and what is only usual', () => {
    const text = scenarioText(all({}), { ...PATHS, usual: ['title', 'kind'] });
    expect(text).toMatch(/^# yaml-language-server: \$schema=s\.json\n/);
    expect(text).toContain('# Nobody answered, so that it is as usual: title, kind.\n');
    expect(text).toContain('\nweather: w.csv\n');
  });

  test('says where it fills in what is British elsewhere', () => {
    const line = (place: string): string => /^ +build: # (.*)$/m.exec(write({ place }))![1]!;
    expect(line('Manchester')).toBe(
      'what is not said here is filled in from age and kind; roombalance check lists it',
    );
    expect(line('-36.8, 174.8')).toBe(
      'what is not said here is filled in from age and kind, walls, windows and leaks as in Britain; put in your own; roombalance check lists it',
    );
  });

  test('says whose weather it is above it', () => {
    const remark = `The weather is not that of this home. ${'It is of elsewhere. '.repeat(9).trim()}`;
    const text = scenarioText(all({}), { ...PATHS, remark });
    const [, comment = ''] = /\n\n((?:#.*\n)+)weather: w\.csv\n/.exec(text) ?? [];
    expect(comment.replaceAll(/\n# |^# /g, ' ').trim()).toBe(remark);
    for (const line of comment.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  test('has what was answered', () => {
    const text = write({
      ...{ title: 'Mill # 7', place: '-36.8, 174.8', kind: 'detached', size: '4' },
      ...{ people: '1 adult, 2 children, 1 frail adult', weekdays: 'one works at home' },
      ...{ laundry: 'living', tariff: 'day and night', electricity: '0.3 / 0.1 23:00-06:00' },
      ...{ heat: 'heat pump', setpoint: '19.5', hours: 'day and night', sensors: ['presence'] },
    });
    for (const line of [
      'title: "Mill # 7"',
      '  timezone: Pacific/Auckland',
      '  storeys: 2',
      '    main bedroom: { use: bedroom, floor area: 14, storey: 1, over: living }',
      '    - { who: adult, pattern: works at home }',
      '    - { who: frail adult }',
      '  electricity: { day: 0.3, night: 0.1, night hours: 23:00-06:00 }',
      '  source: heat pump',
      '  setpoint: 19.5',
      '  hours: always',
      '  presence: { hold on: 10 min }',
    ]) {
      expect(text.split('\n')).toContain(line);
    }
    expect(text).toMatch(/laundry dried indoors, name: laundry, room: living, .* months: Apr-Oct/);
    expect(text).not.toContain('gas');
  });
});
