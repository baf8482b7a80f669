import { expect, test } from 'vitest';
import { planColumns } from '../../../src/report/page/plan-columns.ts';
import type { ReportStudy } from '../../../src/studies/report-study.ts';
import { somePlan } from '../../studies/some-plan.ts';

const inRoom = (value: number) => ({ value, room: 'den' });
const line = (plan: string, money: number, pm25: number) => ({
  figures: {
    ...{
      plan,
      money,
      energy: 9000,
      cold: inRoom(6),
      warm: 0,
      warmBy: 0,
      damp: 40,
      dry: 0,
      spots: 0,
    },
    ...{
      mould: inRoom(1),
      coldOf: {},
      dampest: inRoom(40),
      wettest: inRoom(0),
      alerts: 0,
      part: null,
    },
    air: [
      {
        name: 'pm25',
        label: 'PM2.5',
        unit: 'µg/m3',
        kind: 'mean' as const,
        value: pm25,
        over: 1,
        minded: false,
      },
    ],
  },
  ...{ description: '', verdict: '', effects: [], causes: [] },
});
const lines = [line('now', 1500, 10), line('a', 1492, 9.2), line('b', 1507.6, 8.9)];
const columns = planColumns({
  lines,
  options: [{ measures: somePlan('now') }],
} as unknown as ReportStudy);
const of = (head: string) => columns.find((column) => column.head === head)!;

test('money is told beyond the baseline, and counts from half a hundredth of it on', () => {
  const money = of('money');
  expect(lines.map((one, k) => money.print(one, k === 0))).toEqual(['1500', '-8', '+8']);
  expect(lines.map(money.look)).toEqual(['same', 'better', 'worse']);
  // 7.5 of 1500 is the least that counts.
  expect(money.look(line('c', 1507.4, 10))).toBe('same');
  expect(money.from).toBe(-8);
  expect(money.to).toBeCloseTo(7.6, 9);
});

test('air that differs by less than a tenth looks the same', () => {
  expect(lines.map(of('PM2.5').look)).toEqual(['same', 'same', 'better']);
});

test('what no plan has is left out', () => {
  expect(columns.map(({ head }) => head)).toEqual([
    ...['money', 'energy', 'too cold', 'too damp', 'mould', 'PM2.5'],
  ]);
});
