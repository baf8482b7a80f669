import { expect, test } from 'vitest';
import { bargainWords } from '../../../src/report/page/bargain-words.ts';
import type { ReportStudy } from '../../../src/studies/report-study.ts';
import { somePlan } from '../../studies/some-plan.ts';
import { readMarkup, textOf } from './read-markup.ts';

const cold = { room: 'main bedroom', hours: 7.6, caution: 'Settings fall below 18 °C there.' };
const point = (kelvin: number, more: object = {}) => ({
  ...{ run: kelvin, plan: 'drier', money: 900 + 50 * kelvin, hours: 900 - 100 * kelvin },
  ...{ kelvin, setpoint: null, cold: null, ...more },
});

function words(at: object, alone = false): string {
  const bend = alone ? null : { at, before: 0.1, after: 2 };
  const front = alone ? [at] : [point(-4), at, point(2)];
  const bargain = { curves: [], front, bend, tried: 9 };
  const study = { bargain, options: [{ measures: somePlan('now') }] } as unknown as ReportStudy;
  return textOf(readMarkup(bargainWords(study)!.markup));
}

test('a bend at a cold setting has the caution about cold rooms beside it', () => {
  const told = words(point(-3, { cold }));
  expect(told).toContain('It bends at drier, 3 °C cooler');
  expect(told).toContain(
    'Mind who is in the cold there: somebody is more than 0.5 °C below what is fine in main bedroom for 7.6 h a day in winter. Settings fall below 18 °C there. Infants and frail people come before any saving.',
  );
  expect(words(point(-3, { cold }), true)).toContain('Mind who is in the cold there');
  expect(words(point(-3))).not.toContain('Mind');
});
