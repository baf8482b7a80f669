import { describe, expect, test } from 'vitest';
import { coldSpotHours, hoursOutsideBands } from '../../../src/measures/comfort/room-hours.ts';
import { waterTaken } from '../../../src/measures/energy/device-totals.ts';
import { figureTable } from '../../../src/report/page/figure-table.ts';
import { writtenValues } from '../../../src/report/page/how-sure.ts';
import { html } from '../../../src/report/page/html.ts';
import { moneyText, optionName } from '../../../src/report/page/option-words.ts';
import { pathInWords } from '../../../src/report/page/path-in-words.ts';
import { answerMarkup } from '../../../src/report/page/section.ts';
import type { Option } from '../../../src/studies/options.ts';
import { somePlan } from '../../studies/some-plan.ts';
import { all, readMarkup, tableOf, textOf } from './read-markup.ts';

describe('a pointer in words', () => {
  const home = {
    home: { rooms: { den: { 'floor area': 9, panes: [{ area: 1 }, { name: 'bay' }] } } },
    household: {
      people: [{ who: 'adult' }, { name: 'first parent', who: 'adult' }],
      activities: [{ what: 'shower' }, { what: 'bath', water: 2 }, 'plants'],
    },
    doorways: [{ between: ['den', 'hall'] }],
    'a/b': { 'c~d': 1 },
  };

  test.each([
    ['/household/activities/1/water', 'activities, bath, water'],
    ['/household/people/0/heat', 'people, adult, heat'],
    ['/household/people/1/heat', 'people, first parent, heat'],
    ['/household/activities/2/water', 'activities, number 3, water'],
    ['/household/activities/7/water', 'activities, number 8, water'],
    ['/home/rooms/den/panes/0/area', 'rooms, den, panes, number 1, area'],
    ['/home/rooms/den/panes/1/area', 'rooms, den, panes, bay, area'],
    ['/home/leakage/ach50', 'leakage, ach50'],
    ['/home/height', 'home, height'],
    ['/doorways/0/width', 'doorways, den and hall, width'],
    ['/a~1b/c~0d', 'a/b, c~d'],
    ['/heating/setpoint', 'heating, setpoint'],
    ['', ''],
  ])('%s', (pointer, words) => expect(pathInWords(pointer, home)).toBe(words));

  test('of a scenario that has nothing there is the steps themselves', () => {
    expect(pathInWords('/home/rooms/den/height', null)).toBe('rooms, den, height');
  });
});

test('values are counted where a person wrote them, names and plans left aside', () => {
  const written = { site: { latitude: 54, storeys: 2 }, rooms: { den: { area: 9 } }, hours: ['a'] };
  expect(writtenValues(written)).toBe(4);
  expect(
    writtenValues({
      ...written,
      ...{ title: 'x', weather: 'w.csv', invented: true, doubts: { '/a': [1, 2] } },
      plans: { now: { change: { heating: { setpoint: 18 } } } },
    }),
  ).toBe(4);
  expect(writtenValues({ gate: null, empty: {}, none: [] })).toBe(1);
  expect(writtenValues(null)).toBe(0);
  expect(writtenValues('text')).toBe(0);
});

test('an answer is a paragraph after its first sentence, then each list under its opening, escaped', () => {
  const trades = [{ opening: 'Two', trades: ['a < b', 'c'] }];
  const page = (...sentences: string[]) =>
    answerMarkup({ sentences, trades }).markup.replaceAll('\n', '');
  const list = '<p>Two:</p><ul><li>a &lt; b</li><li>c</li></ul>';
  expect(page('One.', 'More.', 'Yet more.')).toBe(`<p>More. Yet more.</p>${list}`);
  expect(page('One.')).toBe(list);
  expect(answerMarkup({ sentences: [], trades: [] }).markup.trim()).toBe('');
});

describe('a table of figures', () => {
  const table = readMarkup(
    figureTable({
      caption: 'a "caption" <b>',
      heads: ['room', 'hours [h]', 'why'],
      rows: [
        [html`<b>den</b>`, '12', 'damp & cold'],
        ['nook', 0, null],
      ],
      words: [2],
    }).markup,
  );

  test('says what it is, and its rows what they are about', () => {
    expect(tableOf(table, /^a "caption" <b>$/)).toEqual([
      ['room', 'hours [h]', 'why'],
      ['den', '12', 'damp & cold'],
      ['nook', '0', ''],
    ]);
    const scopes = all(table, 'th').map(({ attributes }) => attributes['scope']);
    expect(scopes).toEqual(['col', 'col', 'col', 'row', 'row']);
  });

  test('scrolls by keyboard under its own name', () => {
    const [region] = all(table, 'div');
    expect(region!.attributes).toMatchObject({
      ...{ role: 'region', tabindex: '0', 'aria-label': 'a "caption" <b>' },
    });
  });

  test('sets figures to the right and words not', () => {
    const kinds = all(table, 'td').map(({ attributes }) => attributes['class']);
    expect(kinds).toEqual(['figure', 'word', 'figure', 'word']);
  });

  test('without a row is still a table', () => {
    const empty = readMarkup(figureTable({ caption: 'none', heads: ['a'], rows: [] }).markup);
    expect(tableOf(empty, /none/)).toEqual([['a']]);
  });
});

describe('an option', () => {
  const named = (over: Partial<Option>): string =>
    textOf(
      readMarkup(
        optionName({ name: 'a & b', description: '', origin: 'plan', ...over } as Option).markup,
      ),
    );

  test('says where it comes from', () => {
    expect(named({})).toBe('a & b');
    expect(named({ description: 'less <heat>' })).toBe('a & bless <heat>'); // a line break lies between
    expect(named({ origin: 'baseline' })).toBe('a & b (nothing done)');
    expect(named({ origin: 'proposed' })).toBe('a & b (proposed)');
    expect(named({ origin: 'as safe' })).toBe('a & b (mould risk as low as with the device)');
  });

  const figures = somePlan('dry', {
    den: {
      outside: { humidity_high: 30, humidity_low: 2, temperature_low: 400, co2_high: 1000 },
      occupied: { temperature_low: 5, temperature_high: 1, humidity_high: 7 },
      over: { cold_spot_hours_above_80_pct: 40 },
    },
    bath: { outside: { humidity_high: 10 }, over: { cold_spot_hours_above_80_pct: 2 } },
  });

  test('is added up over its rooms: cold only with somebody in, damp at any time', () => {
    expect(hoursOutsideBands(figures)).toBe(30 + 2 + 5 + 1 + 10);
    expect(coldSpotHours(figures)).toBe(42);
  });

  test('takes water out by devices that dry, and none by those that do not', () => {
    const device = {
      electricity_kwh: 0,
      electricity_money: null,
      fuel_kwh: 0,
      heat_kwh: 0,
      hours: 0,
      starts: 0,
      emptied: 0,
      hours_4_pa_below_outdoors: null,
    };
    const detail = {
      drier: { ...device, water_kg: -12.5 },
      kettle: { ...device, water_kg: 4 },
      other: { ...device, water_kg: -1 },
    };
    expect(waterTaken({ ...figures, devices: { ...figures.devices, detail } })).toBe(13.5);
    expect(waterTaken(figures)).toBe(0);
  });

  test('costs money of its currency', () => {
    expect(moneyText(12.345, figures)).toBe('12.35 GBP');
    expect(moneyText(-0.001, figures)).toBe('0.00 GBP');
  });
});
