import { expect, test } from 'vitest';
import { beforeAfter } from '../../../src/report/page/before-after.ts';
import type { Spread } from '../../../src/studies/doubts/plan-draws.ts';
import { effectsOf } from '../../../src/studies/effects/plan-effects.ts';
import type { Judged, PlanFigures } from '../../../src/studies/effects/plan-figures.ts';
import type { ReportStudy } from '../../../src/studies/report-study.ts';
import { somePlan } from '../../studies/some-plan.ts';
import { all, readMarkup, textOf } from './read-markup.ts';

/** Cards of a fan that changes what the air carries most, and money by 20 a year, under some draws. */
function cards(pm25: readonly [number, number], spread: Omit<Spread, 'median'> | null): string[] {
  const figures = (plan: string, value: number) => ({
    ...{ plan, warm: 0, damp: 0, dry: 0, spots: 0 },
    ...{ cold: { value: 0, room: '' }, mould: { value: 0, room: '' } },
    air: [{ name: 'pm25', label: 'PM2.5', unit: 'µg/m3', kind: 'mean', value }],
  });
  const option = { name: 'fan', measures: somePlan('fan', { energy: 1020 }) };
  const changeOf = (_: (plan: Judged) => number) =>
    spread === null ? null : { median: 0, ...spread };
  const study = {
    options: [{ measures: somePlan('now') }, option],
    lines: [
      { figures: figures('now', pm25[0]), effects: [] },
      { figures: figures('fan', pm25[1]), effects: [{ of: 'air' }] },
    ],
    purchase: {
      about: { dries: false, room: null, option },
      draws: { changeOf, doubt: { samples: 9 } },
    },
  } as unknown as ReportStudy;
  const { markup } = beforeAfter(study);
  return all(readMarkup(markup), 'dd').map((card) => textOf(card).replaceAll(/\s+/g, ' '));
}

test('a change is told by where the draws lead, once where they all lead to one', () => {
  const money = (p10: number, p90: number) => cards([30, 20], { p10, p90 }).at(-1);
  expect(money(20, 20)).toMatch(/change \+20$/);
  expect(money(15, 15)).toMatch(/change \+15$/);
  expect(money(15, 25)).toMatch(/change \+15 to \+25$/);
  expect(cards([30, 20], null).at(-1)).not.toContain('change');
});

test('levels of the air have the decimals of the table of plans', () => {
  expect(cards([24.6, 9.4], null)[0]).toMatch(/^25 → becomes 9 µg/);
  expect(cards([14.6, 9.4], null)[0]).toMatch(/^14\.6 → becomes 9\.4 µg/);
});

test('of hot rooms, the figure that the answer goes by', () => {
  const none = { value: 0, room: '' };
  const plan = (name: string, warm: number, warmBy: number) => ({
    figures: {
      ...{ plan: name, warm, warmBy, damp: 0, dry: 0, spots: 0 },
      ...{ cold: none, mould: none, dampest: none, wettest: none, air: [], coldOf: {} },
    } as unknown as PlanFigures,
    effects: [],
  });
  const first = (warm: number, warmBy: number): string => {
    const [was, is] = [plan('now', 90, 2), plan('fan', warm, warmBy)];
    const option = { name: 'fan', measures: somePlan('fan') };
    const effects = effectsOf(was.figures, is.figures);
    const study = {
      options: [{ measures: somePlan('now') }, option],
      lines: [was, { ...is, effects }],
      purchase: { about: { dries: false, room: null, option }, draws: null },
    } as unknown as ReportStudy;
    return textOf(readMarkup(beforeAfter(study).markup)).replaceAll(/\s+/g, ' ');
  };
  // Two points more often is nothing beside four kelvins.
  expect(first(92, 6)).toContain('Hot rooms, too warm by2.0 → becomes 6.0 °C on average');
  expect(first(30, 2)).toContain('Too warm with somebody in90 → becomes 30 % of the time');
});
