import { describe, expect, test } from 'vitest';
import type { AirFlow } from '../../../src/measures/plan-measures.ts';
import { airPairs } from '../../../src/report/air-pairs.ts';
import { freshAirTable } from '../../../src/report/tables/fresh-air-table.ts';
import { runTables } from '../../../src/report/tables/run-tables.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { ledger } from '../../measures/hand-made.ts';
import { somePlan } from '../../studies/some-plan.ts';

const flow = (from: string, to: string, l_per_s: number): AirFlow => ({ from, to, l_per_s });
const FLOWS = [
  flow('outdoors', 'den', 21),
  flow('den', 'outdoors', 3),
  flow('outdoors', 'bath', 9),
  flow('bath', 'outdoors', 27),
  flow('den', 'bath', 18.04),
  flow('cupboard', 'den', 0.51),
];
const PLAN = { ...somePlan('as-lived'), air_flows: FLOWS };

describe('flows of air side by side', () => {
  test('both ways in one line, the largest first, small ones counted', () => {
    expect(airPairs(PLAN)).toEqual({
      told: [
        { ends: ['outdoors', 'bath'], forth: 9, back: 27 },
        { ends: ['outdoors', 'den'], forth: 21, back: 3 },
        { ends: ['den', 'bath'], forth: 18.04, back: 0 },
      ],
      leftOut: 'One smaller pair is left out, with 0.6 L/s at most.',
    });
  });

  test('nothing is said of what is left out where all is told', () => {
    expect(airPairs({ ...PLAN, air_flows: FLOWS.slice(0, 5) }).leftOut).toBe('');
  });

  test('of very many rooms twenty lines are told and the rest is counted', () => {
    const many = Array.from({ length: 30 }, (_, k) => flow('outdoors', `room ${k}`, 10 + k));
    const { told, leftOut } = airPairs({ ...PLAN, air_flows: many });
    expect(told).toHaveLength(20);
    expect(told[0]!.forth).toBe(39);
    expect(leftOut).toBe('10 smaller pairs are left out, with 19.0 L/s at most.');
  });
});

test('the table fits a terminal, sentences first, and is said once', () => {
  const notices = [
    { id: 'fresh-air-in', text: 'Fresh air: 30.0 L/s on average in the heating season.' },
    { id: 'other', text: 'Something else.' },
  ];
  expect(freshAirTable({ ...PLAN, notices }, 80).split('\n')).toEqual([
    '- Fresh air: 30.0 L/s on average in the heating season.',
    '',
    '                there   back',
    'from      to    [L/s]  [L/s]',
    'outdoors  bath    9.0   27.0',
    'outdoors  den    21.0    3.0',
    'den       bath   18.0    0.0',
    'Means of the heating season, of the whole period where no month is cold; what a',
    'doorway exchanges both ways at once is in both. One smaller pair is left out,',
    'with 0.6 L/s at most.',
  ]);
  const all = runTables({ ...PLAN, notices }, ledger(2, [0]), UTC_CLOCK, 80);
  expect(all.split('Fresh air: 30.0')).toHaveLength(2);
  expect(all).toContain('- Something else. [other]');
});

test('long names stay within the width, and no flows are no table', () => {
  const long = 'a room with a name that goes on and on and on';
  const text = freshAirTable({ ...PLAN, air_flows: [flow('outdoors', long, 20)] }, 80);
  expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(freshAirTable({ ...PLAN, air_flows: [] }, 80)).toBe('');
});
