import { expect, test } from 'vitest';
import { clockHint, numberHint } from '../../src/scenario/everyday-hints.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { homeWith } from './problems-of.ts';

test.each([
  ['27 p', 'write 0.27'],
  ['27p/kWh', 'write 0.27'],
  ['34 ct', 'write 0.34'],
  ['5.5 cents per kWh', 'write 0.055'],
  ['0.34 EUR/kWh', 'write 0.34'],
  ['£0.27', 'write 0.27'],
  ['€ 2,500', 'write 2500'],
  ['2,500', 'write 2500'],
  ['12,345.50 USD', 'write 12345.5'],
  ['.27 £', 'write 0.27'],
  ['0.27', ''],
  ['cheap', ''],
  ['5 kg', ''],
  ['about 5', ''],
  ['1.2.3', ''],
  ['-5 p', ''],
])('a number written as %j: %j', (text, hint) => expect(numberHint(text)).toBe(hint));

test.each([
  ['7am', 'write "07:00"'],
  ['7:30 PM', 'write "19:30"'],
  ['12 a.m.', 'write "00:00"'],
  ['12pm', 'write "12:00"'],
  ['10pm-6am', 'write "22:00-06:00"'],
  ['10 pm to 6.15 am', 'write "22:00-06:15"'],
  ['13pm', ''],
  ['0am', ''],
  ['noon', ''],
  ['6am-7am-8am', ''],
])('a time written as %j: %j', (text, hint) => expect(clockHint(text)).toBe(hint));

test.each([
  ['money: { electricity: 27 p }', '(write 0.27)'],
  ['money: { electricity: { price: £0.27 } }', '(write 0.27)'],
  [
    'plans: { a: {}, b: { change: {}, purchases: [{ what: x, price: "2,500", lasts: 9 y }] } }',
    '(write 2500)',
  ],
  ['household: { airing: [{ room: living, at: 7am }] }', '(write "07:00")'],
  ['heating: { hours: 6am-10pm }', '(write "06:00-22:00")'],
  ['cooling: { temp: 25 }', '(did you mean "setpoint"?)'],
  ['heating: { source: electric radiators }', '(did you mean "direct electric"?)'],
  ['devices: { f: { kind: exhaust fan, room: living } }', '(did you mean "extract fan"?)'],
  ['household: { people: [{ pattern: home office }] }', '(did you mean "works at home"?)'],
])('%s is told what to write', (more, hint) => {
  expect(() => readScenario(homeWith(more), 'h.yaml')).toThrow(hint);
});

test('a number that is too hot in °C is asked about as °F where that may be', () => {
  const refused = (setpoint: string) => {
    try {
      readScenario(homeWith(`heating: { setpoint: ${setpoint} }`), 'h.yaml');
    } catch (error) {
      return String(error);
    }
    return '';
  };
  expect(refused('68')).toContain('did you mean "68 °F"?');
  expect(refused('400')).not.toContain('°F"?'); // 204 °C
  expect(refused('68 °C')).not.toContain('did you mean');
});
