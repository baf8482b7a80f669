import { describe, expect, test } from 'vitest';
import type { HomeFit } from '../../../src/fit/fit-home.ts';
import type { FittedParameter } from '../../../src/fit/stage/fit-stage.ts';
import type { Foreseen } from '../../../src/fit/withheld.ts';
import { fitFigures } from '../../../src/report/fit-figures.ts';
import { tradesWith, wouldTell } from '../../../src/report/tables/fit-kinds.ts';
import { fitText } from '../../../src/report/tables/fit-text.ts';
import { fitOpening, fitWords } from '../../../src/report/tables/fit-words.ts';
import { foreseenText } from '../../../src/report/tables/foreseen-text.ts';
import { rangeDecimals } from '../../../src/report/tables/range-decimals.ts';
import type { Adjustable } from '../../../src/scenario/edits/adjustables.ts';
import type { FitKind } from '../../../src/scenario/edits/fit-places.ts';
import type { Stated } from '../../../src/scenario/edits/stated-for-certain.ts';

/** A fit of which only its words are asked. */
function fitOf(parameters: readonly unknown[], more: Partial<HomeFit> = {}): HomeFit {
  const stages = [{ group: 'water', channels: [], fit: { parameters } }];
  const bare = {
    ...{ stages, foreseen: [], cautions: [], logged: [], stated: [] },
    ...{ typicalWeather: false, title: 'Home', runs: 9, skilled: true, reliable: true },
  };
  return { ...bare, division: { hours: 1000, withheld: 800 }, ...more } as unknown as HomeFit;
}

const WRONG = { skilled: false, reliable: false };

const parameter = (
  name: string,
  value: number,
  before: number,
  kind: FitKind = 'leakage',
): Partial<FittedParameter> => ({
  adjustable: { name, kind, unit: '', value, before, places: [] } as unknown as Adjustable,
  ...{ value: 0.02, low: 0.01, high: 0.04, told: 'yes', mostLike: null },
});

test('what is taken only where somebody gives it was not assumed', () => {
  const both = [parameter('windows left open when mild', 0.01, 0), parameter('sun', 0.1, 0.1)];
  expect(fitWords(fitOf(both))).toEqual([
    {
      head: 'What your log tells',
      items: [
        'windows left open when mild: 0.020 (0.010 to 0.040); nothing was said of it',
        'sun: 0.020 (0.010 to 0.040); 0.100 was assumed',
      ],
    },
  ]);
});

test('less than anybody has of what nobody gave is as good as none, and not strange', () => {
  const none = (high: number) => ({
    ...{ value: 0.0002, low: 0.0001, high, told: 'yes', place: -4, mostLike: null },
    adjustable: {
      ...{ name: 'windows left open when mild', unit: '', value: 0.01, before: 0, places: [] },
      ...{ low: 0.001, high: 0.1 },
    },
  });
  expect(fitWords(fitOf([none(0.0009)]))).toEqual([
    {
      head: 'What your log tells',
      items: [
        'windows left open when mild: as good as none (0.000900 at most); nothing was said of it',
      ],
    },
  ]);
  expect(fitWords(fitOf([none(0.002)]))[0]!.items[0]).toContain('0.00020 (0.00010 to 0.00200)');
});

test('the parts of a factor of heat loss are named, and what ranges rest on', () => {
  const places = ['wall', 'window'].map((part) => ({ path: `/${part}`, part }));
  const loss = parameter('heat loss factor', 1, 1, 'heat loss');
  Object.assign(loss.adjustable!, { places });
  const leaks = parameter('air leakage at 50 Pa', 10, 10, 'leakage at 50 Pa');
  const stated: Stated[] = [
    { kind: 'U-value', name: 'roof U-value', words: 'roof U-value (0.300 W/m2K)' },
    { kind: 'window shading', name: 'window shading', words: 'window shading (0.300)' },
  ];
  const items = fitWords(fitOf([loss, leaks], { stated }))[0]!.items;
  expect(items[0]).toMatch(/^heat loss factor \(of wall and window\): 0\.020 /);
  expect(items[2]).toBe(
    'Ranges hold as far as what the scenario states is so: roof U-value (0.300 W/m2K) and window shading (0.300). It was not looked for, and air leakage at 50 Pa would come out otherwise with another roof U-value; put it under "doubts" where it is not certain.',
  );
  expect(fitWords(fitOf([loss], { stated }))[0]!.items[1]).toContain('It was not looked for; put');
  expect(fitWords(fitOf([loss]))[0]!.items).toHaveLength(1);
  // Leakage that the log does not tell rests on nothing, and nothing told has no range that does.
  const untold = { ...leaks, told: 'no' as const };
  expect(fitWords(fitOf([loss, untold], { stated }))[0]!.items[1]).toContain('looked for; put');
  const tied = { ...leaks, told: 'together' as const };
  expect(fitWords(fitOf([tied], { stated })).map(({ head }) => head)).not.toContain(
    'What your log tells',
  );
});

test('what a value may stand for leaves or holds the same as it does', () => {
  const among = (kind: FitKind) =>
    (['U-value', 'usual airing', 'deep moisture', 'heat capacity'] as const).filter((other) =>
      tradesWith(kind, other),
    );
  expect(among('moisture buffer')).toEqual(['usual airing', 'deep moisture']);
  expect(among('steady heat')).toEqual(['U-value', 'usual airing', 'heat capacity']);
  expect(among('leakage')).toHaveLength(4);
  expect(among('breath')).toEqual(['usual airing']);
});

test('values have the decimals that their ranges can tell', () => {
  const decimals = (low: number, high: number) => rangeDecimals({ low, high });
  expect(decimals(6.62, 84.6)).toBe(0); // 3.9 is a twentieth
  expect(decimals(5.95, 8.15)).toBe(1); // 0.11
  expect(decimals(0.949, 1.3)).toBe(2); // 0.018
  expect(decimals(0.0159, 0.0217)).toBe(4); // 0.00029
  expect(decimals(1000, 9000)).toBe(0);
  expect(decimals(3, 3)).toBe(6);
});

describe('a fit of a home that is not understood', () => {
  const told = { ...parameter('sun', 0.1, 0.1) };
  const tied = { ...parameter('air leakage', 5, 5), told: 'together' as const };
  const untold = { ...parameter('steady heat (den)', 5, 0), told: 'no' as const };
  const skill = (of: number, alone: number) => {
    const channel = { name: 'temperature', room: 'den', unit: 'K' };
    const judgement = { hours: 0, rmse: 0, guesses: {}, band: 0, inside: 0, skill: of };
    const one = { channel, judgement, alone: { skill: alone }, guideline14: null };
    return { ...one, from: 'weather alone' } as unknown as Foreseen;
  };
  const unlike: Partial<HomeFit> = { ...WRONG, foreseen: [skill(0.5, -1), skill(0.5, -1)] };

  test('has no findings: values stand without ranges, under a heading that says so', () => {
    const [first, second] = fitWords(fitOf([told, tied, untold], unlike));
    expect(first).toEqual({
      head: 'Where the search ended; not findings, not to be relied on',
      items: ['sun: 0.020; 0.100 was assumed', 'air leakage: 0.020; 5.00 was assumed'],
    });
    expect(second!.head).toBe('Not told by your log');
    const heads = fitWords(fitOf([told], unlike)).map(({ head }) => head);
    expect(heads).not.toContain('What your log tells');
  });

  test('says so in its opening, be it habits that it foresees or nothing much', () => {
    expect(fitOpening(fitOf([], unlike))).toMatch(/its values should not be relied on\.$/);
    const few = [skill(0.5, 0.5), skill(-1, -1), skill(-1, -1)];
    expect(fitOpening(fitOf([], { ...WRONG, foreseen: few }))).toMatch(
      /in 1 of 3 cases: the home itself is not understood, and its values should not be relied on\.$/,
    );
  });

  test('has no range in its table and is unreliable in figures', () => {
    const fit = fitOf([told, untold], unlike);
    const stages = fit.stages.map((stage) => ({ ...stage, fit: { ...stage.fit, left: [] } }));
    const whole = { ...fit, stages } as unknown as HomeFit;
    const text = fitText(whole, 80);
    expect(text).toMatch(/^Parameters \(not to be relied on\)\n +unit +assumed +fitted$/m);
    const figures = fitFigures(whole);
    expect(figures.reliable).toBe(false);
    expect(figures.stages[0]!.parameters.map((one) => one.told)).toEqual(['unreliable', 'no']);
    const good = fitFigures({ ...whole, skilled: true, reliable: true });
    expect(good.stages[0]!.parameters.map((one) => one.told)).toEqual(['yes', 'no']);
    expect(good.reliable).toBe(true);
  });
});

test('a typical year is cautioned against', () => {
  expect(fitWords(fitOf([], { typicalWeather: true }))).toEqual([
    {
      head: 'Cautions',
      items: [
        'The weather is a typical year, not that of the log: unless both are invented together, this fit means nothing.',
      ],
    },
  ]);
});

test('steady heat is told by readings that a fit goes by, which an electricity meter is none of', () => {
  expect(wouldTell({ kind: 'steady heat', room: 'living' }, [])).toBe(
    'the heating power of the room, logged,',
  );
});

describe('what would tell what a log does not', () => {
  const co2 = { quantity: 'co2', room: 'bedroom' };

  test('is never what was logged already', () => {
    expect(wouldTell({ kind: 'leakage at 50 Pa' }, [])).toBe(
      'CO2 logged in a bedroom, or a blower door,',
    );
    expect(wouldTell({ kind: 'leakage at 50 Pa' }, [co2])).toBe('a blower door');
    expect(wouldTell({ kind: 'moisture factor' }, [co2])).toBe('a week with a weighed humidifier');
    expect(wouldTell({ kind: 'breath' }, [{ quantity: 'presence', room: 'bedroom' }])).toBe(
      'a longer log',
    );
  });

  test('of heat that is lost is no meter of everything in the home', () => {
    const ofHome = (quantity: string) =>
      wouldTell({ kind: 'heat loss' }, [{ quantity, room: null }]);
    expect(ofHome('electricity')).toBe('a reading of the heating meter every day');
    for (const one of ['heating power', 'heating electricity', 'gas']) {
      expect(ofHome(one)).toBe('a longer log');
    }
  });

  test('of a room is what was not logged in that room', () => {
    const heat = [{ quantity: 'heating power', room: 'living' }];
    expect(wouldTell({ kind: 'steady heat', room: 'living' }, heat)).toBe('a longer log');
    expect(wouldTell({ kind: 'steady heat', room: 'hall' }, heat)).toBe(
      'the heating power of the room, logged,',
    );
  });
});

describe('a value far from what any home has', () => {
  const strange = (place: number, told = 'yes'): Partial<FittedParameter> => ({
    ...parameter('CO2 of a body awake', 0.0186, 0.0186),
    ...{ place, told: told as 'yes', value: 0.0107 },
    adjustable: {
      ...{
        name: 'CO2 of a body awake',
        kind: 'breath',
        unit: 'm3/h',
        value: 0.0186,
        before: 0.0186,
      },
      ...{ low: 0.014, high: 0.024, places: [] as Adjustable['places'] },
    } as Adjustable,
  });
  const cautions = (fit: HomeFit) => fitWords(fit).find(({ head }) => head === 'Cautions')?.items;

  test('is told with what the scenario states and may be wrong', () => {
    const leakage = 'air leakage at 50 Pa';
    const leaks: Stated = { kind: 'leakage', name: leakage, words: `${leakage} (4.00/h)` };
    const walls: Stated = { kind: 'U-value', name: 'wall U-value', words: 'wall U-value (1)' };
    expect(cautions(fitOf([strange(-4)], { stated: [walls, leaks] }))).toStrictEqual([
      'Far from what is usual: CO2 of a body awake (0.0107, usually 0.0140 to 0.0240 m3/h). The home may be so, or it stands for something that the scenario states and the fit therefore leaves alone: air leakage at 50 Pa (4.00/h). Put what is not known for certain under "doubts", or leave it out, and fit again.',
    ]);
    expect(cautions(fitOf([strange(-4)]))?.[0]).toContain('a sensor that reads wrongly');
  });

  test('is not one that is within reach, or that the log does not tell', () => {
    expect(cautions(fitOf([strange(-2.9)]))).toBeUndefined();
    expect(cautions(fitOf([strange(-4, 'no')]))).toBeUndefined();
  });
});

test('heat loss that is told without a meter of heat has a caution', () => {
  const loss = { ...parameter('heat loss factor', 1, 1, 'heat loss'), place: 0.5 };
  const heads = (fit: HomeFit) => fitWords(fit).find(({ head }) => head === 'Cautions')?.items;
  expect(heads(fitOf([loss]))?.[0]).toMatch(/^No heat was metered: /);
  const electricity = [{ quantity: 'electricity', room: null }];
  expect(heads(fitOf([loss], { logged: electricity }))).toHaveLength(1);
  for (const quantity of ['heating power', 'heating electricity', 'gas']) {
    expect(heads(fitOf([loss], { logged: [{ quantity, room: null }] }))).toBeUndefined();
  }
  expect(heads(fitOf([{ ...loss, told: 'no' }]))).toBeUndefined();
});

test('a meter of heat that the fitted home is far from has a caution', () => {
  const heads = (bias: number, quantity = 'heating') => {
    const channels = [{ quantity, observed: Float64Array.of(9000, 1000, 1000, Number.NaN, 9000) }];
    const stages = [{ group: 'heat', channels, fit: { parameters: [], left: [{ bias }] } }];
    const division = { hours: 1000, release: 1, withheld: 4 };
    const fit = fitOf([], { stages, division } as unknown as Partial<HomeFit>);
    return fitWords(fit).find(({ head }) => head === 'Cautions')?.items;
  };
  expect(heads(550)?.[0]).toMatch(/^The fitted home uses 55 % more heat than was metered \(1000 W/);
  expect(heads(-300)?.[0]).toMatch(/^The fitted home uses 30 % less heat /);
  expect(heads(250)).toHaveLength(1);
  expect(heads(150)).toBeUndefined();
  expect(heads(550, 'temperature')).toBeUndefined();
});

describe('the opening', () => {
  const seen = (skill: number, alone: number) => ({
    judgement: { skill },
    alone: { skill: alone },
  });

  test('says where only habits are foreseen', () => {
    const foreseen = [
      seen(0.5, -1),
      seen(0.2, -0.1),
      seen(0.4, 0.3),
    ] as HomeFit['foreseen'][number][];
    expect(fitOpening(fitOf([], { foreseen, skilled: false }))).toContain(
      'in 3 of 3 cases. Without the usual error of each hour of the day, which is added to what is foreseen, it did so in 1: the home itself is not understood',
    );
    expect(fitOpening(fitOf([], { foreseen }))).toMatch(/in 3 of 3 cases\.$/);
  });
});

test('what was foreseen is a line a series, with the guess that came nearest', () => {
  const judgement = {
    ...{ hours: 240, rmse: 1.334, guesses: { mean: 5, week: 4, day: 3.892 }, bestGuess: 'day' },
    ...{ skill: 0.6, band: 4.18, inside: 0.975 },
  };
  const channel = { name: 'relative humidity', room: 'Bad', unit: '%' };
  const one = { channel, judgement, alone: { rmse: 1.74, skill: 0.5 }, guideline14: null };
  const worse = { ...one, judgement: { ...judgement, skill: 0 }, from: 'weather alone' };
  const none = { ...worse, judgement: { ...judgement, hours: 0 } };
  const foreseen = [{ ...one, from: 'logged temperature' }, worse, none] as unknown as Foreseen[];
  const lines = foreseenText(foreseen, 80).split('\n');
  expect(lines[0]).toBe('With temperatures as logged');
  expect(lines[2]).toBe('relative humidity, Bad %      1.33 1.74 3.89 day    yes 4.18  98 %');
  expect(lines[4]).toBe('From the weather alone');
  expect(lines[6]).toMatch(/ no 4\.18 +98 %$/);
  expect(lines[7]).toMatch(/^relative humidity, Bad % +- +- +- +- +- +-$/);
});

test('ranges and errors stand under their heads, a bias with its sign', () => {
  const known = { ...parameter('draughts', 0.02, 0.03), value: 22, low: 11, high: 44 };
  const channel = { name: 'temperature', room: 'den', unit: '°C' };
  const left = [{ rmse: 0.31, bias: -0.12, rho: 0.93, unseen: 0.45 }];
  const fit = fitOf([known]);
  const stages = fit.stages.map((stage) => ({
    ...{ ...stage, channels: [channel] },
    fit: { ...stage.fit, left, runs: 7, form: 'whitened', ended: 'converged', startsAgree: true },
  }));
  const text = fitText({ ...fit, stages } as unknown as HomeFit, 80);
  expect(text).toMatch(
    /assumed +fitted +low +high +told\n *draughts .* 22(\.0)? +11(\.0)? +44(\.0)? +yes/,
  );
  expect(text).toMatch(/temperature, den +°C +0\.31 +-0\.12 +0\.93 +0\.45/);
});
