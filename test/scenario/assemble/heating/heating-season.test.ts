import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createHeatingCalendar } from '../../../../src/control/schedules/heating-calendar.ts';
import { monthsOf, monthWords } from '../../../../src/scenario/month-words.ts';
import {
  needlessHeating,
  needlessMonths,
} from '../../../../src/scenario/notices/needless-heating.ts';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { usualSeason } from '../../../../src/scenario/presets/heating-season.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { runPlan } from '../../../../src/studies/run-plan.ts';
import { periodOf } from '../../../../src/weather/period-of.ts';
import { readWeather } from '../../../../src/weather/read/read-weather.ts';
import { noAutomation } from '../../../control/no-automation.ts';
import { compare, compareBand } from '../../../reference/compare.ts';
import { homeWith, readingProblems } from '../../problems-of.ts';

const prepared = (more: string, set: readonly string[] = []) =>
  preparePlan(readScenario(homeWith(more), 'h.yaml'), { plan: null, set, files: new Map() });

const seasonOf = (more: string) => prepared(more).automation.heatingSeason;
const YEAR = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'w.csv');
const FOREVER = Number.POSITIVE_INFINITY;
const OCT_APR = 0b1110_0000_1111;
const SEP_MAY = 0b1111_0001_1111;

describe('a season as it is written', () => {
  test('months across the end of the year hold whatever the weather', () => {
    expect(seasonOf('heating: { season: Oct-Apr }')).toEqual({
      months: OCT_APR,
      outdoorBelow: FOREVER,
      days: 1,
    });
    expect(seasonOf('heating: { season: [Nov, Feb-Mar] }')?.months).toBe(0b0100_0000_0110);
    expect(seasonOf('heating: { season: all year }')).toBeUndefined();
  });

  test('by outdoor temperature; what a mapping leaves out is as usual, and listed', () => {
    const plan = prepared('heating: { season: { mean below: 59 °F } }');
    expect(plan.automation.heatingSeason).toEqual({
      ...{ months: SEP_MAY, outdoorBelow: 15, days: 3 },
      ifCold: { under: 2, after: 3600 },
    });
    const listed = plan.assumed.filter(({ path }) => path.startsWith('/heating/season'));
    expect(listed.map(({ path, value, low, high }) => [path, value, low, high])).toEqual([
      ['/heating/season/months', 'Sep-May', null, null],
      ['/heating/season/over', 3, 1, 7],
      ['/heating/season/cold by', 2, 1, 4],
    ]);
    const written = 'months: all year, mean below: 15, over: 5 days';
    const season = { months: 0b1111_1111_1111, outdoorBelow: 15, days: 5 };
    expect(seasonOf(`heating: { season: { ${written}, cold by: never } }`)).toEqual(season);
    expect(seasonOf(`heating: { season: { ${written}, cold by: 3 } }`)).toEqual({
      ...season,
      ifCold: { under: 3, after: 3600 },
    });
  });

  test('mistakes are answered in words', () => {
    const said = (season: string) => readingProblems(homeWith(`heating: { season: ${season} }`));
    expect(said('Okt-Apr')).toEqual([
      'h.yaml:8:20: heating.season: expected all year, a span such as May-Sep, or month names such as [Jan, Feb], got "Okt" (did you mean "oct"?)',
    ]);
    expect(said('7')).toEqual([
      'h.yaml:8:20: heating.season: expected all year, months such as Oct-Apr, or a mapping with months, mean below, over, cold by, got 7',
    ]);
    expect(said('{ mean below: 60 }').join()).toContain(
      'heating.season.mean below: expected a temperature in °C or °F from -20 to 40, got 60',
    );
    expect(said('{ over: 2.5 }').join()).toContain(
      'heating.season.over: expected a length of time in day, a whole number from 1 to 30, got 2.5',
    );
    expect(said('{ until: May }').join()).toContain(
      'one of the keys months, mean below, over, cold by',
    );
    expect(said('{ cold by: 2 h }').join()).toContain(
      'heating.season.cold by: expected a temperature difference in K, such as 2 or "2 K", got "2 h", which is a length of time',
    );
    expect(said('{ cold by: 0 }').join()).toContain(
      'heating.season.cold by: expected a temperature difference in K above 0 and up to 20, got 0',
    );
  });
});

describe('where nobody says', () => {
  test('homes are heated as is usual, which is listed with low, high and source', () => {
    const plan = prepared('');
    expect(plan.automation.heatingSeason).toEqual({
      ...{ months: SEP_MAY, outdoorBelow: 12, days: 3 },
      ifCold: { under: 2, after: 3600 },
    });
    const limit = plan.assumed.find(({ path }) => path === '/heating/season/mean below');
    expect(limit).toMatchObject({ value: 12, low: 10, high: 15.5 });
    expect(limit?.source).toMatch(/5 to 6 months .*from memory.*15\.5 °C/);
  });

  test('a listed value that is typed moves nothing else', () => {
    const typed = prepared('', ['/heating/season/mean below=10']);
    expect(typed.automation.heatingSeason).toEqual({
      ...prepared('').automation.heatingSeason,
      outdoorBelow: 10,
    });
  });

  test('the frost guard that is kept outside the season is listed too', () => {
    const guard = prepared('').assumed.find(({ path }) => path === '/heating/frost guard');
    expect(guard).toMatchObject({ value: 5, low: 5, high: 7 });
  });

  test('a home that nothing heats has no season', () => {
    for (const more of ['heating: { source: none }', 'heating: { source: none, season: May }']) {
      const plan = prepared(more);
      expect(plan.automation.heatingSeason).toBeUndefined();
      expect(plan.usualSeason).toBeNull();
      expect(plan.assumed.some(({ path }) => path.startsWith('/heating/season'))).toBe(false);
    }
  });

  test('limits are those of the country’s degree-days, where these have one', () => {
    const at = (zone: string) => usualSeason(zone, 50, 'boiler').meanBelow;
    const limit = (where: string, source: string, expected: number, got: number) =>
      compare({
        ...{ topic: 'Presets', unit: '°C', mark: 'published', source, expected, got },
        what: `heating limit of the outdoor mean, ${where}`,
        ...{ tolerance: { absolute: 0 }, because: 'a limit is carried over as it is stated' },
      });
    limit('Germany', 'Destatis, what are heating degree-days', 15, at('Europe/Berlin').value);
    limit('Austria', 'CCCA glossary, heating degree-days 20/12', 12, at('Europe/Vienna').value);
    // 65 °F, as far up as it may be.
    expect(at('America/Chicago').high).toBe(18.3);
  });

  test('a British season is as long as people and assessors say', () => {
    const calendar = createHeatingCalendar(
      { ...noAutomation(2), heatingSeason: { months: SEP_MAY, outdoorBelow: 12, days: 3 } },
      prepared('').household,
      3600,
    );
    const outdoor = Float64Array.of(0);
    const nobody = new Float64Array(2);
    let heated = 0;
    for (let day = 0; day < 365; day++) {
      calendar.beginDay(YEAR.start + day * 86_400);
      for (let hour = 0; hour < 24; hour++) {
        outdoor[0] = YEAR.temperature[day * 24 + hour]!;
        calendar.step(hour, { outdoor, felt: nobody }, nobody, nobody);
      }
      heated += calendar.today[0]!;
    }
    compareBand({
      ...{ topic: 'Presets', unit: 'day', mark: 'from memory', low: 152, high: 243, got: heated },
      what: 'heated days of a British home in the demonstration year, which is cool',
      source:
        'English Energy Follow-Up Survey of 2011: 5 to 6 months as people say; SAP 10.2: October to May',
      because: 'between five months and the eight of the assessment',
    });
  });

  test('by country and source', () => {
    const at = (zone: string | undefined, source: 'boiler' | 'heat pump' | 'direct electric') =>
      usualSeason(zone, 50, source).meanBelow;
    expect(at(undefined, 'boiler').value).toBe(15);
    expect(at('Europe/London', 'heat pump').value).toBe(13);
    expect(at('Europe/London', 'direct electric')).toMatchObject({ value: 11, low: 9, high: 14.5 });
    expect(at('Europe/London', 'direct electric').source).toMatch(/1 K less for electric heaters/);
  });

  const JULY = 1 << 6;
  const JANUARY = 1;
  test('never heats a July of the north, nor a January of the south', () => {
    for (const zone of [
      'Europe/London',
      'Europe/Rome',
      'Europe/Oslo',
      'America/Denver',
      undefined,
    ]) {
      for (const source of ['boiler', 'direct electric', 'heat pump', 'district heat'] as const) {
        const north = usualSeason(zone, 50, source).months;
        const south = usualSeason(zone, -40, source).months;
        expect([north & JULY, north & JANUARY]).toEqual([0, JANUARY]);
        expect([south & JULY, south & JANUARY]).toEqual([JULY, 0]);
      }
    }
  });
});

test('a stove whose evenings nobody gave burns in none of summer, and can be typed as it is listed', () => {
  const device = 'devices: { fire: { kind: stove, room: living } }';
  const burns = (latitude: number) => {
    const text = homeWith(device).replace('latitude: 54', `latitude: ${latitude}`);
    const plan = preparePlan(readScenario(text, 'h.yaml'), {
      ...{ plan: null, set: [], files: new Map() },
    });
    const { by } = plan.automation.deviceControls[0]!;
    const { value } = plan.assumed.find(({ path }) => path === '/devices/fire/burns')!;
    return { by, value };
  };
  const north = burns(54);
  expect(north.by).toMatchObject({
    schedule: { spells: [{ months: OCT_APR, from: 1080, to: 1320, value: 1 }] },
  });
  expect(burns(-40).by).toMatchObject({ schedule: { spells: [{ months: 0b0011_1111_1000 }] } });
  const typed = prepared(device, [`/devices/fire/burns=${north.value}`]);
  expect(typed.automation.deviceControls[0]!.by).toEqual(north.by);
});

test('months in words are read as what they say', () => {
  const words = ['all year', 'Oct-Apr', 'May', 'Jan, Mar-Apr, Dec', 'Feb, Nov'];
  const bits = (text: string) => monthsOf(text.split(', '));
  expect(words.map((text) => monthWords(bits(text)))).toEqual([
    ...['all year', 'Oct-Apr', 'May', 'Mar-Apr, Dec-Jan', 'Feb, Nov'],
  ]);
});

describe('a holiday setback', () => {
  const HOLIDAYS = 'household: { holidays: [{ from: 12-27, to: 01-02 }] }';

  test('holds on the holidays of the household, or on dates of its own', () => {
    expect(prepared(`heating: { holiday setback: 12 }\n${HOLIDAYS}`).automation).toMatchObject({
      holidaySetback: { setpoint: 12, dates: null },
    });
    const dated =
      'heating: { holiday setback: { setpoint: 54 °F, dates: [{ from: 07-01, to: 07-09 }] } }';
    const { setpoint, dates } = prepared(dated).automation.holidaySetback!;
    expect(setpoint).toBeCloseTo(12.22, 2);
    expect(dates).toEqual([{ from: 701, to: 709 }]);
    expect(prepared(HOLIDAYS).automation.holidaySetback).toBeUndefined();
  });

  test('mistakes are answered in words', () => {
    const said = (more: string) => readingProblems(homeWith(more));
    expect(said('heating: { holiday setback: 12 }')).toEqual([
      'h.yaml:8:29: heating.holiday setback: expected dates, or holidays of the household, got a setback that never holds',
    ]);
    expect(said(`heating: { holiday setback: 3 }\n${HOLIDAYS}`)).toEqual([
      'h.yaml:8:29: heating.holiday setback: expected a setback of the frost guard (5 °C) or more, got 3',
    ]);
    expect(
      said(
        'heating: { holiday setback: { setpoint: 12, dates: [{ from: 02-30, to: 03-01 }] } }',
      ).join(),
    ).toContain('holiday setback.dates #1.from: expected a month and day such as "01-31"');
    expect(
      said('heating: { holiday setback: { dates: [{ from: 02-01, to: 03-01 }] } }').join(),
    ).toContain('holiday setback.setpoint: expected ');
  });
});

describe('heating in months with no need', () => {
  const weather = YEAR;
  const needless = (more: string): number => {
    const plan = prepared(more);
    return needlessMonths(plan, weather, periodOf(weather, null, null, plan.household.clock));
  };

  test('is told by month, by what is usual here', () => {
    expect(monthWords(needless('heating: { season: all year }'))).toBe('Jun-Aug');
    expect(monthWords(needless('heating: { season: Jul-Oct }'))).toBe('Jul-Aug');
    expect(needless('heating: { season: Oct-Apr }')).toBe(0);
    expect(needless('')).toBe(0);
    expect(needless('heating: { source: none }')).toBe(0);
    // The demonstration's July has a mean of 14.9 °C by its recipe.
    expect(needless('heating: { season: { months: all year, mean below: 10 } }')).toBe(0);
    // Warmer on the mean than any limit that is usual; hand-warmed by 10 K, May has 20 °C.
    const warm = { ...weather, temperature: weather.temperature.map((t) => t + 10) };
    const plan = prepared('heating: { season: Apr-May }');
    const period = periodOf(weather, null, null, plan.household.clock);
    expect(monthWords(needlessMonths(plan, warm, period))).toBe('Apr-May');
  });

  test('by months of the household’s clock', () => {
    // Fifteen days, half a month, which begin at midnight in Auckland: noon of the last of June in UTC.
    const text = homeWith('heating: { season: all year }').replace(
      'Europe/London',
      'Pacific/Auckland',
    );
    const plan = preparePlan(readScenario(text, 'h.yaml'), {
      ...{ plan: null, set: [], files: new Map() },
    });
    const period = periodOf(weather, '07-01', '07-15', plan.household.clock);
    expect(monthWords(needlessMonths(plan, weather, period))).toBe('Jul');
  });

  test('in one line', () => {
    const plan = prepared('heating: { season: all year }');
    expect(needlessHeating(plan, monthsOf('Jun-Aug'))).toEqual([
      {
        id: 'heating-without-need',
        text: 'Heating is on in Jun-Aug, months with no need of it here (usual: Sep-May, outdoor mean below 12 °C); heating.season ends it.',
      },
    ]);
    expect(needlessHeating(plan, 0)).toEqual([]);
  });

  test('a run says it where heat was given then', () => {
    const idsOf = (more: string) => {
      const plan = prepared(`period: { from: 06-01, to: 06-30 }\n${more}`);
      const period = periodOf(weather, '06-01', '06-30', plan.household.clock);
      return runPlan({ plan, weather, period }, [], 1).measures.cautions.map(({ id }) => id);
    };
    expect(idsOf('heating: { season: all year, setpoint: 21 }')).toContain('heating-without-need');
    expect(idsOf('heating: { season: all year, setpoint: 6 }')).not.toContain(
      'heating-without-need',
    );
    expect(idsOf('heating: { setpoint: 21 }')).not.toContain('heating-without-need');
  });
});
