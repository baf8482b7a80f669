import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { JANUARY } from '../cli/january.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import { A4, accessibilityFaults, closePages, cutOff, oneTab } from './report-pages.ts';
import { WRITING_TIME, writtenReport } from './written-report.ts';

// A scenario whose every name is markup that would run, if anything let it.

const RUN = 'globalThis.ran=1';
const SCRIPT = `<script>${RUN}</script>`;
const BREAKS_OUT = `"></title></script></style><img src=x onerror=${RUN}><svg onload=${RUN}>`;
const HOME = `
title: ${JSON.stringify(`${BREAKS_OUT}${SCRIPT} {{7*7}} javascript:${RUN}`)}
weather: weather.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-15" }
money: { currency: ${JSON.stringify(`<b onclick=${RUN}>£</b>`)}, electricity: 0.3 }
home:
  rooms:
    ${JSON.stringify(`${BREAKS_OUT} den`)}: { floor area: 14, use: living }
    ${JSON.stringify(`${SCRIPT} nook`)}: { floor area: 9, use: bedroom }
household:
  people: [{ name: ${JSON.stringify(BREAKS_OUT)}, who: adult, pattern: at home }]
  activities: [{ what: dishes, room: ${JSON.stringify(`${BREAKS_OUT} den`)}, name: ${JSON.stringify(`'"\`&lt;${SCRIPT}`)}, water: 0.2 }]
doubts: { /household/activities/0/water: [0.1, 0.4] }
plans:
  ${JSON.stringify(`now ${SCRIPT}`)}: { description: ${JSON.stringify(BREAKS_OUT)}, change: { heating: { setpoint: 18 } } }
  ${JSON.stringify(`dry </script>${SCRIPT}`)}:
    description: ${JSON.stringify(`${SCRIPT}&amp;<!-- ]]>`)}
    change:
      devices:
        ${JSON.stringify(`drier ${BREAKS_OUT}`)}: { kind: dehumidifier, room: ${JSON.stringify(`${SCRIPT} nook`)}, label: 12 L/day, tested at: 30 °C/80 % }
    purchases: [{ what: ${JSON.stringify(SCRIPT)}, price: 100, lasts: 5 years }]
`;

const found = await findBrowser();
const folder = temporaryFolder();
let file = '';
let browser: Browser;
let open: ReturnType<typeof oneTab>;

describe.skipIf(found === null)('names that hold markup and script', () => {
  beforeAll(async () => {
    const scenario = join(folder, 'hostile.yaml');
    writeFileSync(scenario, HOME);
    writeFileSync(join(folder, 'weather.csv'), JANUARY);
    file = await writtenReport(scenario, '--doubt', '4');
    browser = await openBrowser();
    open = oneTab(browser);
  }, WRITING_TIME);
  afterAll(() => closePages(browser));

  test.each([1100, 360])('run nothing and become no element, %i px wide', async (width) => {
    const { page, wrong } = await open(file, { width });
    const selects = ['room', 'plan'] as const;
    for (const key of selects) await page.selectOption(`#choice-${key}`, { index: 1 });
    await page.waitForFunction(
      `document.getElementById('choices-told').textContent.endsWith('again.')`,
    );
    for (const drawing of await page.locator('.drawing[data-row]:visible').all()) {
      await drawing.focus();
    }
    expect(await page.evaluate('globalThis.ran')).toBeUndefined();
    expect(await wrong()).toEqual([]);
    expect(await page.locator('img, iframe, object, embed, base, link').count()).toBe(0);
    expect(await page.locator('script').count()).toBe(2); // its own, and the data
    expect(await page.locator('style, title:not(svg title)').count()).toBe(2);
  });

  test('are cut off neither on a screen nor on paper, nor hard to reach', async () => {
    const { page } = await open(file, { width: 360 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(360);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.setViewportSize({ width: A4, height: 900 });
    await page.emulateMedia({ media: 'print' });
    expect(await cutOff(page)).toEqual([]);
  });

  test('are read as they were written', async () => {
    const { page } = await open(file);
    expect(await page.title()).toContain(`${BREAKS_OUT}${SCRIPT} {{7*7}} javascript:${RUN}`);
    expect(await page.locator('#choice-room option').allTextContents()).toEqual([
      `${BREAKS_OUT} den`,
      `${SCRIPT} nook`,
    ]);
    expect(await page.locator('#method pre').textContent()).toBe(
      readFileSync(join(folder, 'hostile.yaml'), 'utf8'),
    );
  });
});
