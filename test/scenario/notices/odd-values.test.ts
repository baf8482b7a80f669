import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { tariffDates } from '../../../src/scenario/notices/tariff-dates.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

/** What is asked about a home, by the id of the question. */
function asked(id: string, more: string, files: Record<string, string> = {}): string[] {
  const scenario = readOnce(homeWith(more), 'h.yaml');
  const given = new Map(Object.entries(files));
  const { cautions } = preparePlan(scenario, { plan: null, set: [], files: given });
  return cautions.filter((caution) => caution.id === id).map(({ text }) => text);
}

describe('heating that is set above what counts as fine', () => {
  const infant = (heating: string) =>
    asked(
      'heats-past-band',
      `heating: ${heating}\nhousehold: { people: [{ who: infant, sleeps in: bedroom }] }`,
    );

  test('is said, by room and with both, where an infant sleeps', () => {
    expect(infant('{ setpoint: 21, hours: always }')).toEqual([
      'The heating itself makes rooms warmer than counts as fine there: bedroom (set to 21 °C, ' +
        'fine is 16 to 20 °C). Hours too warm in them come from that.',
    ]);
  });

  test('is not at its edge, nor anywhere at usual settings', () => {
    expect(infant('{ setpoint: 20, hours: always }')).toEqual([]);
    expect(asked('heats-past-band', 'heating: { setpoint: 21 }')).toEqual([]);
  });
});

describe('a price that nobody gave', () => {
  const electricity = (money: string): unknown => {
    const scenario = readOnce(homeWith(`money: { ${money} }`), 'h.yaml');
    const { prices } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
    return prices.fuels.electricity?.tariff;
  };

  test('is of the size of a bill in the currency of the home', () => {
    expect(electricity('currency: GBP')).toEqual({ by: 'flat', price: 0.27 });
    // Some 25 crowns and 150 yen stand for a euro.
    expect(electricity('currency: CZK')).toEqual({ by: 'flat', price: 6.75 });
    expect(electricity('currency: JPY')).toEqual({ by: 'flat', price: 40.5 });
    expect(electricity('currency: JPY, electricity: 31')).toEqual({ by: 'flat', price: 31 });
  });

  test('is asked about beside prices that were given', () => {
    const assumed = (money: string) => asked('price-assumed', money);
    expect(assumed('money: { currency: GBP, electricity: 0.3 }')).toEqual([
      'Nobody gave a price of gas: 0.07 GBP a kWh is invented, and what the plan costs beside others rests on it. Give money.gas.',
    ]);
    // Of a home without any it is told at once.
    expect(assumed('')).toEqual([]);
    const all = (money: string) => asked('all-prices-assumed', money);
    expect(all('')).toEqual([
      'Nobody gave a price: 0.07 for gas and 0.27 for electricity (money a kWh) are invented, and all sums rest on that. Write yours under money.',
    ]);
    expect(all('money: { currency: CZK }').join()).toContain('1.75 for gas and 6.75 for');
    expect(all('money: { gas: 0.08 }')).toEqual([]);
    const hours = '{ day: 0.3, night: 0.1, night hours: "00:30-04:30" }';
    expect(assumed(`money: { currency: GBP, gas: 0.08, electricity: ${hours} }`)).toEqual([]);
    expect(assumed('money: { gas: 0.08, electricity: { price: 0.3, standing: 0.5 } }')).toEqual([]);
  });

  test('is asked about in a currency that is not known, and only what nobody gave', () => {
    const unknown = (money: string) => asked('price-unknown', `money: { ${money} }`);
    expect(unknown('currency: Taler, electricity: 31')).toEqual([
      'Nobody gave a price of gas, and what Taler is worth is not known: 0.07 Taler a kWh, as in ' +
        'pounds or euros, makes sums of money meaningless. Give money.gas.',
    ]);
    expect(unknown('currency: Taler, gas: { price: 8 }, electricity: 31')).toEqual([]);
    expect(unknown('currency: Taler')).toHaveLength(2);
    expect(unknown('currency: eur')).toEqual([]);
  });
});

describe('a price that looks like hundredths', () => {
  const price = (money: string, files?: Record<string, string>) =>
    asked('odd-price', `money: { ${money} }`, files);

  test('is asked about, in its currency', () => {
    expect(price('currency: GBP, electricity: 27')).toEqual([
      'A kWh of electricity costs 27 GBP. If that is hundredths, write 0.27.',
    ]);
    expect(price('currency: EUR, gas: 7.5')).toEqual([
      'A kWh of gas costs 7.5 EUR. If that is hundredths, write 0.075.',
    ]);
    expect(price('electricity: { price: 0.27, standing: 53 }')).toEqual([
      'Standing for electricity costs 53 money a day. If that is hundredths, write 0.53.',
    ]);
  });

  test('also by day and night, and in a file', () => {
    expect(
      price('currency: GBP, electricity: { day: 27, night: 12, night hours: "00:00-07:00" }'),
    ).toEqual(['A kWh of electricity costs 27 GBP by day. If that is hundredths, write 0.27.']);
    const csv = 'time,price\n2024-01-01T00:00Z,20\n2024-01-01T00:30Z,30\n';
    expect(price('currency: GBP, electricity: { prices: p.csv }', { 'p.csv': csv })).toEqual([
      'A kWh of electricity costs 25 GBP on the mean. If its file holds hundredths, divide them.',
    ]);
  });

  test('passes where a kWh costs that much in the currency, and where it is a usual price', () => {
    expect(price('currency: JPY, electricity: 27')).toEqual([]);
    expect(price('currency: pence, electricity: 27')).toEqual([]);
    expect(price('currency: GBP, electricity: { price: 0.6, standing: 0.9 }')).toEqual([]);
    expect(price('')).toEqual([]);
  });
});

test('a floor too large for a room is asked about', () => {
  const floor = (area: number | string) =>
    asked('odd-area', '').concat(
      preparePlan(
        readOnce(homeWith('').replace('floor area: 16', `floor area: ${area}`), 'h.yaml'),
        { plan: null, set: [], files: new Map() },
      ).cautions.flatMap(({ id, text }) => (id === 'odd-area' ? [text] : [])),
    );
  expect(floor(340)).toEqual([
    'The floor of living has 340 m2, more than most whole homes have: is that one room, and in m2?',
  ]);
  expect(floor(120)).toEqual([]);
  // 1300 ft2 are 120.8 m2.
  expect(floor('1300 ft2')).toHaveLength(1);
});

test('the window assumed for a large floor leaves room for its wall', () => {
  const text = homeWith('').replace('floor area: 16', 'floor area: 340');
  const plan = preparePlan(readOnce(text, 'h.yaml'), { plan: null, set: [], files: new Map() });
  const pane = plan.assumed.find(({ path }) => path === '/home/rooms/living/panes/0/area');
  // Walls of 1.4 sides of the root of 340 m2 and 2.4 m: 62.0 m2, of which four fifths.
  expect(pane).toMatchObject({ value: 50 });
  expect(pane?.high).toBeLessThan(62);
});

describe('a setting at which hardly anybody lives', () => {
  test('of heating', () => {
    const set = (heating: string) => asked('odd-setpoint', `heating: ${heating}`);
    expect(set('{ setpoint: 30 }')).toEqual([
      'Heating is set to 30 °C in living, bedroom: hardly anybody lives so warm, and every kelvin costs.',
    ]);
    expect(
      set('{ rooms: { bedroom: { setpoint: [{ from: "06:00", to: "07:00", setpoint: 27 }] } } }'),
    ).toEqual([
      'Heating is set to 27 °C in bedroom: hardly anybody lives so warm, and every kelvin costs.',
    ]);
    expect(set('{ setpoint: 26 }')).toEqual([]);
  });

  test('of cooling', () => {
    const set = (setpoint: number) =>
      asked(
        'odd-setpoint',
        `heating: { setpoint: 15 }\ncooling: { setpoint: ${setpoint}, rooms: [living] }`,
      );
    expect(set(16)).toEqual([
      'Cooling is set to 16 °C in living: hardly anybody lives so cool, and every kelvin costs.',
    ]);
    expect(set(18)).toEqual([]);
  });
});

describe('a room that nothing heats although something stands there to', () => {
  const nothing = (more: string) => asked('nothing-heats', more);
  const withEmitter = (more: string) => {
    const text = homeWith(more).replace(
      'floor area: 12',
      'floor area: 12, emitter: { power: 900 }',
    );
    const { cautions } = preparePlan(readOnce(text, 'h.yaml'), {
      ...{ plan: null, set: [], files: new Map() },
    });
    return cautions.flatMap(({ id, text: words }) => (id === 'nothing-heats' ? [words] : []));
  };
  const NEVER =
    'Nothing heats bedroom although something stands there to heat it: its setting never rises above the frost guard of 5 °C.';

  test('because its setting never asks', () => {
    expect(nothing('heating: { rooms: { bedroom: { setpoint: 5 } } }')).toEqual([NEVER]);
    expect(nothing('heating: { rooms: { bedroom: { hours: never } } }')).toEqual([NEVER]);
    expect(withEmitter('heating: { rooms: { bedroom: off } }')).toEqual([NEVER]);
  });

  test('because nothing makes heat', () => {
    expect(withEmitter('heating: { source: none }')).toEqual([
      'Nothing heats bedroom although something stands there to heat it: the heating has no source.',
    ]);
  });

  test('passes where it is switched off in so many words, heated, or set by a rule', () => {
    expect(nothing('heating: { rooms: { bedroom: off } }')).toEqual([]);
    expect(nothing('heating: { source: none }')).toEqual([]);
    expect(withEmitter('')).toEqual([]);
    expect(
      nothing(
        'heating: { rooms: { bedroom: { hours: never } } }\nsensors: { rooms: { bedroom: { temperature: {} } } }\nrules: [{ name: warm, when: [{ room: bedroom, reading: temperature, under: 16 }], response: [{ setpoint: 18, room: bedroom }] }]',
      ),
    ).toEqual([]);
  });
});

describe('prices of another time than the weather', () => {
  const START = Date.UTC(2024, 0, 1) / 1000;
  const series = (days: number, start = START) => ({
    currency: 'GBP',
    fuels: {
      electricity: {
        tariff: { by: 'series', start, step: 3600, prices: new Float64Array(days * 24) } as const,
        standing: 0,
        carbon: 0,
      },
    },
  });
  const year = { start: Date.UTC(2023, 0, 1) / 1000, hours: 8760 };
  const said = (prices: ReturnType<typeof series>, period = year, periodic = false) =>
    tariffDates(prices, { periodic }, period).map(({ id, text }) => `${id}: ${text}`);

  test('a year of them is used by date', () => {
    expect(said(series(366))).toEqual([
      'tariff-year: Prices of electricity are of 2024-01-01 to 2024-12-31, the weather is of 2023: each hour takes the price of its date and time of day, whatever the weekday.',
    ]);
    expect(said(series(366), year, true).join()).toContain('the weather is of a typical year:');
  });

  test('so are those of a part of the period, and the weather’s year is that of its middle', () => {
    const autumn = { start: Date.UTC(2024, 9, 1) / 1000, hours: 8760 };
    expect(said(series(366), autumn).join()).toContain('the weather is of 2025:');
    const winter = { start: Date.UTC(2023, 11, 20) / 1000, hours: 30 * 24 };
    const before = series(365, Date.UTC(2022, 0, 1) / 1000);
    expect(said(before, winter)).toEqual([
      'tariff-year: Prices of electricity are of 2022-01-01 to 2022-12-31, the weather is of 2024: each hour takes the price of its date and time of day, whatever the weekday.',
    ]);
    // Two days at the ends together may lack, no more.
    const start = START + 86_400;
    expect(said(series(364, start), { start: START, hours: 366 * 24 })).toEqual([]);
    expect(said(series(363, start), { start: START, hours: 366 * 24 })).toHaveLength(1);
  });

  test('fewer repeat', () => {
    expect(said(series(31))).toEqual([
      'tariff-repeats: Prices of electricity cover 31 days from 2024-01-01 and repeat through the period, whatever its dates.',
    ]);
    expect(said(series(2)).join()).toContain('cover 2 days from');
  });

  test('a run says so too', () => {
    const weather = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'w.csv');
    const csv = 'time,price\n2024-01-01T00:00Z,0.2\n2024-01-01T01:00Z,0.3\n';
    const text = homeWith('money: { electricity: { prices: p.csv } }');
    const plan = preparePlan(readOnce(text, 'h.yaml'), {
      ...{ plan: null, set: [], files: new Map([['p.csv', csv]]) },
    });
    const period = { start: weather.start, hours: 72 };
    const { cautions } = runPlan({ plan, weather, period }, [], 1).measures;
    expect(cautions[0]).toEqual({
      id: 'tariff-repeats',
      text: 'Prices of electricity cover 2 h from 2024-01-01 and repeat through the period, whatever its dates.',
    });
  });

  test('those of the weather’s own time pass, be they an hour off by the clock', () => {
    expect(said(series(366), { start: START, hours: 8784 })).toEqual([]);
    expect(said(series(366, START - 3600), { start: START, hours: 8784 })).toEqual([]);
  });
});

describe('blinds that close in the sun', () => {
  const blinds = (more: string, rest = 'heating: { source: direct electric }') =>
    asked(
      'blinds-in-winter',
      `${rest}\nblinds: [{ rooms: all, kind: roller shutter, sun over: 120${more} }]`,
    );

  test('of winter too are asked about, in heated rooms', () => {
    expect(blinds('')).toEqual([
      'Blinds of living and bedroom close in the sun of winter too, which helps to heat. Is that meant, or "temperature over", or months in their "hours"?',
    ]);
    expect(blinds('', 'heating: { source: none }')).toEqual([]);
    expect(
      blinds('', 'heating: { source: direct electric }\nperiod: { from: 06-01, to: 08-31 }'),
    ).toEqual([]);
    expect(
      blinds('', 'heating: { source: direct electric }\nperiod: { from: 06-01 }'),
    ).toHaveLength(1);
    expect(
      blinds('', 'heating: { source: direct electric }\nperiod: { from: 11-01, to: 03-31 }'),
    ).toHaveLength(1);
  });

  test('only when it is warm, in summer, or at night are not', () => {
    expect(blinds(', temperature over: 23')).toEqual([]);
    expect(blinds(', hours: { months: May-Sep, from: "08:00", to: "20:00" }')).toEqual([]);
    expect(blinds(', hours: "20:00-07:00"')).toEqual([]);
    expect(blinds(', hours: "08:00-20:00"')).toHaveLength(1);
  });
});
