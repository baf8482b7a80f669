import { describe, expect, test } from 'vitest';
import { effectsOf } from '../../../src/studies/effects/plan-effects.ts';
import type { AirFigure, PlanFigures } from '../../../src/studies/effects/plan-figures.ts';

/** Figures of a plan in which nothing is wrong, but for what is given. */
function figures(more: Partial<PlanFigures> = {}): PlanFigures {
  const none = { value: 0, room: '' };
  return {
    ...{ plan: 'made by hand', money: 1000, energy: 9000, alerts: 0, part: null },
    ...{ cold: none, mould: none, warm: 0, warmBy: 0, damp: 0, dry: 0, spots: 0, air: [] },
    ...{ coldOf: {}, dampest: none, wettest: none },
    ...more,
  };
}

const told = (from: Partial<PlanFigures>, to: Partial<PlanFigures>) =>
  effectsOf(figures(from), figures(to)).map(({ words, better }) => [
    words.replaceAll('\u00a0', ' '),
    better,
  ]);
const den = (value: number) => ({ value, room: 'den' });
const bath = (value: number) => ({ value, room: 'bath' });

describe('too warm', () => {
  const hot = (warm: number, warmBy: number) => ({ warm, warmBy });

  test('where it always is already, by how much', () => {
    expect(told(hot(100, 2), hot(100, 6))).toEqual([
      ['hot rooms are 6.0 °C too warm on average (was 2.0)', false],
    ]);
    expect(told(hot(100, 6), hot(100, 2))).toEqual([
      ['hot rooms are only 2.0 °C too warm on average (was 6.0)', true],
    ]);
    // Nearly always: half a point more often is nothing, four kelvins are clear to anybody.
    const [effect] = effectsOf(figures(hot(99, 2)), figures(hot(99.5, 6)));
    expect(effect).toMatchObject({ of: 'warm', better: false, weight: 4, word: 'hotter' });
  });

  test('more often where that tells more, or the opposite', () => {
    const often = [['people are too warm 60 % of the time (was 30 %)', false]];
    expect(told(hot(30, 2), hot(60, 2.6))).toEqual(often);
    expect(told(hot(30, 2), hot(60, 1))).toEqual(often);
    // Five points and a kelvin are each clear to anybody.
    expect(told(hot(30, 2), hot(35, 3))).toEqual([
      ['people are too warm 35 % of the time (was 30 %)', false],
    ]);
    // A quarter of the time under one plan only.
    expect(told(hot(20, 2), hot(30, 8))).toEqual([
      ['people are too warm 30 % of the time (was 20 %)', false],
    ]);
  });

  test('by half a kelvin, for a quarter of the time', () => {
    expect(told(hot(25, 2), hot(25, 2.5))).toEqual([
      ['hot rooms are 2.5 °C too warm on average (was 2.0)', false],
    ]);
  });

  test('not by how much where it is seldom, nor by less than half a kelvin', () => {
    expect(told(hot(20, 2), hot(20, 6))).toEqual([]);
    expect(told(hot(0, 0), hot(0.9, 6))).toEqual([]);
    expect(told(hot(80, 2), hot(80, 2.4))).toEqual([]);
  });
});

test('what stays as it is is no effect, however bad', () => {
  const bad = { cold: den(9), mould: den(5), warm: 40, damp: 60, dry: 20, spots: 80 };
  expect(told(bad, bad)).toEqual([]);
});

describe('cold', () => {
  test.each([
    [
      den(2),
      den(0.5),
      'people are in rooms that are too cold only 0.5 h a day (was 2.0, den)',
      true,
    ],
    [den(2), den(3), 'people are in rooms that are too cold 3.0 h a day (was 2.0, den)', false],
    [
      den(2),
      bath(3),
      'people are in rooms that are too cold 3.0 h a day (bath; was 2.0, den)',
      false,
    ],
    [den(0), bath(3), 'people are in rooms that are too cold 3.0 h a day (bath)', false],
    [den(2), den(0.04), 'nobody is in a room that is too cold any more (den)', true],
  ])('from %j to %j', (from, to, words, better) => {
    expect(told({ cold: from }, { cold: to })).toEqual([[words, better]]);
  });

  test('half an hour a day is clear to anybody, less is nothing', () => {
    expect(effectsOf(figures({ cold: den(2) }), figures({ cold: den(1.5) }))[0]!.weight).toBe(1);
    expect(told({ cold: den(8.4) }, { cold: den(8.89) })).toEqual([]);
    expect(told({ cold: den(8.89) }, { cold: den(8.4) })).toEqual([]);
  });
});

describe('cold in a room that is not the one worst off', () => {
  const rooms = (bed: number, lounge: number): Partial<PlanFigures> => ({
    cold: { value: bed, room: 'bed' },
    coldOf: { bed, lounge },
  });

  test('is told where the room worst off tells nothing, or the opposite', () => {
    // A stove that is no longer lit: the bedroom is as cold as ever, the lounge is not.
    expect(told(rooms(7.1, 1.1), rooms(6.8, 5.4))).toEqual([
      ['lounge is too cold 5.4 h a day with somebody in (was 1.1)', false],
    ]);
    expect(told(rooms(6.8, 5.4), rooms(7.1, 1.1))).toEqual([
      ['lounge is too cold only 1.1 h a day with somebody in (was 5.4)', true],
    ]);
    expect(told(rooms(7, 1), rooms(6, 5.5)).map(([, better]) => better)).toEqual([false, true]);
  });

  test('is not told twice, nor where it is little', () => {
    expect(told(rooms(7, 1), rooms(9, 5))).toHaveLength(1);
    expect(told(rooms(7, 1), rooms(7, 2.9))).toEqual([]);
    expect(told(rooms(7, 1), rooms(7, 3))).toHaveLength(1);
  });

  test('is that of the room that changes most, and counts by two hours', () => {
    const three = (bed: number, lounge: number, den: number): Partial<PlanFigures> => ({
      cold: { value: bed, room: 'bed' },
      coldOf: { bed, lounge, den },
    });
    const [most, ...rest] = effectsOf(figures(three(7, 1, 1)), figures(three(7, 4, 6)));
    expect(most).toMatchObject({ weight: 2.5, word: 'colder in den' });
    expect(rest).toEqual([]);
    // A room that was not there before tells nothing, nor one that becomes the worst off and is told as that.
    expect(told({ ...rooms(7, 1), coldOf: { bed: 7 } }, rooms(7, 5))).toEqual([]);
    const worst = { cold: { value: 7.2, room: 'lounge' }, coldOf: { bed: 5, lounge: 7.2 } };
    expect(told(rooms(7, 1), worst).map(([words]) => words)).toEqual([
      'bed is too cold only 5.0 h a day with somebody in (was 7.0)',
    ]);
  });
});

describe('mould', () => {
  const nowhere = { value: 0, room: '' };
  test.each([
    [den(2), den(1), 'mould is less likely (index 1.0, was 2.0, den)', true],
    [den(2), bath(1), 'mould is less likely (index 1.0, bath; was 2.0, den)', true],
    [den(0.5), bath(1.5), 'mould is likelier (index 1.5, bath; was 0.5, den)', false],
    [den(2), nowhere, 'mould is less likely (index 0.0, was 2.0, den)', true],
    [nowhere, den(2), 'mould is likelier (index 2.0, was 0.0, den)', false],
  ])('from %j to %j', (from, to, words, better) => {
    expect(told({ mould: from }, { mould: to })).toEqual([[words, better]]);
  });

  test('where nothing grows its index is not worth a word, nor is a little more of it', () => {
    expect(told({ mould: den(0.2) }, { mould: den(0.9) })).toEqual([]);
    expect(told({ mould: den(0.9) }, { mould: den(0.2) })).toEqual([]);
    expect(told({ mould: den(0.2) }, { mould: den(1) })).toHaveLength(1);
    expect(told({ mould: den(3) }, { mould: den(3.29) })).toEqual([]);
  });
});

describe('damp air a little more or less of the time', () => {
  const words = (from: Partial<PlanFigures>, to: Partial<PlanFigures>) =>
    effectsOf(figures(from), figures(to)).map(({ word }) => word);

  test('is nothing that anybody notices, up to two and a half points', () => {
    expect(words({ damp: 0 }, { damp: 2.4 })).toEqual([]);
    expect(words({ damp: 82 }, { damp: 79.6 })).toEqual([]);
    expect(words({ damp: 0 }, { damp: 2.5 })).toEqual(['damper']);
    expect(words({ damp: 82.5 }, { damp: 80 })).toEqual(['drier']);
  });

  test('is told where mould begins to grow with it, or ends', () => {
    const [none, grows] = [den(0.85), den(1.1)];
    expect(words({ mould: none }, { damp: 1.5, mould: grows })).toEqual(['damper']);
    expect(words({ damp: 1.5, mould: grows }, { mould: none })).toEqual(['drier']);
    expect(words({ spots: 0.4 }, { damp: 1.5, spots: 1.2 })).toEqual(['damper']);
    // Grown already, less of it, or too little damp to be what it comes from.
    expect(words({ mould: den(1.1) }, { damp: 1.5, mould: den(1.3) })).toEqual([]);
    expect(words({ mould: grows }, { damp: 1.5, mould: none })).toEqual([]);
    expect(words({ mould: none }, { damp: 0.9, mould: grows })).toEqual([]);
    expect(words({ spots: 1.1 }, { damp: 1.5, spots: 1.3 })).toEqual([]);
    // Nor wet corners that are too seldom wet to count.
    expect(words({ spots: 0.2 }, { damp: 1.5, spots: 0.9 })).toEqual([]);
  });
});

describe('damp that is in one room', () => {
  const spots = (mean: number, wettest: { value: number; room: string }) => ({
    spots: mean,
    wettest,
  });
  const damp = (mean: number, dampest: { value: number; room: string }) => ({
    damp: mean,
    dampest,
  });

  test('is told of that room where the mean hides it', () => {
    expect(told(damp(9, den(54)), damp(1, den(6)))).toEqual([
      ['the dampest room is dry enough 94 % of the time (was 46 %, den)', true],
    ]);
    expect(told(damp(9, den(54)), damp(4, bath(10)))).toEqual([
      ['the dampest room is dry enough 90 % of the time (bath; was 46 %, den)', true],
    ]);
    expect(told(spots(1.2, bath(7)), spots(5, den(30)))).toEqual([
      ['the wettest corner is wet 30 % of the time (den; was 7 %, bath)', false],
    ]);
    expect(told({}, damp(4, den(24)))).toEqual([
      ['the dampest room is too damp 24 % of the time (was 0 %, den)', false],
    ]);
  });

  test('asks for four times the points of all rooms, and for half of what is clear', () => {
    const weight = (from: number, to: number, means = [0, 0]) =>
      effectsOf(figures(damp(means[0]!, den(from))), figures(damp(means[1]!, den(to)))).map(
        (effect) => effect.weight,
      );
    expect(weight(40, 20)).toEqual([1]);
    expect(weight(40, 30)).toEqual([0.5]);
    expect(weight(40, 30.1)).toEqual([]);
    expect(weight(40, 20, [8, 2])).toEqual([1.2]);
    expect(weight(40, 0, [8, 2])).toEqual([2]);
  });

  test('is told of that room, where the mean does not count, and weighs as much as the mean', () => {
    const [effect] = effectsOf(figures(damp(8, den(30))), figures(damp(4, den(20))));
    expect(effect).toMatchObject({ better: true, weight: 0.8 });
    expect(effect!.words).toMatch(/^the dampest room is dry enough 80/);
    // A mean that counts with the one plan or the other is told itself, and so is one that goes the other way.
    expect(told(damp(10, den(30)), damp(6, den(20)))[0]![0]).toMatch(/^rooms are dry enough 94 %/);
    expect(told(damp(4, den(30)), damp(8, den(20)))[0]![0]).toMatch(/^rooms are too damp 8 %/);
  });

  test('is nothing where that room is seldom so, and the mean where all rooms are', () => {
    expect(told(damp(3, den(19)), damp(1, den(1)))).toEqual([]);
    expect(told(spots(0.5, den(11.9)), {})).toEqual([]);
    expect(told(damp(40, den(60)), damp(10, den(30)))).toEqual([
      ['rooms are dry enough 90 % of the time (was 60 %)', true],
    ]);
    // The mean tells more of it, and the other way round.
    expect(told(damp(9, den(20)), damp(3, bath(30)))).toEqual([
      ['rooms are dry enough 97 % of the time (was 91 %)', true],
    ]);
  });
});

test.each([
  [
    'spots',
    'cold corners are dry enough 90 % of the time (was 70 %)',
    'cold corners are wet 30 % of the time (was 10 %)',
  ],
  [
    'damp',
    'rooms are dry enough 90 % of the time (was 70 %)',
    'rooms are too damp 30 % of the time (was 10 %)',
  ],
  [
    'dry',
    'air is moist enough 90 % of the time (was 70 %)',
    'air is too dry 30 % of the time (was 10 %)',
  ],
  [
    'warm',
    'people are too warm only 10 % of the time (was 30 %)',
    'people are too warm 30 % of the time (was 10 %)',
  ],
])('%s: better is told by what is fine, or by how little is wrong', (key, better, worse) => {
  expect(told({ [key]: 30 }, { [key]: 10 })).toEqual([[better, true]]);
  expect(told({ [key]: 10 }, { [key]: 30 })).toEqual([[worse, false]]);
  expect(told({ [key]: 10 }, { [key]: 10.9 })).toEqual([]);
});

test('of heat that is gone no share of nought is told', () => {
  expect(told({ warm: 14 }, { warm: 0.4 })).toEqual([
    ['hardly anybody is too warm any more (was 14 % of the time)', true],
  ]);
  expect(told({ warm: 14 }, { warm: 0.6 })).toEqual([
    ['people are too warm only 1 % of the time (was 14 %)', true],
  ]);
});

describe('air', () => {
  const co2 = (value: number, over = 5): AirFigure => ({
    ...{ name: 'co2', label: 'CO2', unit: 'ppm', kind: 'worst night', value, over, minded: false },
  });
  const dust = (value: number): AirFigure => ({
    ...{ name: 'pm25', label: 'PM2.5', unit: 'µg/m3', kind: 'mean', value, over: 5, minded: false },
  });

  test('levels that differ by a tenth or more', () => {
    expect(told({ air: [co2(2000), dust(10)] }, { air: [co2(1500), dust(12)] })).toEqual([
      ['there is less CO2 (1500 ppm at night, was 2000)', true],
      ['there is more PM2.5 (12.0 µg/m3, was 10.0)', false],
    ]);
    expect(told({ air: [co2(2000)] }, { air: [co2(1801)] })).toEqual([]);
    expect(told({ air: [co2(1801)] }, { air: [co2(2000)] })).toEqual([]);
  });

  test('that doubles weighs as much as air that is halved', () => {
    const weight = (from: number, to: number): number =>
      effectsOf(figures({ air: [co2(from)] }), figures({ air: [co2(to)] }))[0]!.weight;
    expect(weight(1000, 2000)).toBe(2.5);
    expect(weight(2000, 1000)).toBe(2.5);
  });

  test('what somebody minds under its limit already, once it halves or doubles', () => {
    const pollen = (value: number, minded = true): AirFigure => ({
      ...{ name: 'pollen', label: 'pollen', unit: 'grains/m3', kind: 'mean', value, over: 0 },
      minded,
    });
    expect(told({ air: [pollen(8.3)] }, { air: [pollen(1.9, false)] })).toEqual([
      ['there is less pollen (1.9 grains/m3, was 8.3)', true],
    ]);
    expect(told({ air: [pollen(1.9, false)] }, { air: [pollen(8.3)] })).toEqual([
      ['there is more pollen (8.3 grains/m3, was 1.9)', false],
    ]);
    expect(told({ air: [pollen(8.3)] }, { air: [pollen(4.2)] })).toEqual([]);
    // Both with the digits that the larger needs, also where both are small.
    const small = told({ air: [pollen(0.776)] }, { air: [pollen(0.344)] });
    expect(small).toEqual([['there is less pollen (0.34 grains/m3, was 0.78)', true]]);
    const tiny = told({ air: [pollen(0.0776)] }, { air: [pollen(0.0344)] });
    expect(tiny).toEqual([['there is less pollen (0.034 grains/m3, was 0.078)', true]]);
    expect(told({ air: [pollen(2, false)] }, { air: [pollen(0.5, false)] })).toEqual([]);
  });

  test('far under its limit comes after what is near one, however much it changes', () => {
    const from = { air: [co2(2000, 1)], mould: den(5.1) };
    const to = { air: [co2(1200, 0)], mould: den(4.1) };
    expect(effectsOf(figures(from), figures(to)).map(({ of }) => of)).toEqual(['mould', 'air']);
    const often = { ...from, air: [co2(2000, 30)] };
    const less = { ...to, air: [co2(800, 20)] };
    expect(effectsOf(figures(often), figures(less)).map(({ of }) => of)).toEqual(['air', 'mould']);
  });

  test('that is stale is told once before the mould that comes with it, however many species tell it', () => {
    const vapours = (value: number, over: number): AirFigure => ({
      ...{ name: 'tvoc', label: 'TVOC', unit: 'µg/m3', kind: 'mean', value, over, minded: false },
    });
    const fresh = { air: [co2(1100, 8), vapours(98, 0)] };
    const shut = { air: [co2(3300, 60), vapours(640, 12)], mould: den(1.3), spots: 0.5 };
    const kinds = (from: Partial<PlanFigures>, to: Partial<PlanFigures>) =>
      effectsOf(figures(from), figures(to)).map(({ word }) => word);
    expect(kinds(fresh, shut)).toEqual(['more TVOC', 'more mould', 'more CO2']);
    expect(kinds(shut, fresh)).toEqual(['less TVOC', 'less mould', 'less CO2']);
    // What hardly matters does not come between them, nor does what gets worse come between what gets better.
    expect(kinds(fresh, { ...shut, mould: den(0), spots: 2 })).toEqual([
      ...['more TVOC', 'more CO2', 'wetter corners'],
    ]);
    expect(
      kinds(
        { air: [co2(3300, 60), vapours(98, 0)] },
        { air: [co2(1100, 8), vapours(640, 12)], mould: den(2) },
      ),
    ).toEqual(['more TVOC', 'more mould', 'less CO2']);
  });

  test('counts in full from a tenth of the time beyond its limit on', () => {
    const near = (over: number) =>
      effectsOf(figures({ air: [co2(2000, over)] }), figures({ air: [co2(1500, 0)] }))[0]!.nearness;
    expect([5, 10, 40].map(near)).toEqual([0.5, 1, 1]);
  });

  test('not of air that hardly ever is beyond its limit in either, nor of what one does not know', () => {
    expect(told({ air: [co2(800, 0.4)] }, { air: [co2(600, 0)] })).toEqual([]);
    expect(told({ air: [co2(800, 0.6)] }, { air: [co2(600, 0)] })).toHaveLength(1);
    expect(told({ air: [co2(800, 0)] }, { air: [co2(1000, 0.6)] })).toHaveLength(1);
    expect(told({ air: [] }, { air: [co2(1000)] })).toEqual([]);
    expect(told({ air: [co2(0)] }, { air: [co2(1000)] })).toEqual([]);
  });
});

test('what matters most comes first, and what nobody would notice is left out', () => {
  const from = figures({ warm: 20, damp: 20, dry: 20, cold: den(1), spots: 20 });
  const to = figures({ warm: 10, damp: 10, dry: 17, cold: den(0), spots: 18 });
  // Clear to anybody: half an hour of cold, 5 points of damp, 5 of heat, 15 of dry air, 6 of wet corners.
  expect(effectsOf(from, to).map(({ of, weight }) => [of, weight])).toEqual([
    ['cold', 2],
    ['damp', 2],
    ['warm', 2],
    ['spots', 2 / 6],
  ]);
});

test('mould that would be seen, and is none otherwise, comes before the damp that it comes from', () => {
  const wet = figures({ mould: den(4.9), damp: 82, spots: 73 });
  const dried = figures({ mould: den(0), damp: 12, spots: 13, cold: den(0) });
  expect(effectsOf(wet, dried).map(({ of }) => of)).toEqual(['mould', 'spots', 'damp']);
  expect(effectsOf(dried, wet).map(({ of }) => of)).toEqual(['mould', 'spots', 'damp']);
  const justSeen = figures({ mould: den(3), damp: 82, spots: 73 });
  expect(effectsOf(justSeen, dried).map(({ of }) => of)).toEqual(['mould', 'spots', 'damp']);
  // An index under 3 is seen under a microscope only.
  const unseen = figures({ mould: den(2.9), damp: 82, spots: 73 });
  expect(effectsOf(unseen, dried).map(({ of }) => of)).toEqual(['spots', 'damp', 'mould']);
  // Some is left: the index counts as any other.
  const left = figures({ mould: den(1.5), damp: 12, spots: 13 });
  expect(effectsOf(wet, left).map(({ of }) => of)).toEqual(['spots', 'damp', 'mould']);
});

test('mould that starts comes before levels that grow many times over', () => {
  const tvoc = (value: number, over: number): AirFigure => ({
    ...{ name: 'tvoc', label: 'TVOC', unit: 'µg/m3', kind: 'mean', value, over, minded: false },
  });
  const from = figures({ air: [tvoc(133, 0)], damp: 1, spots: 1 });
  const to = figures({ air: [tvoc(2121, 90)], damp: 100, spots: 100, mould: den(5.3) });
  expect(effectsOf(from, to).map(({ of }) => of)).toEqual(['mould', 'spots', 'damp', 'air']);
  // Five hours of cold a day and more are not held down: that is people, not a reading.
  const cold = figures({ ...to, cold: den(9) });
  expect(effectsOf(from, cold)[0]!.of).toBe('cold');
});
