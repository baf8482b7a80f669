import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import {
  A4,
  accessibilityFaults,
  brokenNames,
  closePages,
  colourFaults,
  cutOff,
  type OpenPage,
  oneTab,
  openReport,
  picturesSeen,
} from './report-pages.ts';
import { WRITING_TIME, writtenReport } from './written-report.ts';

// The report of the demonstration, opened in a real browser. Its runs take steps of an hour and six
// weeks: the page has all the sections and pictures of a year, but for the picture of money over years
// (see test/report/page/report-page.test.ts).

const found = await findBrowser();
const folder = temporaryFolder();
let file = '';
let browser: Browser;
let open: ReturnType<typeof oneTab>;
let text = '';

describe.skipIf(found === null)('the report of the demonstration', () => {
  beforeAll(async () => {
    const short = [`/period={ from: "01-05", to: "02-15" }`, '/step=60'];
    file = await writtenReport(
      'scenarios/terrace.yaml',
      ...['--doubt', '3', ...short.flatMap((one) => ['--set', one])],
    );
    text = readFileSync(file, 'utf8');
    browser = await openBrowser();
    open = oneTab(browser);
  }, WRITING_TIME);
  afterAll(() => closePages(browser));

  const looked = new Map<number, OpenPage>();
  /** The page at a width, loaded once for all tests that leave it as they found it. */
  const look = async (width: number): Promise<OpenPage> => {
    const there = looked.get(width) ?? (await openReport(browser, file, { width }));
    looked.set(width, there);
    return there;
  };

  test('is one file of at most 2.4 MB, so that one of a year has at most 4', () => {
    // A year has 1.1 MB more of packed hours and 0.5 MB of pictures: test/report/charts/real-run.
    expect(Buffer.byteLength(text)).toBeLessThanOrEqual(2_400_000);
    expect(Buffer.byteLength(text)).toBeGreaterThan(500_000);
  });

  test('lets nothing in but one style and one script, by their hashes, and the engine', () => {
    const [, policy = ''] =
      /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(text) ?? [];
    const hash = (part: string) => createHash('sha256').update(part, 'utf8').digest('base64');
    const [, style = ''] = /<style>([\s\S]*?)<\/style>/.exec(text) ?? [];
    const [, script = ''] = /<script>([\s\S]*?)<\/script>/.exec(text) ?? [];
    expect(policy.split('; ')).toEqual([
      "default-src 'none'",
      `style-src 'sha256-${hash(style)}'`,
      `script-src 'sha256-${hash(script)}' 'wasm-unsafe-eval'`,
      'worker-src blob:',
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    expect(text).not.toMatch(/<[^>]+ (?:style|on\w+)=/); // what the policy would refuse anyway
  });

  test('opens without a complaint, a breach of its policy, or a request', async () => {
    const { page, wrong } = await open(file);
    await page.locator('footer').scrollIntoViewIfNeeded();
    expect(await wrong()).toEqual([]);
  });

  test('the policy holds: a script that makes code of text is stopped', async () => {
    const tries = "try { eval('1'); } catch (e) { document.title = 'stopped: ' + e.name; }";
    const hash = createHash('sha256').update(tries, 'utf8').digest('base64');
    const bold = join(folder, 'bold.html');
    writeFileSync(
      bold,
      text
        .replace("script-src '", `script-src 'sha256-${hash}' '`)
        .replace('</body>', `<script>${tries}</script></body>`),
    );
    const { page, wrong } = await open(bold);
    expect(await page.title()).toBe('stopped: EvalError');
    expect((await wrong()).join()).toContain('breach: script-src by eval');
  });

  describe.each([1100, 550, 360])('%i px wide', (width) => {
    test('all pictures are there, and nothing is wider than the page', async () => {
      const { page, wrong } = await look(width);
      expect(await picturesSeen(page, width)).toEqual(IDS);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
      expect(await wrong()).toEqual([]);
    });
  });

  test.each([1100, 360])('has no fault of accessibility, light or dark, %i px', async (width) => {
    const { page } = await look(width);
    await page.emulateMedia({ colorScheme: 'light' });
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await colourFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: null });
  });

  test('can be used by a finger, and a table that is wider than a phone says what it is', async () => {
    const { page } = await open(file, { width: 360 });
    await page.evaluate(`for (const one of document.querySelectorAll('details')) one.open = true`);
    expect(await page.evaluate(SMALL)).toEqual([]);
    const captions = await page.evaluate<{ words: string; right: number }[]>(`
      [...document.querySelectorAll('.wide caption span')]
        .filter((one) => one.checkVisibility())
        .map((one) => ({ words: one.textContent, right: one.getBoundingClientRect().right }))`);
    expect(captions.length).toBeGreaterThan(5);
    expect(captions.filter(({ right }) => right > 360)).toEqual([]);
  });

  test.each([768, 360])(
    'plans stand one below the other, each with what it is, %i px wide',
    async (width) => {
      const { page } = await look(width);
      const box = page.locator('.wide:has(> .plans)');
      expect(await box.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0);
      const rows = await page.locator('.plans tbody tr').evaluateAll((all) =>
        all.map((row) => ({
          what: row.querySelector('th small')?.checkVisibility() ?? false,
          shown: [...row.querySelectorAll('td')].filter((cell) => cell.checkVisibility()).length,
          clear: row.querySelectorAll('td :is(.better, .worse):not(.strip)').length,
        })),
      );
      expect(rows.length).toBeGreaterThan(8);
      expect(rows.filter(({ what }) => !what)).toEqual([]);
      // Today's figures are all there; of a plan, money, a word, and what clearly changes.
      const [today, ...plans] = rows;
      expect(today!.shown).toBeGreaterThan(8);
      expect(plans.filter(({ clear }) => clear > 1).length).toBeGreaterThan(3);
      expect(plans.filter(({ shown, clear }) => shown > clear + 3)).toEqual([]);
      expect(plans.filter(({ shown, clear }) => shown < clear + 1)).toEqual([]);
    },
  );

  test('is whole without scripts', async () => {
    const { page } = await openReport(browser, file, { javaScriptEnabled: false });
    expect(await page.locator('section h2').allTextContents()).toEqual(SECTIONS);
    expect((await page.locator('figure .wide-only svg').all()).length).toBe(IDS.length);
    expect(await page.locator('#choices').isVisible()).toBe(false);
    expect(await page.locator('figure table').count()).toBe(IDS.length);
  });

  test.each([1280, 768, 360])('names of plans stand on one line, %i px wide', async (width) => {
    const { page } = await look(width);
    expect(await page.locator('.plans tbody th .name').count()).toBeGreaterThan(8);
    expect(await brokenNames(page)).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
  });

  test('the answer is read at a glance: three lines of 1280 px at most', async () => {
    const { page } = await look(1280);
    const lines = await page.evaluate<number>(`(() => {
      const lead = document.querySelector('.lead');
      return lead.getBoundingClientRect().height / parseFloat(getComputedStyle(lead).lineHeight);
    })()`);
    expect(Math.round(lines)).toBeGreaterThanOrEqual(1);
    expect(Math.round(lines)).toBeLessThanOrEqual(3);
  });

  test.each([
    [1280, 3],
    [360, 4],
  ])('titles of pictures are read at a glance: at %i px %i lines at most', async (width, most) => {
    const { page } = await look(width);
    const lines = await page.evaluate<number[]>(`
      [...document.querySelectorAll('figure.picture h3')].map((title) => {
        const words = document.createRange();
        words.selectNodeContents(title);
        const line = parseFloat(getComputedStyle(title).lineHeight);
        return Math.round(words.getBoundingClientRect().height / line);
      })`);
    expect(lines).toHaveLength(IDS.length);
    expect(Math.max(...lines)).toBeLessThanOrEqual(most);
  });

  test('figures of plans stand digit below digit', async () => {
    const { page } = await look(1280);
    const ends = await page.evaluate<number[][]>(`(() => {
      const endOf = (cell) => {
        const digits = document.createRange();
        digits.selectNode(cell.querySelector('span').firstChild);
        return Math.round(digits.getBoundingClientRect().right);
      };
      const rows = [...document.querySelectorAll('table.plans tbody tr')];
      const columns = rows[0].querySelectorAll('td.figure').length;
      return Array.from({ length: columns }, (_, k) =>
        rows.map((row) => endOf(row.querySelectorAll('td.figure')[k])));
    })()`);
    expect(ends.length).toBeGreaterThan(5);
    for (const column of ends) {
      expect(column.length).toBeGreaterThan(8);
      expect(Math.max(...column) - Math.min(...column)).toBeLessThanOrEqual(1);
    }
  });

  test('what the plans ask is a line each, and opens', async () => {
    const { page } = await open(file, { width: 1280 });
    const rows = page.locator('.asked summary');
    expect(await rows.count()).toBeGreaterThan(5);
    const heights = await rows.evaluateAll((all) =>
      all.map((one) => one.getBoundingClientRect().height),
    );
    expect(Math.max(...heights)).toBeLessThan(60); // two lines
    const carried = page.locator('.asked details > p').first();
    expect(await carried.isVisible()).toBe(false);
    await rows.first().focus();
    await page.keyboard.press('Enter');
    expect(await carried.isVisible()).toBe(true);
  });

  test('on a phone the way to the sections takes one line above the answer', async () => {
    const { page } = await open(file, { width: 360 });
    const links = await page
      .locator('nav a')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    expect(links.length).toBeGreaterThan(8);
    expect(new Set(links).size).toBe(1);
    await page.locator('nav a').last().focus(); // comes into sight by keyboard
    const box = await page.locator('nav a').last().boundingBox();
    expect(box!.x + box!.width).toBeLessThanOrEqual(360);
  });

  test('is printed whole on A4, without what only a screen can do', async () => {
    const { page } = await open(file, { width: A4 });
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('section h2').allTextContents()).toEqual(SECTIONS);
    for (const picture of await page.locator('figure.picture').all()) {
      expect(await picture.locator('.narrow-only svg').isVisible()).toBe(true);
    }
    expect(await page.locator('nav').isVisible()).toBe(false);
    expect(await page.locator('#choices').isVisible()).toBe(false);
    for (const carried of await page.locator('.asked details > p').all()) {
      expect(await carried.isVisible()).toBe(true);
    }
    expect(await cutOff(page)).toEqual([]);
    expect(await brokenNames(page)).toEqual([]);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const pages = pdf.match(/\/Type \/Page\b/g)?.length;
    expect(pages).toBeLessThanOrEqual(10);
    expect(pages).toBeGreaterThan(4);
  });

  test('is walked by keyboard in its order, and shows where one is', async () => {
    const { page } = await open(file);
    const at = async () => {
      await page.keyboard.press('Tab');
      return page.evaluate<[string, string]>(`[document.activeElement.textContent.slice(0, 30),
        getComputedStyle(document.activeElement).outlineStyle]`);
    };
    expect(await at()).toEqual(['Skip to the answer', 'solid']);
    // The script puts the way to its knobs behind the plans, where they stand.
    const walked = SECTIONS.toSpliced(2, 0, 'Try it');
    for (const section of walked) expect(await at()).toEqual([section, 'solid']);
  });
});

/** What is pressed and lower than 24 px, but for links that stand in a sentence. */
const SMALL = `[...document.querySelectorAll('nav a, summary, select, button, input')]
  .map((one) => (one.type === 'checkbox' ? one.closest('label') : one))
  .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 24)
  .map((one) => one.outerHTML)`;
const SECTIONS = [
  ...['The answer', 'Plans, a line each', 'The sum', 'Hour by hour', 'Air and alerts'],
  ...['What could be different', 'Cautions', 'Assumptions', 'Method'],
];
const IDS = [
  ...['picture-trade-off'],
  ...['picture-week-humidity', 'picture-week-temperature', 'picture-cold-spot', 'picture-mould'],
  ...['picture-year-temperature', 'picture-year-humidity'],
  ...['picture-calendar', 'picture-calendar-with', 'picture-heat', 'picture-water'],
  ...['picture-air-1', 'picture-air-2', 'picture-air-3', 'picture-air-alerts'],
  ...['picture-draws', 'picture-doubt'],
];
