import { expect, test } from 'vitest';
import { heldTrial } from '../../../src/report/page/held-trial.ts';
import type { ReportInput } from '../../../src/report/page/report-input.ts';
import { somePlan } from '../../studies/some-plan.ts';
import { MONDAY, someHours } from './picture-sample.ts';

const HOUR = 3600;
const living = {
  ...{ engine: '', setup: '', file: 'h.yaml', set: [] },
  offer: {
    ...{ heats: true, setpoint: 20, night: null, presence: true, airing: true },
    ...{ room: null, electricity: null },
  },
};
const input = { living, study: { options: [{ measures: somePlan('now') }] } };

/** Spans of so many days with the coldest and the dampest week from these hours on. */
function spans(days: number, coldest: number, dampest: number) {
  const data = {
    ...someHours({ temperature: Array.from({ length: 24 * days }, () => 20) }),
    weeks: [
      { word: 'coldest', hour: coldest },
      { word: 'dampest', hour: dampest },
    ] as const,
  };
  return heldTrial(input as unknown as ReportInput, data)!.spans.map(({ name, span }) => [
    ...[name, (span.start - MONDAY) / HOUR, span.hours],
  ]);
}

test('thirty days have their week in the middle, and stay inside the period', () => {
  // 720 h less a week of 168 leave 276 before and after it.
  expect(spans(365, 1000, 5000)).toEqual([
    ['coldest 30 days', 724, 720],
    ['dampest 30 days', 4724, 720],
  ]);
  expect(spans(365, 100, 8590).map(([, from]) => from)).toEqual([0, 8040]);
});

test('the first day begins at midnight of the household', () => {
  const data = { ...someHours({ temperature: [20, 20, 20] }), weeks: [] };
  expect(heldTrial(input as unknown as ReportInput, data)!.begins % 86400).toBe(0);
  expect(heldTrial(input as unknown as ReportInput, data)!.begins).toBeLessThanOrEqual(MONDAY);
});

test('a period of less than sixty days has none', () => {
  expect(spans(60, 300, 300)).toHaveLength(2);
  expect(spans(59, 300, 300)).toEqual([]);
});
