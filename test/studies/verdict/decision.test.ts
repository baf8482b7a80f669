import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { decision } from '../../../src/studies/verdict/decision.ts';
import type { DecisionSetup } from '../../../src/studies/verdict/decision-setup.ts';
import { asUsed, someLevel, somePlan } from '../some-plan.ts';

interface Figures {
  spots?: number;
  cold?: number;
  energy?: number;
  purchaseCost?: number;
  mould?: number;
}
const plan = (
  name: string,
  { spots = 0, cold = 0, mould = spots / 200, ...money }: Figures,
): PlanMeasures =>
  somePlan(name, {
    ...money,
    den: {
      over: {
        cold_spot_hours_above_80_pct: spots,
        mould_index_peak: mould,
        winter_cold_hours_per_day: cold,
      },
    },
  });

const DRIER = { what: 'drier', price: 200, lastsYears: 8 }; // 25 a year
const BASE = plan('as-lived', { spots: 800, energy: 1000 });
const DRY = plan('dry', { spots: 50, energy: 1040, purchaseCost: 25 });
/** The decision, its figures and units parted by plain blanks. */
function decide(more: Partial<DecisionSetup> = {}) {
  const found = decision({
    ...{ baseline: BASE, plan: DRY, guards: ['damp'], room: 'den', rivals: [], flips: [] },
    ...{ range: { low: 40, high: 90 }, purchases: [DRIER], discountRate: 0 },
    prices: {
      currency: 'GBP',
      fuels: { gas: { tariff: { by: 'flat', price: 0.07 }, standing: 0, carbon: 0 } },
    },
    ...more,
  });
  const plain = (words: readonly string[]) => words.map((each) => each.replaceAll('\u00a0', ' '));
  return { ...found, sentences: plain(found.sentences), because: plain(found.because) };
}
/** What stands behind the verdict and what carries it. */
const restOf = ({ sentences, because }: ReturnType<typeof decide>) =>
  sentences.slice(1 + because.length);
const NOTHING_ELSE =
  'Nothing else that was tried does as much for less without making something else worse.';

const DRIER_WORDS =
  'mould is less likely (index 0.3, was 4.0, den) and cold corners are dry enough 100 % of the time (was 95 %)';

test('days that are no whole year tell no verdict on money, only what was better in them', () => {
  const short = (name: string, spots: number) =>
    somePlan(name, {
      hours: 1680,
      den: { over: { cold_spot_hours_above_80_pct: spots, mould_index_peak: 0 } },
    });
  const found = decide({ baseline: short('as-lived', 800), plan: short('dry', 50) });
  expect(found.sentences).toEqual([
    '70 days were run, which is no whole year: they cannot tell whether dry is worth its money.',
    'In these days cold corners are dry enough 99 % of the time (was 76 %).',
  ]);
  const none = decide({ baseline: short('as-lived', 50), plan: short('dry', 50) });
  expect(none.because).toEqual(['In these days it makes nothing clearly better.']);
  // Nor what another costs a year, nor at which price it turns; what gets worse is told.
  const rival = short('vent', 60);
  const flip = { input: 'gas', unit: 'GBP/kWh', today: 0.07, value: 0.2, likely: true };
  const dry = { baseline: short('as-lived', 800), plan: short('dry', 50) };
  const flips = [{ ...flip, becomes: 'too little' as const }];
  expect(decide({ ...dry, rivals: [rival], flips }).sentences).toHaveLength(2);
  const wet = decide({ baseline: short('as-lived', 50), plan: short('dry', 800) });
  expect(wet.verdict).toBe('too little');
  expect(wet.because).toEqual([
    'In these days it makes nothing clearly better.',
    'But cold corners are wet 24 % of the time (was 1 %).',
  ]);
  const bit = (spots: number) =>
    decide({ baseline: short('as-lived', 50), plan: short('dry', spots) }).because;
  expect(bit(320)[1]).toContain('But cold corners are wet 10 % of the time'); // 8 points, clear from 6 on
  expect(bit(220)).toEqual(['In these days it makes nothing clearly better.']);
});

test.each([
  ['it', [DRIER]],
  ['them', [{ ...DRIER, what: 'driers' }]],
  ['them', [DRIER, DRIER]],
  ['them', [DRIER, { ...DRIER, what: 'fan' }]],
] as const)('what is bought is %s by how many things it is: %j', (them, purchases) => {
  const they = them === 'it' ? 'it' : 'they';
  const yearly = 25 * purchases.length;
  const dry = plan('dry', { spots: 50, energy: 1040, purchaseCost: yearly });
  const found = decide({ purchases, plan: dry });
  expect(found.sentences[0]).toBe(
    `Buy ${them} if less mould and drier corners are worth ${40 + yearly} GBP a year to you.`,
  );
  expect(restOf(found)[0]).toBe(
    `Even as a gift ${they} cost${them === 'it' ? 's' : ''} 40 GBP a year.`,
  );
  const saves = plan('dry', { spots: 800, energy: 800, purchaseCost: yearly });
  const range = { low: -180, high: -60 };
  expect(decide({ purchases, plan: saves, range }).sentences[0]).toMatch(`Buy ${them}: dry saves`);
  const little = plan('dry', { spots: 790, energy: 1000 - 5, purchaseCost: yearly });
  expect(decide({ purchases, plan: little }).sentences[1]).toMatch(/price of what is bought|gift/);
  const none = decide({
    ...{ purchases, plan: plan('dry', { spots: 20, energy: 1040, purchaseCost: yearly }) },
    baseline: plan('as-lived', { spots: 100, energy: 1000 }),
  });
  expect(none.because[0]).toBe(
    `Mould is not likely to start without ${them} (index up to 0.5 of 6).`,
  );
  const fan = plan('fan', { spots: 70, energy: 1040 });
  expect(restOf(decide({ purchases, plan: dry, rivals: [fan] }))[0]).toBe(
    `Even as a gift ${they} would not come out ahead.`,
  );
  const dear = plan('dry', { spots: 800, energy: 1000, purchaseCost: yearly });
  expect(decide({ purchases, plan: dear }).sentences[1]).toBe(
    `${they === 'it' ? 'It' : 'They'} would not pay even as a gift.`,
  );
});

describe('worth it', () => {
  test('where it helps and nothing else does as much: what it must be worth', () => {
    expect(decide()).toEqual({
      ...{ verdict: 'worth it', sure: true, instead: null },
      turn: { of: 'worth', fuel: '', value: 65, today: null },
      sentences: [
        'Buy it if less mould and drier corners are worth 65 GBP a year to you.',
        `With dry, ${DRIER_WORDS}.`,
        NOTHING_ELSE,
        'Even as a gift it costs 40 GBP a year.',
      ],
      because: [`With dry, ${DRIER_WORDS}.`, NOTHING_ELSE],
      ...{ turns: [], first: '' },
    });
  });

  test.each([
    [{ spots: 50, mould: 4, energy: 1040 }, 'drier corners are'],
    [{ spots: 800, mould: 0.3, energy: 1040 }, 'less mould is'],
  ])('the verdict names what the money buys, and agrees with it: %j', (figures, words) => {
    expect(decide({ plan: plan('dry', figures) }).sentences[0]).toBe(
      `Buy it if ${words} worth 40 GBP a year to you.`,
    );
  });

  test('what costs as much as doing nothing has no price in it', () => {
    const [first, ...rest] = decide({
      ...{ plan: plan('dry', { spots: 50, energy: 1000.3 }), purchases: [] },
      range: { low: 0, high: 1 },
    }).sentences;
    expect(first).toBe('Do it: dry costs as much as doing nothing.');
    expect(rest.slice(0, 2)).toEqual([`With dry, ${DRIER_WORDS}.`, NOTHING_ELSE]);
  });

  test('what else it changes is told once, behind what carries the verdict', () => {
    const cold = { baseline: plan('as-lived', { spots: 800, energy: 1000, cold: 3 }) };
    expect(restOf(decide(cold))).toContain(
      'What else it changes: nobody is in a room that is too cold any more (den).',
    );
  });

  test.each([
    [0.95, true],
    [0.9, true],
    [0.89, false],
    [null, true],
  ])('is sure where nine of ten draws come out alike: %s', (steady, sure) => {
    expect(decide({ steady }).sure).toBe(sure);
  });

  test('where it saves money whatever is doubtful: the price at which it no longer does', () => {
    const saves = plan('dry', { spots: 800, energy: 900, purchaseCost: 25 });
    const found = decide({ plan: saves, range: { low: -90, high: -60 } });
    expect(found).toMatchObject({ verdict: 'worth it', sure: true });
    // 25 a year for 200, and 75 more are saved: eight times as much
    expect(found.turn).toEqual({ of: 'price', fuel: '', value: 800, today: 200 });
    expect(found.sentences.slice(0, 4)).toEqual([
      'Buy it: dry saves 75 GBP a year.',
      'It saves some in nine of ten draws of the doubtful inputs or more.',
      'It makes nothing clearly worse.',
      'The answer turns round where the price of what is bought is above 800 GBP (200 today): then it no longer saves money.',
    ]);
  });

  test('what may save or cost has no price to be worth, and no draws that all save', () => {
    const dry = plan('dry', { spots: 50, energy: 940 });
    const found = decide({ plan: dry, purchases: [], range: { low: -90, high: 20 } });
    expect(found.sentences.slice(0, 3)).toEqual([
      'Do it: dry saves 60 GBP a year.',
      ...[`With dry, ${DRIER_WORDS}.`, NOTHING_ELSE],
    ]);
  });

  test('draws are told of only where there are some, and what gets worse though it saves', () => {
    const bare = plan('as-lived', { spots: 50, energy: 1000 });
    const saves = plan('dry', { spots: 1500, mould: 0.3, energy: 900, purchaseCost: 25 });
    const asked = { baseline: bare, plan: saves };
    const worse = 'But cold corners are wet 9 % of the time (was 0 %).';
    expect(decide({ ...asked, range: { low: -75, high: -75 } }).because).toEqual([worse]);
    expect(decide({ ...asked, range: { low: -90, high: -60 } }).because).toEqual([
      ...['It saves some in nine of ten draws of the doubtful inputs or more.', worse],
    ]);
  });

  test('that no mould would start is said of damp without it, and only beside what dries', () => {
    const room = (name: string, cold: number, warm: number, damp: number, mould: number) =>
      somePlan(name, {
        den: {
          occupied: { temperature_high: warm },
          outside: { humidity_high: damp },
          over: { winter_cold_hours_per_day: cold, mould_index_peak: mould },
        },
      });
    const asked = { guards: ['damp' as const, 'cold' as const, 'heat' as const], purchases: [] };
    const [bare, rival] = [room('as-lived', 0, 0, 4000, 0.6), room('fan', 0, 0, 300, 0.4)];
    const dear = { ...rival, money: { ...rival.money, total_per_year: 2000 } };
    const dry = room('dry', 0, 0, 300, 0.2);
    expect(decide({ ...asked, baseline: bare, plan: dry, rivals: [dear] }).because[0]).toMatch(
      /, though mould is not likely to start without it \(index up to 0\.6 of 6\)\.$/,
    );
    // Damp comes third here, behind what is told.
    const all = decide({ ...asked, baseline: room('as-lived', 9, 3000, 4000, 0.6), plan: dry });
    expect(all.because[0]).toMatch(/^With dry, nobody is in a room that is too cold any more /);
    expect(all.because.join(' ')).not.toMatch(/mould|damp/);
  });

  test('names the nearest other way and its price, and is not sure where doubt is larger than the gap', () => {
    const warmer = plan('warmer', { spots: 60, energy: 1080 });
    const near = decide({ rivals: [warmer] });
    expect(near).toMatchObject({ verdict: 'worth it', sure: false });
    expect(near.turn).toMatchObject({ of: 'price', value: 320 }); // 15 a year, for 8 years
    expect(near.sentences.slice(0, 3)).toEqual([
      'Buy it: less mould and drier corners for 65 GBP a year.',
      ...[`With dry, ${DRIER_WORDS}.`, NOTHING_ELSE],
    ]);
    expect(near.sentences.slice(-2)).toEqual([
      'The cheapest other way to as much, warmer, costs 15 GBP a year more.',
      'This is not sure: doubtful inputs move the money by 25 GBP a year, and only 15 lie between it and the next.',
    ]);
    const far = plan('warmer', { spots: 60, energy: 1200 });
    expect(decide({ rivals: [far] })).toMatchObject({ verdict: 'worth it', sure: true });
  });

  test('what is not bought is done', () => {
    const warm = plan('warm', { spots: 50, energy: 1060 });
    const found = decide({ plan: warm, purchases: [], room: null });
    expect(found.sentences[0]).toBe(
      'Do it if less mould and drier corners are worth 60 GBP a year to you.',
    );
    expect(found.sentences[1]).toMatch(/^With warm, mould is less likely /);
    expect(restOf(found)).toEqual([]);
  });

  test('without a price it turns at a price of the fuel', () => {
    const thrift = plan('thrift', { spots: 800, energy: 900 });
    const more = { plan: thrift, purchases: [], room: null, range: { low: -100, high: -100 } };
    const dearer = plan('rival', { spots: 800, energy: 900, purchaseCost: 20 });
    const found = decide({ ...more, rivals: [dearer] });
    // It takes as much gas as its rival: no price of gas can turn it.
    expect(found.turn).toMatchObject({ of: 'worth', value: 20 });
    const gas = plan('rival', { spots: 800, energy: 920 });
    // 20 a year of gas at 0.07 lie between them: they are alike where it costs nothing.
    expect(decide({ ...more, rivals: [gas] }).turn).toMatchObject({ of: 'worth', value: 20 });
  });

  test('the fuel is the one whose use changes most, and turns it where its saving is eaten up', () => {
    const paid = (of: PlanMeasures, by_fuel: Record<string, number>): PlanMeasures => ({
      ...of,
      money: { ...of.money, by_fuel, by_use: asUsed(by_fuel) },
    });
    const baseline = paid(BASE, { gas: 600, electricity: 400 });
    const fan = plan('fan', { spots: 800, energy: 900 });
    const turn = (by_fuel: Record<string, number>) =>
      decide({
        ...{ baseline, plan: paid(fan, by_fuel), purchases: [], room: null },
        range: { low: -100, high: -100 },
      }).turn;
    // 200 of gas saved for 100 of electricity: nothing is saved where gas costs half.
    expect(turn({ electricity: 500, gas: 400 })).toEqual({
      ...{ of: 'fuel price', fuel: 'gas', today: 0.07 },
      value: expect.closeTo(0.035, 12),
    });
    // What is saved is electricity, of which no price is known.
    expect(turn({ gas: 600, electricity: 300 })).toMatchObject({ of: 'worth', value: 100 });
  });
});

test.each([
  ['dearer', { low: 64, high: 90 }, 25],
  ['cheaper', { low: 40, high: 66 }, 25],
  ['a little of both', { low: 51, high: 79 }, null],
])('doubt that makes it %s counts by its farther side', (_, range, moved) => {
  // 65 GBP a year, and 15 more for the only other way.
  const found = decide({ rivals: [plan('warmer', { spots: 60, energy: 1080 })], range });
  expect(found.sure).toBe(moved === null);
  expect(found.sentences.some((words) => words.startsWith('This is not sure'))).toBe(
    moved !== null,
  );
  if (moved !== null) expect(found.sentences.at(-1)).toContain(`by ${moved} GBP a year`);
});

test('something else first, the cheapest of it, and the price at which that turns', () => {
  const fan = plan('fan', { spots: 70, energy: 1020, purchaseCost: 20 });
  const aired = plan('aired', { spots: 60, energy: 1050 });
  const found = decide({ rivals: [fan, aired], range: { low: 50, high: 80 } });
  expect(found).toMatchObject({ verdict: 'something else first', instead: 'fan', sure: true });
  expect(found.sentences.slice(0, 4)).toEqual([
    'Something else first: fan does about as much against damp and costs 25 GBP a year less.',
    `With fan, ${DRIER_WORDS}.`,
    `With dry, ${DRIER_WORDS}.`,
    'Even as a gift it would not come out ahead.',
  ]);
  const cheap = plan('aired', { spots: 60, energy: 1010 });
  expect(decide({ rivals: [cheap] }).turn).toMatchObject({ of: 'worth', value: 55 });
  expect(restOf(decide({ rivals: [cheap] }))[0]).toBe(
    'Even for nothing dry would come second: what it does besides would have to be worth 55 GBP a year to you.',
  );
});

describe('what could be done as well', () => {
  const laundry = plan('laundry-out', { spots: 20, energy: 990 });
  const besides = new Set(['laundry-out']);

  test('is no rival of what saves money', () => {
    const pump = plan('heat-pump', { spots: 700, energy: 800, purchaseCost: 100 });
    const saves = { plan: pump, guards: ['damp' as const, 'cold' as const] };
    const range = { low: -120, high: -80 };
    const rivals = [plan('laundry-out', { spots: 20, energy: 850 })];
    expect(decide({ ...saves, rivals, range })).toMatchObject({ instead: 'laundry-out' });
    const found = decide({ ...saves, rivals, range, besides });
    expect(found).toMatchObject({ verdict: 'worth it', instead: null });
    expect(found.sentences[0]).toBe('Buy it: heat-pump saves 100 GBP a year.');
    // Another source of heat is one.
    const gas = [...rivals, plan('new-boiler', { spots: 20, energy: 880 })];
    expect(decide({ ...saves, rivals: gas, range, besides }).instead).toBe('new-boiler');
  });

  test('is none of what heats otherwise for more money, and is told', () => {
    const pump = plan('heat-pump', { spots: 50, energy: 1040, purchaseCost: 100 });
    const asked = { plan: pump, rivals: [laundry], besides, guards: ['damp' as const] };
    const found = decide({ ...asked, heatsOtherwise: true });
    expect(found).toMatchObject({ verdict: 'worth it', instead: null });
    expect(found.because).toContain(
      'laundry-out does as much against damp for less, and can be done as well.',
    );
    // It makes needless what only guards against the same.
    expect(decide(asked).instead).toBe('laundry-out');
  });
});

test('something else first is not sure where doubt is larger than what lies between', () => {
  const aired = plan('aired', { spots: 60, energy: 1055 });
  const found = (range: { low: number; high: number }) => decide({ rivals: [aired], range });
  // 10 GBP a year lie between them.
  expect(found({ low: 56, high: 74 }).sure).toBe(true);
  expect(found({ low: 54, high: 74 })).toMatchObject({
    verdict: 'something else first',
    sure: false,
  });
});

test('what does as much against the main thing alone, for less, is named with its money', () => {
  const airy = (over: number, mean: number) => ({
    ...{ co2_high: over },
    species: { co2: someLevel(mean) },
  });
  const with_ = (name: string, spots: number, energy: number, air: ReturnType<typeof airy>) => {
    const made = plan(name, { spots, energy });
    const den = { ...made.rooms['den']!, species: air.species };
    const outside_band_hours = { ...den.outside_band_hours, co2_high: air.co2_high };
    return { ...made, rooms: { ...made.rooms, den: { ...den, outside_band_hours } } };
  };
  const stale = airy(4000, 1500);
  const asked: Partial<DecisionSetup> = {
    ...{ baseline: with_('as-lived', 800, 1000, stale), guards: ['damp', 'air'] },
    plan: with_('fan', 50, 1178, airy(1000, 900)),
  };
  const drier = with_('drier', 10, 1055, stale);
  const found = decide({ ...asked, rivals: [drier] });
  expect(found).toMatchObject({ verdict: 'worth it', instead: null });
  expect(restOf(found)[0]).toBe('Against damp alone, drier does as much and costs 55 GBP a year.');
  const cold = { winter_cold_hours_per_day: 3, felt_cold_hours: 540 };
  const rival = { ...drier, rooms: { ...drier.rooms, den: { ...drier.rooms.den, ...cold } } };
  expect(restOf(decide({ ...asked, rivals: [rival] }))[0]).toBe(
    'Against damp alone, drier does as much and costs 55 GBP a year, but people are in rooms that are too cold 3.0 h a day (den).',
  );
  // The fan costs 178 a year more than nothing: a tenth of that must be saved.
  expect(restOf(decide({ ...asked, rivals: [with_('near', 10, 1159, stale)] }))[0]).toContain(
    'Against damp alone, near does as much and costs 159 GBP a year',
  );
  expect(restOf(decide({ ...asked, rivals: [with_('dear', 10, 1170, stale)] }))[0]).not.toContain(
    'Against damp alone',
  );
});

test('an hour more of wet corners makes no rival worse, more than a day does', () => {
  const warmth = (name: string, hours: number, spots: number, energy: number) =>
    somePlan(name, {
      energy,
      den: {
        occupied: { temperature_high: hours },
        over: { occupied_hours: 4000, cold_spot_hours_above_80_pct: spots },
      },
    });
  const asked = (spots: number) =>
    decide({
      ...{ baseline: warmth('as-lived', 600, 363, 1000), guards: ['heat'], purchases: [] },
      ...{ plan: warmth('cool', 40, 365, 1214), rivals: [warmth('blinds', 40, spots, 1134)] },
      room: null,
    });
  expect(asked(366)).toMatchObject({ verdict: 'something else first', instead: 'blinds' });
  expect(asked(365 + 24).instead).toBe('blinds');
  expect(asked(365 + 25).instead).toBeNull();
});

test('what would start mould is no way to anything, however cheap', () => {
  const dryness = (name: string, dry: number, mould: number, energy: number) =>
    somePlan(name, {
      energy,
      den: {
        outside: { humidity_low: dry * 175.2 },
        over: { mould_index_peak: mould, cold_spot_hours_above_80_pct: 1000 * mould },
      },
    });
  const asked = (mould: number) =>
    decide({
      ...{ baseline: dryness('as-lived', 37, 0, 1000), guards: ['dry'], purchases: [] },
      ...{ plan: dryness('humid', 10, 0, 1080), rivals: [dryness('off', 5, mould, 900)] },
    }).sentences.join(' ');
  expect(asked(5)).not.toContain('off');
  expect(asked(1)).not.toContain('off');
  expect(asked(0.9)).toContain('Against dry air alone, off does as much and saves');
});

test('what goes half of the way for half of the money is named', () => {
  const dear = plan('dry', { spots: 50, mould: 0.1, energy: 1149, purchaseCost: 25 });
  const moved = plan('laundry', { spots: 500, mould: 1, energy: 1044 });
  const found = (...rivals: PlanMeasures[]) => restOf(decide({ plan: dear, rivals }))[0];
  expect(found(moved)).toBe(
    'laundry goes part of the way and costs 44 GBP a year: mould is less likely (index 1.0, was 4.0, den).',
  );
  const best = plan('vent', { spots: 400, mould: 0.8, energy: 990 });
  expect(found(moved, best)).toMatch('vent goes part of the way and saves 10 GBP a year: mould');
  // Of less mould as much, but fewer corners are dry.
  expect(found(plan('tip', { spots: 400, mould: 0.05, energy: 1010 }))).toMatch(
    'tip does one part of this as well and costs 10 GBP a year: mould',
  );
  // Less than half of the way, more than half of the money, or with cold people: not a word.
  expect(found(plan('far', { spots: 700, mould: 2.2, energy: 1044 }))).toMatch(/^Even as a gift/);
  expect(found(plan('dear', { spots: 500, mould: 1, energy: 1088 }))).toMatch(/^Even as a gift/);
  expect(found(plan('cold', { spots: 500, mould: 1, energy: 900, cold: 1 }))).toMatch(
    /^Even as a gift/,
  );
  // As far of one thing, and of two that go as far the cheaper.
  expect(found(plan('even', { spots: 400, mould: 0.1, energy: 1010 }))).toMatch(
    'even does one part of this as well and costs 10 GBP a year: mould',
  );
  expect(found(moved, plan('cheap', { spots: 500, mould: 1, energy: 1030 }))).toMatch(
    'cheap goes part of the way and costs 30 GBP a year',
  );
  // Air too dry 10 % of the time is noticed, and clear to nobody.
  const den = { ...moved.rooms['den']!.outside_band_hours, humidity_low: 1752 };
  const drier = { ...moved.rooms['den']!, outside_band_hours: den };
  expect(found({ ...moved, rooms: { ...moved.rooms, den: drier } })).toMatch(
    'laundry goes part of the way',
  );
});

test('nothing goes part of the way to what saves money, nor to what nobody asked for', () => {
  const saves = plan('dry', { spots: 50, mould: 0.1, energy: 900 });
  const rival = plan('vent', { spots: 50, mould: 0.1, energy: 700, cold: 3 });
  const range = { low: -100, high: -100 };
  const sure = { plan: saves, purchases: [], rivals: [rival], range };
  expect(decide(sure).sentences.join(' ')).not.toMatch(/ alone, | of the way/);
  // Air too dry four times out of ten is mended besides, by another too.
  const dry = (made: PlanMeasures, humidity_low: number): PlanMeasures => {
    const den = made.rooms['den']!;
    const outside_band_hours = { ...den.outside_band_hours, humidity_low };
    return { ...made, rooms: { ...made.rooms, den: { ...den, outside_band_hours } } };
  };
  const found = decide({
    baseline: dry(plan('as-lived', { spots: 800, mould: 2 }), 14_000),
    plan: dry(plan('unit', { spots: 50, mould: 1.3, energy: 1100 }), 0),
    ...{ purchases: [], rivals: [dry(plan('bowl', { spots: 800, mould: 2, energy: 1005 }), 0)] },
  });
  expect(found.verdict).toBe('worth it');
  expect(found.sentences.join(' ')).not.toContain('bowl');
});

test('what goes less far does not do as much, however clear both are', () => {
  const damp = (name: string, pct: number, energy: number) => {
    // Wet corners follow, too few to be told of.
    const over = { mould_index_peak: 2, cold_spot_hours_above_80_pct: pct };
    return somePlan(name, { energy, den: { outside: { humidity_high: 175.2 * pct }, over } });
  };
  const found = (pct: number) =>
    restOf(
      decide({
        ...{ baseline: damp('as-lived', 90, 1000), plan: damp('dry', 5, 1100) },
        rivals: [damp('laundry', pct, 1040)],
      }),
    )[0];
  expect(found(35)).toBe(
    'laundry goes part of the way and costs 40 GBP a year: rooms are dry enough 65 % of the time (was 10 %).',
  );
  expect(found(50)).toMatch(/^Even as a gift|^As a gift/); // 40 points of 85
});

test('less of one thing in the air is no part of the way to less of another', () => {
  const air = (name: string, pm25: number, co2: number, energy: number): PlanMeasures => {
    const over = { species: { co2: someLevel(co2), pm25: someLevel(pm25) } };
    const outside = { co2_high: 4000, pm25_high: 4000 };
    const species = { pm25: { label: 'PM2.5', unit: 'µg/m3', mean_outdoors: 8 } };
    const made = somePlan(name, { energy, den: { over, outside }, bath: { over, outside } });
    return { ...made, species: { ...made.species, ...species } };
  };
  const decided = (rival: PlanMeasures) =>
    decide({
      ...{ baseline: air('as-lived', 20, 1500, 1000), guards: ['air'] },
      ...{ plan: air('filter', 8, 1500, 1100), rivals: [rival] },
    });
  const found = (rival: PlanMeasures) => restOf(decided(rival))[0];
  expect(decided(air('dustless', 8, 1500, 1040)).sentences[0]).toBe(
    'Something else first: dustless does about as much against stale or dirty air and costs 60 GBP a year less.',
  );
  expect(found(air('vent', 13, 800, 1040))).toBe(
    'vent goes part of the way and costs 40 GBP a year: there is less PM2.5 (13 µg/m3, was 20).',
  );
  expect(found(air('airing', 20, 800, 1040))).toMatch(/^Even as a gift/);
});

test('what is to be said first comes with the decision, apart from its verdict', () => {
  const found = decide({ first: 'Mend the stove.' });
  expect(found.first).toBe('Mend the stove.');
  expect(found.sentences[0]).toMatch(/^Buy it if/);
});

describe('not needed', () => {
  test('says what does not happen, and what it would have to be worth', () => {
    const calm = plan('as-lived', { spots: 800, mould: 0.9, energy: 1000 });
    const found = decide({ baseline: calm });
    expect(found).toMatchObject({ verdict: 'not needed', sure: true, turn: { value: 65 } });
    expect(found.sentences.slice(0, 5)).toEqual([
      'Not needed: what dry guards against does not happen here.',
      'Mould is not likely to start without it (index up to 0.9 of 6).',
      'Corners are wet 9 % of the time at most (den).',
      'Rooms are hardly ever too damp.',
      'What dry does besides would have to be worth 65 GBP a year to you; even as a gift it costs 40 GBP a year.',
    ]);
  });

  test('of all that it guards against in three sentences', () => {
    const guards = ['damp', 'cold', 'heat', 'dry', 'air'] as const;
    const calm = plan('as-lived', { spots: 200, mould: 0.9, energy: 1000 });
    expect(decide({ baseline: calm, guards }).because).toEqual([
      'Mould is not likely to start without it (index up to 0.9 of 6), corners are wet 2 % of the time at most (den) and rooms are hardly ever too damp.',
      'Hardly anybody is in rooms that are too cold without it (0.0 h a day at most), hardly anybody is too warm without it and air is hardly ever too dry without it.',
      'What the air carries hardly ever passes its limit without it.',
    ]);
  });

  test('whatever else would do for less', () => {
    const calm = plan('as-lived', { spots: 800, mould: 0.9, energy: 1000 });
    const aired = plan('aired', { spots: 60, energy: 1010 });
    expect(decide({ baseline: calm, rivals: [aired] })).toMatchObject({
      ...{ verdict: 'not needed', instead: null },
    });
  });
});

describe('too little', () => {
  test('says what gets worse too, though it is no harm yet', () => {
    const calm = plan('as-lived', { cold: 2, spots: 100, mould: 0, energy: 1000 });
    const found = decide({
      guards: ['cold'],
      baseline: calm,
      plan: plan('dry', { cold: 2, spots: 1500, mould: 0, energy: 1040, purchaseCost: 25 }),
    });
    expect(found.sentences.slice(0, 2)).toEqual([
      'Too little: dry costs 65 GBP a year and makes nothing clearly better.',
      'With dry, cold corners are wet 9 % of the time (was 1 %).',
    ]);
  });

  test('of a purchase: the price at which it would cost nothing', () => {
    const dry = plan('dry', { spots: 790, energy: 985, purchaseCost: 25 });
    const found = decide({ plan: dry, range: { low: 10, high: 10 } });
    expect(found).toMatchObject({ verdict: 'too little', turn: { of: 'price', value: 120 } });
    expect(found.sentences.slice(0, 2)).toEqual([
      'Too little: dry saves 15 GBP a year on the bill, less than the 25 GBP that its price comes to, and makes nothing clearly better.',
      'The answer turns round where the price of what is bought is below 120 GBP (200 today): then it saves money.',
    ]);
    // Without a price of its own there is none to set its bill beside; of a few pence nothing is left to tell.
    expect(decide({ plan: dry, purchases: [] }).sentences[0]).toMatch(
      'Not worth it: dry costs 10 GBP a year and',
    );
    const even = (energy: number) =>
      decide({ plan: plan('dry', { spots: 790, energy, purchaseCost: 25 }) }).sentences[0];
    expect(even(975.3)).toBe(even(975));
    expect(even(974.8)).toBe(even(975));
    // 5 more where draws are dear: 15 - 15 is left of 25, and in the others nothing.
    const doubted = (high: number) => decide({ plan: dry, range: { low: 0, high } }).sentences[1];
    expect(doubted(15)).toMatch(/: then it saves money, and below 80 in nine of ten draws\.$/);
    expect(doubted(30)).toMatch(/: then it saves money, though not in nine of ten draws\.$/);
  });

  test('of what is bought to save money where nothing else is amiss: not "not needed"', () => {
    const bare = plan('as-lived', { energy: 1375 });
    const pump = { what: 'heat pump', price: 9000, lastsYears: 18 }; // 500 a year
    const asked = { baseline: bare, guards: ['damp', 'cold'] as const, purchases: [pump] };
    const found = decide({
      ...asked,
      plan: plan('hp', { energy: 1091, purchaseCost: 500 }),
      range: { low: 216, high: 216 },
    });
    expect(found.sentences.slice(0, 2)).toEqual([
      'Too little: hp saves 284 GBP a year on the bill, less than the 500 GBP that its price comes to, and makes nothing clearly better.',
      // 284 × 18 years
      'The answer turns round where the price of what is bought is below 5112 GBP (9000 today): then it saves money.',
    ]);
    // 100 a year of a boiler that is not bought then
    const replaced = decide({
      ...{ ...asked, baseline: plan('as-lived', { energy: 1375, purchaseCost: 100 }) },
      plan: plan('hp', { energy: 1091, purchaseCost: 500 }),
      range: { low: 116, high: 116 },
    });
    expect(replaced.sentences[0]).toContain(
      'less than the 400 GBP that its price comes to beyond that of what is not bought then, and',
    );
    // What takes little off the bill is not bought for that.
    const dry = plan('dry', { energy: 1330, purchaseCost: 500 });
    expect(decide({ ...asked, plan: dry, range: { low: 455, high: 455 } }).verdict).toBe(
      'not needed',
    );
    // 75 of 500 are more than a tenth.
    const some = plan('some', { energy: 1300, purchaseCost: 500 });
    expect(decide({ ...asked, plan: some, range: { low: 425, high: 425 } }).verdict).toBe(
      'too little',
    );
  });

  test('of a saving that is not sure: the price below which nine of ten draws save', () => {
    const bare = plan('as-lived', { energy: 1375 });
    const found = decide({
      ...{ baseline: bare, plan: plan('hp', { energy: 1091, purchaseCost: 262 }) },
      purchases: [{ what: 'heat pump', price: 4716, lastsYears: 18 }],
      range: { low: -66, high: 73 },
    });
    expect(found.sentences.slice(0, 2)).toEqual([
      'Too little: hp saves 22 GBP a year, but not in nine of ten draws of the doubtful inputs, and makes nothing clearly better.',
      // 73 of 262 a year less
      'The answer turns round where the price of what is bought is below 3402 GBP (4716 today): then it saves money in nine of ten draws.',
    ]);
  });

  test('what gets clearly worse without being a harm yet is told as well', () => {
    const air = (dry: number, damp: number, money: object) =>
      somePlan('unit', {
        ...money,
        den: {
          outside: { humidity_low: dry * 175.2, humidity_high: damp * 175.2 },
          over: { winter_cold_hours_per_day: 1 },
        },
      });
    const setup = {
      ...{ baseline: air(37, 1, { energy: 1000 }), range: { low: 40, high: 90 } },
      plan: air(0, 26, { energy: 1040, purchaseCost: 25 }),
    };
    const fine = 'air is moist enough 100 % of the time (was 63 %)';
    const damp = 'But rooms are too damp 26 % of the time (was 1 %).';
    expect(decide({ ...setup, guards: ['cold'] }).sentences.slice(0, 3)).toEqual([
      'Too little: unit costs 65 GBP a year and does little about the cold.',
      ...[`With unit, ${fine}, which is something else.`, damp],
    ]);
    expect(decide({ ...setup, guards: ['dry'] }).sentences.slice(0, 4)).toEqual([
      'Buy it if less dry air is worth 65 GBP a year to you.',
      ...[`With unit, ${fine}.`, damp, NOTHING_ELSE],
    ]);
    const cheap = { ...setup, plan: air(37, 26, { energy: 900 }), range: { low: -90, high: -60 } };
    expect(decide({ ...cheap, guards: ['dry'] }).sentences.slice(0, 3)).toEqual([
      'Buy it: unit saves 100 GBP a year.',
      ...['It saves some in nine of ten draws of the doubtful inputs or more.', damp],
    ]);
  });

  test('what it does besides what it is for is no measure of how little that is', () => {
    const room = (name: string, warm: number, spots: number, money: object) =>
      somePlan(name, {
        ...money,
        den: {
          occupied: { temperature_high: warm },
          over: { winter_cold_hours_per_day: 2, cold_spot_hours_above_80_pct: spots },
        },
      });
    const found = decide({
      ...{ guards: ['damp', 'cold'], baseline: room('as-lived', 3000, 500, { energy: 1000 }) },
      plan: room('dry', 0, 100, { energy: 1040, purchaseCost: 25 }),
    });
    expect(found.sentences.slice(0, 2)).toEqual([
      'Too little: dry costs 65 GBP a year and does little about damp and the cold.',
      'With dry, cold corners are dry enough 99 % of the time (was 97 %).',
    ]);
  });

  test('a price is told from half a unit of money on, and is a gift below', () => {
    const little = (saved: number) =>
      decide({ plan: plan('dry', { spots: 790, energy: 1000 - saved, purchaseCost: 25 }) });
    expect(little(0.375).sentences[1]).toContain('is below 3 GBP (200 today)');
    expect(little(0.07).sentences[1]).toContain('is below 1 GBP (200 today)');
    expect(little(0.05).sentences[1]).toBe('It would not pay even as a gift.');
  });

  test('a price below nothing is never told', () => {
    const dear = plan('dry', { spots: 790, energy: 1040, purchaseCost: 25 });
    const { sentences } = decide({ plan: dear });
    expect(sentences.join(' ')).not.toMatch(/below -|below 0 /);
    const free = plan('dry', { spots: 790, energy: 1000, purchaseCost: 25 });
    expect(decide({ plan: free }).sentences[1]).toBe('It would not pay even as a gift.');
  });

  test('of what is not bought: not worth it, and what gets worse', () => {
    const cold = plan('cold', { spots: 800, cold: 3, energy: 1010 });
    const found = decide({ plan: cold, guards: ['cold'], purchases: [] });
    expect(found.sentences.slice(0, 2)).toEqual([
      'Not worth it: cold costs 10 GBP a year and brings more cold hours.',
      'With cold, people are in rooms that are too cold 3.0 h a day (den).',
    ]);
  });
});

test('a trade-off says what is saved and what it costs people', () => {
  const cold = plan('cold', { spots: 800, cold: 3, energy: 900 });
  const found = decide({
    ...{ plan: cold, guards: ['cold'], purchases: [], range: { low: -110, high: -90 } },
  });
  expect(found.sentences.slice(0, 3)).toEqual([
    'A trade-off: cold saves 100 GBP a year, but brings more cold hours.',
    'With cold, people are in rooms that are too cold 3.0 h a day (den).',
    'It is worth it only to those who would accept that for 100 GBP a year.',
  ]);
});

test('a trade-off that helps too names both, and the figures of both behind it', () => {
  const cold = plan('cold', { spots: 50, cold: 3, energy: 900 });
  const { sentences } = decide({
    ...{ plan: cold, guards: ['damp', 'cold'], purchases: [], range: { low: -110, high: -90 } },
  });
  expect(sentences.slice(0, 3)).toEqual([
    'A trade-off: cold saves 100 GBP a year and brings less mould and drier corners, but more cold hours.',
    `With cold, ${DRIER_WORDS}.`,
    'But people are in rooms that are too cold 3.0 h a day (den).',
  ]);
});

test('every verdict is one sentence of 25 words at most', () => {
  const all = [
    decide(),
    decide({ rivals: [plan('warmer', { spots: 60, energy: 1080 })] }),
    decide({ rivals: [plan('fan', { spots: 70, energy: 1020 })], guards: ['damp', 'cold'] }),
    decide({ baseline: plan('as-lived', { spots: 100, energy: 1000 }) }),
    decide({
      ...{ plan: plan('dry', { spots: 790, cold: 0, energy: 1040 }) },
      guards: ['damp', 'cold', 'heat', 'dry', 'air'],
    }),
    decide({ plan: plan('cold', { spots: 50, cold: 3, energy: 900 }), guards: ['damp', 'cold'] }),
  ];
  expect(new Set(all.map(({ verdict }) => verdict)).size).toBe(5);
  for (const { sentences, because } of all) {
    expect(sentences[0]!.split(' ').length).toBeLessThanOrEqual(25);
    expect(sentences[0]).toMatch(/^[^.]*\.$/);
    expect(because.length).toBeLessThanOrEqual(3);
  }
});

describe('what would turn it round', () => {
  const price = {
    ...{ input: 'the price of electricity', unit: 'GBP/kWh', today: 0.27, likely: true },
    becomes: 'something else first',
  } as const;

  test('is said, with what it turns into, and takes the certainty away', () => {
    const found = decide({ flips: [{ ...price, value: 0.412 }] });
    expect(found.sure).toBe(false);
    expect(found.turns).toEqual([
      'It would turn round (something else first) were the price of electricity 0.412 GBP/kWh instead of 0.270.',
    ]);
    expect(found.sentences).toEqual(expect.arrayContaining([...found.turns]));
  });

  test('is said too where it is unlikely, and leaves the answer sure', () => {
    const found = decide({ flips: [{ ...price, value: 0.95, likely: false }] });
    expect(found.sure).toBe(true);
    expect(found.sentences.at(-1)).toContain('were the price of electricity 0.950 GBP/kWh');
  });

  test('what does not turn it is not', () => {
    expect(decide({ flips: [{ ...price, value: null }] })).toEqual(decide());
  });
});
