import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { triedFigures } from '../../src/report/page/try-figures.ts';
import { planFigures } from '../../src/studies/effects/plan-figures.ts';
import { prepareVariant, variantScenario } from '../../src/studies/plan-variant.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { AS_IT_IS, type Trial } from '../../src/studies/trial/knobs.ts';
import { trialOffer, trialSettings } from '../../src/studies/trial/trial.ts';
import { withMinus } from '../../src/units/minus-sign.ts';
import { seededRandom } from '../../src/units/seeded-random.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { readOnce } from '../scenario/read-once.ts';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import { accessibilityFaults, closePages, openReport } from './report-pages.ts';
import { FLAT_SET, writtenFlat } from './written-flat.ts';
import { WRITING_TIME } from './written-report.ts';

// The home of a report run again in its page, beside the program itself.

const found = await findBrowser();
let file = '';
let browser: Browser;
let page: Page;
let wrong: () => Promise<readonly string[]>;

describe.skipIf(found === null)('a home that is run again in its page', () => {
  beforeAll(async () => {
    file = await writtenFlat();
    browser = await openBrowser();
    ({ page, wrong } = await openReport(browser, file));
    await page.locator('#try').scrollIntoViewIfNeeded();
    await ran(page);
  }, WRITING_TIME);
  afterAll(() => closePages(browser));

  test('shows as it is without being asked and nothing else, and no fault of accessibility', async () => {
    const [money] = await rowsOf(page);
    expect(money![1]).toBe(money![2]);
    const shown = async () => {
      const texts = await page.locator('#try-figures tr').first().locator('th').all();
      const seen = await Promise.all(texts.map((one) => one.isVisible()));
      return [...seen, await page.locator('#try-lines').isVisible()];
    };
    expect(await shown()).toEqual([true, true, false, false, false]);
    await turn(page, { ...AS_IT_IS, warmer: 1 });
    expect(await shown()).toEqual([true, true, true, true, true]);
    await turn(page, AS_IT_IS);
    expect(await shown()).toEqual([true, true, false, false, false]);
    const days = await page.locator('#try-lines text').allTextContents();
    expect(days.filter((text) => /^(\d+ )?[A-Z][a-z][a-z]$/.test(text))).not.toEqual([]);
    const names = await page.locator('nav a').allInnerTexts();
    expect(names[names.indexOf('Try it') - 1]).toBe('Plans, a line each');
    expect(await page.locator('nav a[href="#try"]').count()).toBe(1);
    expect(await accessibilityFaults(page, '#try')).toEqual([]);
    expect(await wrong()).toEqual([]);
  });

  test('figures of 20 drawn settings are those of the program, to the last digit', async () => {
    await page.evaluate(`(function beat() {
      const now = performance.now();
      globalThis.gap = Math.max(globalThis.gap ?? 0, now - (globalThis.last ?? now));
      globalThis.last = now;
      setTimeout(beat);
    })()`);
    const spent = { held: 0, whole: 0 };
    const program = ownFigures();
    const random = seededRandom(2026);
    for (let k = 0; k < 20; k++) {
      const trial: Trial = {
        warmer: Math.round(random() * 16) / 2 - 4,
        night: random() < 0.5 ? null : Math.round(random() * 20) / 2 + 8,
        presence: random() < 0.3,
        airing: Math.round(random() * 6) * 5,
        dehumidifier: random() < 0.5 ? null : Math.round(random() * 20) + 42,
        electricity: Math.round(random() * 40) / 20 + 0.5,
      };
      await page.evaluate(
        'globalThis.began = globalThis.last = performance.now(); globalThis.gap = 0',
      );
      await turn(page, trial);
      spent.whole += await page.evaluate<number>('performance.now() - globalThis.began');
      spent.held += await page.evaluate<number>('globalThis.gap');
      expect(await rowsOf(page), JSON.stringify(trial)).toEqual(program(trial));
    }
    // It is all reckoned in other threads: the page is never held up for most of a run.
    expect(spent.held).toBeLessThan(0.5 * spent.whole);
    expect(await wrong()).toEqual([]);
  });

  test('a strip beside each figure follows it, on a scale that stays', async () => {
    const strips = page.locator('#try-figures tbody th .strip');
    const heat = async () => {
      const way = (await strips.nth(1).locator('.way').getAttribute('d')) ?? '';
      const [, from, to] = /^M([\d.]+) 8H([\d.]+)$/.exec(way)!;
      return [Number(from), Number(to)] as const;
    };
    expect(await strips.count()).toBe(await page.locator('#try-figures tbody tr').count());
    await turn(page, { ...AS_IT_IS, warmer: 1 });
    const [now, warmer] = await heat();
    await turn(page, { ...AS_IT_IS, warmer: -1 });
    const [still, cooler] = await heat();
    expect(now).toBe(80); // half of its 160 px
    expect(still).toBe(80);
    expect(warmer).toBeGreaterThan(82);
    expect(cooler).toBeLessThan(78);
  });

  test('the command and the plan are those of what is tried', async () => {
    await turn(page, { ...AS_IT_IS, warmer: 1 });
    const command = await page.locator('#try-command').textContent();
    expect(command).toContain(`roombalance run flat.yaml --set '${FLAT_SET[0]}'`);
    expect(command).toMatch(/ --set '\/heating\/setpoint=\[.*"setpoint":21\}/);
    expect(await page.locator('#try-plan').textContent()).toMatch(/^tried:\n {2}description: /);
    await page.locator('#try-reset').click();
    await ran(page);
    expect(await page.locator('#try-plan').textContent()).toContain('change: {}');
  });

  test('what is tried before the home as it is has been run is compared with it all the same', async () => {
    const other = await openReport(browser, file);
    await other.page.locator('#try').scrollIntoViewIfNeeded();
    await turn(other.page, { ...AS_IT_IS, warmer: 2 });
    expect(await rowsOf(other.page)).toEqual(ownFigures()({ ...AS_IT_IS, warmer: 2 }));
    await other.page.close();
  });

  test('runs as JavaScript where the policy has no WebAssembly, with the same figures', async () => {
    const plain = join(temporaryFolder(), 'plain.html');
    writeFileSync(plain, readFileSync(file, 'utf8').replace(" 'wasm-unsafe-eval'", ''));
    const other = await openReport(browser, plain);
    await other.page.locator('#try').scrollIntoViewIfNeeded();
    await ran(other.page);
    await page.locator('#try-reset').click();
    await ran(page);
    expect(await rowsOf(other.page)).toEqual(await rowsOf(page));
  });
});

/** Waits until the figures are of what is tried. */
const ran = (on: Page) => on.locator('#try:not(.stale)').waitFor({ timeout: 60_000 });

async function turn(on: Page, trial: Trial): Promise<void> {
  await on.evaluate(`(() => {
    const asked = ${JSON.stringify(trial)};
    const form = document.getElementById('try-form');
    const knob = (id) => document.getElementById('try-' + id) ?? {};
    form.reset();
    for (const id of ['warmer', 'night', 'airing', 'electricity']) {
      if (asked[id] !== null) knob(id).value = String(asked[id]);
    }
    if (asked.dehumidifier !== null) knob('target').value = String(asked.dehumidifier);
    knob('presence').checked = asked.presence;
    knob('dehumidifier').checked = asked.dehumidifier !== null;
    form.dispatchEvent(new Event('input', { bubbles: true }));
  })()`);
  await ran(on);
}

/** Cells of the figures of the whole period. */
const rowsOf = (on: Page): Promise<string[][]> =>
  on
    .locator('#try-figures tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.children].map((cell) => (cell.textContent ?? '').replace(/ [▴▾]$/, '')),
      ),
    );

/** The program's own figures of a trial, as the page prints them. */
function ownFigures(): (trial: Trial) => string[][] {
  const text = readFileSync('scenarios/flat.yaml', 'utf8');
  const weather = readWeather(readFileSync(`scenarios/${weatherOf(text)}`, 'utf8'), 'w.csv');
  const scenario = readOnce(text, 'flat.yaml');
  const files = new Map([
    [scenario.weather, readFileSync(`scenarios/${scenario.weather}`, 'utf8')],
  ]);
  const plan = scenario.plans[0]!.name;
  const variant = { plan, set: FLAT_SET };
  const raw = variantScenario(scenario, variant);
  const prepared = prepareVariant(scenario, files, variant);
  const offer = trialOffer(raw, prepared, 'bedroom', 0);
  const figures = (trial: Trial) => {
    const settings = trialSettings(raw, prepared, offer, trial);
    const tried = prepareVariant(scenario, files, { plan, set: [...FLAT_SET, ...settings] });
    const { from, to } = tried.period;
    const period = periodOf(weather, from, to, tried.household.clock);
    const { measures } = runPlan({ plan: tried, weather, period });
    return {
      ...{ figures: planFigures(measures), heat: measures.heating.useful_kwh, electricity: 0 },
      ...{ coldSpot: [], temperature: [], settings, plan: '' },
    };
  };
  const was = figures(AS_IT_IS);
  return (trial) =>
    triedFigures(was, figures(trial), prepared.prices.currency, true).map(
      ({ name, before, after, change, unit }) => [
        `${name} [${unit}]`,
        ...[before, after, withMinus(change)],
      ],
    );
}

const weatherOf = (text: string): string => /^weather: (.+)$/m.exec(text)![1]!;
