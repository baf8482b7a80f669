import { describe, expect, test } from 'vitest';
import { answersOfForm, formFields, SHOWN } from '../../../src/scenario/start/form-fields.ts';
import type { Answers } from '../../../src/scenario/start/question.ts';
import { troublesOf } from '../../../src/scenario/start/question.ts';
import { QUESTIONNAIRE } from '../../../src/scenario/start/questionnaire.ts';

const context = { weather: [] };
const field = (id: string, answers: Answers) =>
  formFields(QUESTIONNAIRE, answers, context).find((one) => one.id === id)!;

describe('fields of a form', () => {
  test('say what is usual with the answers before them', () => {
    expect(field('size', {}).usual).toBe('2');
    expect(field('size', { kind: 'detached' }).usual).toBe('4');
    expect(field('rooms', { size: '1' }).usual).toBe('living 24, bathroom 4');
    expect(field('devices', {}).usual).toBe('none of them');
    expect(field('bothers', {}).usual).toBe('what heating costs; damp, wet windows, mould');
    expect(field('thermostat', {}).usual).toBe('one thermostat for the whole home');
    expect(field('fuel price', { heat: 'oil boiler' }).text).toBe(
      'What does a kWh of oil cost, in GBP?',
    );
  });

  test('are not asked where their answer would contradict', () => {
    const none = { heat: 'nothing' };
    expect(field('setpoint', none)).toMatchObject({ asked: false, given: null, trouble: '' });
    expect(field('setpoint', { ...none, setpoint: '20' })).toMatchObject({
      ...{ asked: false, given: '20', usual: '' },
      trouble: 'No answer is expected: nothing heats the home.',
    });
    expect(field('fuel price', { heat: 'heat pump', 'fuel price': '0.1' }).trouble).toBe(
      'No answer is expected: the heat is heat pump: its price is that of electricity.',
    );
  });

  test('say what is wrong in the words of the questionnaire', () => {
    const answers = { setpoint: '99', kind: 'tent', weather: 'fetsh', electricity: '27' };
    const told = formFields(QUESTIONNAIRE, answers, context).filter(
      ({ trouble }) => trouble !== '',
    );
    expect(told.map(({ id }) => id)).toEqual(['weather', 'kind', 'setpoint', 'electricity']);
    const troubles = troublesOf(QUESTIONNAIRE, answers, context);
    for (const { id, expected } of troubles) {
      expect(field(id, answers).trouble).toContain(`Expected ${expected}`);
    }
    expect(field('weather', answers).trouble).toBe(
      'Expected one of: fetch (did you mean "fetch"?).',
    );
  });
});

describe('what a form sends', () => {
  const sent = (...entries: [string, string][]) => answersOfForm(QUESTIONNAIRE, entries);

  test('empty is no answer', () => {
    expect(sent(['title', ' '], ['kind', ''], ['place', ' London '])).toEqual({ place: 'London' });
  });

  test('of several: some, none of them, or as usual', () => {
    const shown: [string, string] = [SHOWN, 'devices'];
    expect(sent(shown, ['devices', 'stove'], ['devices', 'purifier'])).toEqual({
      devices: ['stove', 'purifier'],
    });
    expect(sent(shown)).toEqual({ devices: [] });
    expect(sent(shown, ['devices', ''])).toEqual({});
    expect(sent(shown, ['devices', ''], ['devices', 'stove'])).toEqual({ devices: ['stove'] });
    expect(sent()).toEqual({});
  });

  test('what is no question is left aside', () => {
    expect(sent(['tent', 'yes'])).toEqual({});
  });
});
