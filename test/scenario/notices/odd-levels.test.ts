import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

function asked(more: string): string[] {
  const scenario = readOnce(homeWith(more), 'h.yaml');
  const { cautions } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  return cautions.filter(({ id }) => id === 'odd-level').map(({ text }) => text);
}

const rule = (when: string): string[] =>
  asked(`rules: [{ name: damp, rooms: all, when: [{ ${when} }], response: [{ tell: air }] }]`);

test('levels in another unit are asked about once, for all rooms of a rule', () => {
  expect(rule('reading: humidity, over: 0.6, clear: 0.55')).toEqual([
    'The rule damp goes by 0.60 % relative humidity, drier than any home. If that is a share of 1, write 60.',
  ]);
  expect(rule('reading: temperature, under: 66')).toEqual([
    'The rule damp goes by 66 °C, hotter than any home. If that is °F, write "66 °F".',
  ]);
  expect(rule('reading: co2, over: 0.1')).toEqual([
    'The rule damp goes by 0.10 ppm of CO2, less than any air holds. If that is %, write 1000.',
  ]);
});

test('so are those by which windows are opened and shut again', () => {
  const airing =
    '{ name: damp air, room: living, when: [{ room: living, reading: humidity, over: 0.6 }] }';
  expect(asked(`household: { airing: [${airing}] }`)).toHaveLength(1);
  const shut = airing.replace(
    '0.6 }]',
    '60 %, clear: 55 % }], until: [{ room: living, reading: temperature, under: 61 }]',
  );
  expect(asked(`household: { airing: [${shut}] }`)).toEqual([
    'The airing damp air goes by 61 °C, hotter than any home. If that is °F, write "61 °F".',
  ]);
});

test('one per cent may be a whole share; so little CO2 as no share is taken for nothing else', () => {
  expect(rule('reading: humidity, over: 1')).toEqual([
    'The rule damp goes by 1 % relative humidity, drier than any home. If that is a share of 1, write 100.',
  ]);
  expect(rule('reading: co2, over: 200')).toEqual([
    'The rule damp goes by 200 ppm of CO2, less than any air holds.',
  ]);
});

test.each([
  'reading: humidity, over: 60 %',
  'reading: humidity, under: 5',
  'reading: humidity, over: 0',
  'reading: co2, over: 0',
  'reading: temperature, under: 66 °F',
  'reading: temperature, over: 45',
  'reading: co2, over: 450',
  'reading: tvoc, over: 0.5',
])('%s can be meant', (when) => {
  expect(rule(when)).toEqual([]);
});
