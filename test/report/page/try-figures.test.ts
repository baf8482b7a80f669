import { expect, test } from 'vitest';
import type { LivingFigures } from '../../../src/living/messages.ts';
import { atOtherPrice, triedFigures } from '../../../src/report/page/try-figures.ts';

const inRoom = (value: number) => ({ value, room: 'den' });
const some = (over: Partial<LivingFigures['figures']> = {}): LivingFigures => ({
  figures: {
    ...{
      plan: 'now',
      money: 1500.4,
      energy: 9000,
      cold: inRoom(6.66),
      warm: 2,
      warmBy: 0,
      damp: 55.4,
    },
    ...{ dry: 3, spots: 34.6, mould: inRoom(2.56), alerts: 0, part: null },
    ...{ coldOf: {}, dampest: inRoom(70), wettest: inRoom(60) },
    air: [
      {
        name: 'co2',
        label: 'CO2',
        unit: 'ppm',
        kind: 'worst night',
        value: 1363.4,
        over: 20,
        minded: false,
      },
      {
        name: 'pm25',
        label: 'PM2.5',
        unit: 'µg/m3',
        kind: 'mean',
        value: 10.06,
        over: 2,
        minded: false,
      },
    ],
    ...over,
  },
  ...{ heat: 6073.6, electricity: 2700, coldSpot: [80], temperature: [18] },
  ...{ settings: [], plan: '' },
});

test('figures are told with the digits of a comparison, changes of the printed ones', () => {
  const told = triedFigures(some(), some({ money: 1449.6, damp: 64.6, dry: 12.2 }), 'GBP', true);
  const cells = told.map(({ name, before, after, change, look, unit }) =>
    [name, before, after, change, look, unit].join('|'),
  );
  expect(cells).toEqual([
    'money|1500|1450|-50|better|GBP a year',
    'heat to rooms|6074|6074|0|same|kWh',
    'too cold, room worst off|6.7|6.7|0.0|same|h a day',
    'too warm, somebody in|2|2|0|same|% of the time',
    'too damp|55|65|+10|worse|% of the time',
    'too dry|3|12|+9|worse|% of the time',
    'corners wet enough for mould|35|35|0|same|% of the time',
    'highest mould index|2.6|2.6|0.0|same|0 to 6',
    'CO2, night, room worst off|1363|1363|0|same|ppm',
    'PM2.5, mean of the rooms|10.1|10.1|0.0|same|µg/m3',
  ]);
});

test('levels beside each other have the decimals of the larger', () => {
  const level = (value: number) => some({ air: [{ ...some().figures.air[1]!, value }] });
  const told = (was: number, is: number) => {
    const { before, after, change } = triedFigures(level(was), level(is), 'GBP', true).at(-1)!;
    return [before, after, change];
  };
  expect(told(24.6, 9.4)).toEqual(['25', '9', '-16']);
  expect(told(9.4, 24.6)).toEqual(['9', '25', '+16']);
  expect(told(19.94, 9.4)).toEqual(['19.9', '9.4', '-10.5']);
});

test('of a part of the period there is no money, and what takes the whole of it', () => {
  expect(triedFigures(some(), some(), 'GBP', false).map(({ name }) => name)).toEqual([
    ...['heat to rooms', 'too cold, room worst off', 'too damp', 'too dry'],
    'corners wet enough for mould',
  ]);
});

test('another price of electricity is known at once', () => {
  // 2,700 kWh in a year, at 0.25 a kWh and half as much again
  const { figures } = atOtherPrice(some(), 0.25, [1, 1.5], 1);
  expect(figures.money).toBeCloseTo(1500.4 + 2700 * 0.125, 9);
  expect(atOtherPrice(some(), 0.25, [1, 1.5], 0.5).figures.money).toBeCloseTo(1500.4 + 675, 9);
});
