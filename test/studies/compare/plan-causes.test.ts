import { expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { causesOf } from '../../../src/studies/compare/plan-causes.ts';
import { somePlan } from '../some-plan.ts';

const was = somePlan('as-lived');
const is = (changes: Partial<PlanMeasures>) => causesOf(was, { ...somePlan('plan'), ...changes });
const words = (changes: Partial<PlanMeasures>) =>
  is(changes).map((cause) => cause.words.replaceAll('\u00a0', ' '));

test('a plan that moves nothing has no causes', () => {
  expect(is({})).toEqual([]);
});

test('rooms that are warmer or cooler, as the mean of all', () => {
  const warmer = { over: { mean_temperature_c: 21.5 } };
  const { rooms } = somePlan('plan', { den: warmer });
  // One of two rooms is 2 °C warmer.
  expect(is({ rooms })).toEqual([
    { of: 'temperature', value: 1, unit: 'K', words: 'rooms are 1.0 °C warmer' },
  ]);
  const cooler = somePlan('plan', { den: { over: { mean_temperature_c: 18.5 } } });
  expect(words({ rooms: cooler.rooms })).toEqual(['rooms are 0.5 °C cooler']);
});

test('a building that loses less heat, and outdoor air, as shares of what there was', () => {
  const handbook_cross_check = {
    ...was.handbook_cross_check,
    heat_loss_coefficient_w_per_k: 150,
  };
  expect(words({ handbook_cross_check })).toEqual([
    'the building loses 25 % less heat at the same warmth',
  ]);
  const outdoor_air = { ...was.outdoor_air, l_per_s: 36 };
  expect(words({ outdoor_air })).toEqual(['20 % more outdoor air comes in']);
});

test('heat carried out by open windows: more or less than before, as their figures have it', () => {
  const losing = (openings_kwh: number) => ({
    ...was,
    airing: { ...was.airing, openings_kwh },
  });
  const [less] = causesOf(losing(934), losing(459));
  expect(less).toEqual({
    ...{ of: 'open windows', value: -475, unit: 'kWh/year' },
    words: 'open windows carry out 475 kWh a year less',
  });
  const [more] = causesOf(losing(459), losing(934));
  expect(more).toMatchObject({ value: 475, words: 'open windows carry out 475 kWh a year more' });
});

test('a purchase, as money a year; what is not bought any more is none', () => {
  const { money } = somePlan('plan', { purchaseCost: 45 });
  expect(words({ money })).toEqual(['what is bought costs 45 GBP a year']);
  const bought = { ...was, money };
  expect(causesOf(bought, was)).toEqual([]);
  const dearer = somePlan('plan', { purchaseCost: 95 });
  expect(causesOf(bought, { ...was, money: dearer.money }).map((cause) => cause.words)).toEqual([
    'what is bought costs 50 GBP a year more',
  ]);
});

test('a dearer kWh of heat, at the hours in which it is bought', () => {
  const paid = (heating: number) => ({
    ...was.money,
    by_use: { gas: { heating, cooling: 0, devices: 0, appliances: 0, standing: 0, other: 0 } },
  });
  const had = { ...was, money: paid(700) };
  const has = { ...somePlan('plan'), money: paid(800) };
  // 9000 kWh of useful heat are 10,000 kWh of gas.
  expect(causesOf(had, has).map((cause) => cause.words)).toEqual([
    'a kWh bought for heat costs 0.080 GBP, was 0.070',
  ]);
});

test('what moves most comes first', () => {
  const { rooms } = somePlan('plan', { den: { over: { mean_temperature_c: 20.1 } } }); // 0.3 K
  const outdoor_air = { ...was.outdoor_air, l_per_s: 60 }; // twice as much
  expect(is({ rooms, outdoor_air }).map(({ of }) => of)).toEqual(['outdoor air', 'temperature']);
});

test('water that devices take out, more or less than before, from 25 litres a year on', () => {
  const taking = (litres: number) => ({
    ...was,
    devices: {
      ...was.devices,
      detail: { drier: { water_kg: -litres } as PlanMeasures['devices']['detail'][string] },
    },
  });
  expect(causesOf(taking(100), taking(124))).toEqual([]);
  expect(causesOf(taking(100), taking(152))).toMatchObject([
    { value: 52, words: 'devices take 52 L more water a year out of the air' },
  ]);
  expect(causesOf(taking(152), taking(100))).toMatchObject([
    { value: -52, words: 'devices take 52 L less water a year out of the air' },
  ]);
});
