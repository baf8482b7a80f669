import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import { closePages, oneTab } from './report-pages.ts';
import { writeSmallHome } from './small-home.ts';
import { WRITING_TIME, writtenReport } from './written-report.ts';

// What is read out of pictures: the right row, in the words of the table, where it lies.

const found = await findBrowser();
const folder = temporaryFolder();
let file = '';
let browser: Browser;
let open: ReturnType<typeof oneTab>;

describe.skipIf(found === null)('reading a picture', () => {
  beforeAll(async () => {
    file = await writtenReport(writeSmallHome(folder));
    browser = await openBrowser();
    open = oneTab(browser, true);
  }, WRITING_TIME);
  afterAll(() => closePages(browser));

  describe.each([
    [1100, 'wide-only'],
    [550, 'wide-only'],
    [360, 'narrow-only'],
    [320, 'narrow-only'],
  ] as const)('%i px wide', (width, kind) => {
    test('with a mouse: the row that lies there, a line through it, the words of the table', async () => {
      const { page, wrong } = await open(file, { width });
      const ids = await pointedAt(page, kind);
      expect(ids).toEqual(POINTED_AT);
      for (const id of ids) {
        const { drawing, reading, rows } = await pictureOf(page, id, kind);
        const { left, from, step, scale, top } = await placesOf(drawing);
        for (const row of [0, Math.floor(rows.length / 3), rows.length - 1]) {
          // A third of the way to the next row still means this one.
          const x = left + (from + (row + 0.3) * step) * scale;
          await page.mouse.move(x, top + 40);
          expect(await reading.textContent(), `${id}, row ${row}`).toBe(rows[row]);
          const line = (await drawing.locator('.pointer').boundingBox())!;
          expect(Math.abs(line.x - (left + (from + row * step) * scale))).toBeLessThan(1.5);
        }
      }
      expect(await wrong()).toEqual([]);
    });
  });

  test('with keys: step by step, a day, to either end and not beyond, told to screen readers', async () => {
    const { page } = await open(file);
    const { drawing, reading, rows } = await pictureOf(page, 'week-humidity', 'wide-only');
    await drawing.focus();
    for (const [key, row] of [
      ['ArrowLeft', 0],
      ['ArrowRight', 1],
      ['ArrowUp', 2],
      ['PageUp', 26],
      ['ArrowDown', 25],
      ['PageDown', 1],
      ['End', 167],
      ['ArrowRight', 167],
      ['PageUp', 167],
      ['Home', 0],
    ] as const) {
      await page.keyboard.press(key);
      const told = ['aria-valuenow', 'aria-valuetext', 'aria-valuemin', 'aria-valuemax'];
      expect(await Promise.all(told.map((name) => drawing.getAttribute(name))), key).toEqual([
        ...[String(row), rows[row], '0', '167'],
      ]);
      expect(await reading.textContent()).toBe(rows[row]);
    }
  });

  test('not where the clock jumps within the week, and again in other weeks', async () => {
    const { page, wrong } = await open(file);
    const weeks = await page.locator('#choice-week option').allTextContents();
    const drawing = page.locator('#picture-week-temperature .wide-only');
    const roles: (string | null)[] = [];
    for (const label of weeks) {
      await page.selectOption('#choice-week', { label });
      await page.waitForFunction(DRAWN);
      const rows = page.locator('#picture-week-temperature tbody th');
      const [first, last] = [await rows.first().textContent(), await rows.last().textContent()];
      const even = Date.parse(`${last}Z`) - Date.parse(`${first}Z`) === 167 * 3_600_000;
      roles.push(await drawing.getAttribute('role'));
      expect(roles.at(-1), label).toBe(even ? 'slider' : null);
    }
    expect(new Set(roles)).toEqual(new Set(['slider', null]));
    expect(await wrong()).toEqual([]);
  });
});

/** Pictures that can be pointed at, in the order of the page. */
const pointedAt = (page: Page, kind: string): Promise<string[]> =>
  page
    .locator(`figure.picture:has(.${kind}[data-row])`)
    .evaluateAll((figures) => figures.map(({ id }) => id.replace('picture-', '')));

/** A picture's drawing, what it reads out, and all that it should read out, row by row. */
async function pictureOf(page: Page, id: string, kind: string) {
  const picture = page.locator(`#picture-${id}`);
  const drawing = picture.locator(`.${kind}`);
  await drawing.scrollIntoViewIfNeeded();
  const first = Number(await drawing.getAttribute('data-row'));
  const heads = await picture.locator('thead th').allTextContents();
  const cells = await picture
    .locator('tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)));
  const rows = cells
    .slice(first)
    .map(([name, ...rest]) => `${name}: ${rest.map((c, k) => `${heads[k + 1]} ${c}`).join(', ')}`);
  return { drawing, reading: picture.locator('.reading'), rows };
}

/** Where rows lie by what the page itself says, and how much the picture is shrunk. */
async function placesOf(drawing: Locator) {
  const number = async (name: string) => Number(await drawing.getAttribute(name));
  const svg = drawing.locator('svg');
  const { x: left, y: top, width } = (await svg.boundingBox())!;
  const scale = width / Number(await svg.getAttribute('width'));
  return { left, top, scale, from: await number('data-from'), step: await number('data-step') };
}

const DRAWN = `document.getElementById('choices-told').textContent.endsWith('again.')`;
const POINTED_AT = [
  ...['week-humidity', 'week-temperature', 'cold-spot', 'mould'],
  ...['year-temperature', 'year-humidity', 'heat'],
];
