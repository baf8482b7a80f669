import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { createLivingHome, type LivingHome } from '../../src/living/living-home.ts';
import { type LivingSource, livingReport } from '../../src/living/living-report.ts';
import { unpackSetup, unpackText } from '../../src/living/living-setup.ts';
import type { LivingFigures } from '../../src/living/messages.ts';
import { planFigures } from '../../src/studies/effects/plan-figures.ts';
import { prepareVariant } from '../../src/studies/plan-variant.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { AS_IT_IS } from '../../src/studies/trial/knobs.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { COTTAGE, DRY_PLAN, studyOf } from '../report/page/cottage.ts';
import { readOnce } from '../scenario/read-once.ts';

const TEXT = COTTAGE + DRY_PLAN;
const WEATHER = readFileSync('weather/saltmere-typical.csv', 'utf8');
const weather = readWeather(WEATHER, 'w.csv');
let source: LivingSource;
let home: LivingHome;

beforeAll(async () => {
  const study = await studyOf(TEXT);
  source = {
    ...{ scenario: study.scenario, text: TEXT, files: new Map([['w.csv', WEATHER]]) },
    ...{ weather, set: ['/heating/setpoint=17'], baseline: study.options[0]!, room: 'nook' },
  };
  home = createLivingHome(unpackSetup(livingReport(source, 'post()').setup));
});

const figuresOf = (...asked: Parameters<LivingHome['answer']>): LivingFigures => {
  const answer = home.answer(...asked);
  if ('problems' in answer) throw new Error(answer.problems.join());
  return answer;
};

describe('a home in a page', () => {
  test('carries the weather to the last bit, and the script', () => {
    const made = livingReport(source, 'post("é")');
    expect(unpackText(made.engine)).toBe('post("é")');
    expect(made).toMatchObject({ file: 'cottage.yaml', set: ['/heating/setpoint=17'] });
    const setup = unpackSetup(made.setup);
    expect(setup.weather).toEqual(weather);
    expect(setup).toMatchObject({ text: TEXT, plan: 'now', room: 'nook' });
  });

  test('carries the text of the weather only where the scenario takes its place from it', () => {
    expect(unpackSetup(livingReport(source, '').setup).files.map(([path]) => path)).toEqual([
      'w.csv',
    ]);
    const text = TEXT.replace('longitude: -1.9,', 'longitude: -1.9, elevation: 20 m,');
    const scenario = readOnce(text, 'cottage.yaml');
    expect(unpackSetup(livingReport({ ...source, text, scenario }, '').setup).files).toEqual([]);
  });

  test('numbers that are not known come back as such', () => {
    const windDirection = weather.windDirection.map((x, k) => (k === 3 ? Number.NaN : x));
    const made = livingReport({ ...source, weather: { ...weather, windDirection } }, '');
    expect(unpackSetup(made.setup).weather.windDirection[3]).toBeNaN();
  });

  test('gives the figures that a run of the same words gives', () => {
    const trial = { ...AS_IT_IS, warmer: 1.5, dehumidifier: 50 };
    const { figures, heat, settings, plan } = figuresOf({ trial, span: null });
    const set = ['/heating/setpoint=17', ...settings];
    const prepared = prepareVariant(source.scenario, source.files, { plan: 'now', set });
    const period = { start: Date.UTC(2023, 0, 5) / 1000, hours: 240 };
    const { measures } = runPlan({ plan: prepared, weather, period });
    expect(figures).toEqual(planFigures({ ...measures, plan: 'now' }));
    expect(heat).toBe(measures.heating.useful_kwh);
    expect(plan).toContain('setpoint: 18.5');
    expect(plan).toContain('target: 50 %');
  });

  test('a part of the period is run alone', () => {
    const span = { start: Date.UTC(2023, 0, 7) / 1000, hours: 48 };
    const part = figuresOf({ trial: AS_IT_IS, span });
    expect(part.temperature).toHaveLength(2);
    expect(part.heat).toBeGreaterThan(0);
    expect(part.heat).toBeLessThan(figuresOf({ trial: AS_IT_IS, span: null }).heat / 2);
  });

  test('what cannot be is told in words', () => {
    const answer = home.answer({ trial: { ...AS_IT_IS, warmer: 40 }, span: null });
    expect('problems' in answer && answer.problems.join()).toMatch(/°C.*; got /);
  });
});
