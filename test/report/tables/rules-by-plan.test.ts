import { expect, test } from 'vitest';
import { cautionLine } from '../../../src/report/tables/caution-line.ts';
import { rulesByPlan } from '../../../src/report/tables/rules-by-plan.ts';
import { somePlan } from '../../studies/some-plan.ts';

const rule = {
  tells: true,
  ...{ fired: 520, per_week: 9.97, someone_home: 400, someone_awake: 300, could_act: 390 },
  ...{ acted_on: 130, duplicates: 52, active_hours: 876, missed: 104, held_back: 0 },
  by_hour: Array.from({ length: 24 }, (_, hour) => (hour === 7 ? 100 : hour > 17 ? 30 : 0)),
  could_act_by_hour: Array(24).fill(0),
};
const silent = {
  ...rule,
  fired: 0,
  per_week: 0,
  could_act: 0,
  active_hours: 0,
  missed: 0,
  by_hour: Array(24).fill(0),
};
const told = (by_rule: Record<string, typeof rule>) => ({
  ...somePlan('told'),
  alerts: { fired: 520, someone_home: 400, acted_on: 130, per_week: 9.97, by_rule },
});

test('how often, how many heard, done, again and missed, and at which hours', () => {
  const text = rulesByPlan([somePlan('now'), told({ 'stale air': rule, silent })], 80);
  expect(text).toMatch(/^told: 10 alerts a week\n/);
  expect(text).toMatch(/^stale air +10 +75 +25 +10 +10 +2\.0 \.{7}#\.{10}\+{6}$/m);
  expect(text).toMatch(/^silent +0\.0 +- +- +- +0 +0\.0 \.{24}$/m);
  expect(text).not.toMatch(/held\n|held +missed/);
  expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('what quiet hours held back is weekly as what stands beside it', () => {
  const text = rulesByPlan([told({ a: { ...rule, held_back: 832 } })], 80);
  expect(text).toMatch(/held +missed/);
  expect(text).toMatch(/^a +10 +75 +25 +10 +10 +16 +2\.0 /m);
});

test('a rule that only switches something rings nobody', () => {
  const text = rulesByPlan([told({ damp: rule, dryer: { ...rule, tells: false } })], 80);
  expect(text).toMatch(/^dryer +\(10\) +- +- +10 /m);
  expect(text).toContain('In brackets: switches something and tells nobody');
});

test('no rules at all are said', () => {
  expect(rulesByPlan([somePlan('now')], 80)).toBe('No plan has rules.');
});

test('cautions in a few words, those of all plans first', () => {
  const caution = (id: string) => ({ id, text: `${id} in full` });
  const plan = (name: string, ...ids: string[]) => ({ plan: name, cautions: ids.map(caution) });
  expect(cautionLine([plan('a', 'co-alarm', 'odd-price'), plan('b', 'co-alarm')])).toBe(
    'Cautions: burning fuel needs a carbon-monoxide alarm. Some plans: odd price.',
  );
  expect(cautionLine([plan('a'), plan('b', 'mould')])).toBe(
    'Cautions of some plans: mould index: a risk, not a finding.',
  );
  expect(cautionLine([plan('a', 'odd-band', 'source-too-small', 'cop-beyond-table')])).toBe(
    'Cautions: a band ends below where it begins; the source of heat is too small for the coldest days; the COP of the coldest days is not known.',
  );
  expect(cautionLine([plan('a')])).toBe('');
});
