import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import { closePages, type OpenPage, openReport } from './report-pages.ts';
import { writtenFlat } from './written-flat.ts';
import { WRITING_TIME } from './written-report.ts';

// Choosing and pointing in the report of the flat over eight weeks of winter.

const found = await findBrowser();
let file = '';
let browser: Browser;
let open: OpenPage;
let page: Page;

describe.skipIf(found === null)('choosing', () => {
  beforeAll(async () => {
    file = await writtenFlat();
    browser = await openBrowser();
    open = await openReport(browser, file);
    page = open.page;
  }, WRITING_TIME);
  afterAll(() => closePages(browser));

  test('a room draws again what follows rooms, and nothing else', async () => {
    const heat = await titleOf('heat');
    await choose('room', 'bathroom');
    expect(await titleOf('week-temperature')).toMatch(/^bathroom /);
    expect(await titleOf('cold-spot')).toMatch(/^The cold spot of bathroom /);
    expect(await titleOf('calendar')).toMatch(/^bathroom .* under as-lived$/);
    expect(await titleOf('calendar-with')).toMatch(/^bathroom .* under drier$/);
    expect(await titleOf('heat')).toBe(heat);
    expect(await open.wrong()).toEqual([]);
  });

  test('what was drawn first comes back the same', async () => {
    const other = await openReport(browser, file);
    const ids = ['week-humidity', 'mould', 'year-temperature', 'calendar'];
    const first = await drawingsOf(other.page, ids);
    await choose('room', 'living');
    const living = await drawingsOf(page, ids);
    for (const id of ids) expect(living[id], id).not.toBe(first[id]);
    await choose('room', 'bedroom');
    expect(await drawingsOf(page, ids)).toEqual(first);
  });

  test('an option and a week', async () => {
    await choose('plan', 'drier');
    expect(await titleOf('year-humidity')).toMatch(/ under drier$/);
    expect(await titleOf('water')).toMatch(/ under drier$/);
    const week = await page.locator('#choice-week option').nth(5).textContent();
    await choose('week', week!);
    // The days stand on the axis.
    const [, day] = /^(\d+ [A-Z][a-z]{2})/.exec(week!)!;
    expect(await page.locator('#picture-week-temperature .wide-only svg').textContent()).toContain(
      day,
    );
    expect(await open.wrong()).toEqual([]);
  });

  test('lines of other plans, but no more than can be told apart', async () => {
    const boxes = page.locator('input[name="choice-line"]');
    const names = await page.locator('#choices fieldset label').allTextContents();
    expect(await boxes.count()).toBe(6);
    const before = await titleOf('heat');
    const drawnNames = async () =>
      (await page.locator('#picture-mould thead th').allTextContents()).slice(1);
    expect(await drawnNames()).toEqual(names.slice(0, 4).map((name) => name.trim()));
    await boxes.nth(5).click();
    expect(await boxes.nth(5).isChecked()).toBe(false);
    expect(await page.locator('#choices-told').textContent()).toBe(
      'No more than 4 lines: take one away first.',
    );
    await boxes.nth(3).click();
    await drawn();
    await boxes.nth(5).click();
    await drawn();
    expect(await drawnNames()).toEqual([0, 1, 2, 5].map((k) => names[k]!.trim()));
    expect(await titleOf('heat')).toBe(before);
    expect(await open.wrong()).toEqual([]);
  });

  test('one choice upon the other ends with all of them', async () => {
    for (const [key, name] of [
      ['room', 'living'],
      ['plan', 'as-lived'],
      ['room', 'bathroom'],
    ] as const) {
      await page.selectOption(`#choice-${key}`, { label: name });
    }
    await drawn();
    expect(await titleOf('calendar')).toMatch(/^bathroom .* under as-lived$/);
    expect(await titleOf('heat')).toMatch(/ under as-lived$/);
    expect(await titleOf('mould')).toContain('bathroom');
  });

  test('pointing and arrow keys read out the row that lies there', async () => {
    await choose('room', 'bedroom');
    for (const id of ['week-temperature', 'year-humidity', 'cold-spot', 'mould', 'heat']) {
      const picture = page.locator(`#picture-${id}`);
      const drawing = picture.locator('.wide-only');
      await drawing.scrollIntoViewIfNeeded();
      const box = (await drawing.locator('svg').boundingBox())!;
      await page.mouse.move(box.x + 0.4 * box.width, box.y + 0.5 * box.height);
      const told = await picture.locator('.reading').textContent();
      expect(told, id).toBe(await drawing.getAttribute('aria-valuetext'));
      const { row, text } = await readingOf(drawing, id);
      expect(told, id).toContain(text);
      await drawing.focus();
      await page.keyboard.press('ArrowRight');
      expect(await drawing.getAttribute('aria-valuenow')).toBe(String(row + 1));
      await page.keyboard.press('Home');
      expect(await drawing.getAttribute('aria-valuenow')).toBe('0');
    }
    expect(await open.wrong()).toEqual([]);
  });
});

/** Chooses by name and waits until the pictures are drawn. */
async function choose(key: 'room' | 'plan' | 'week', label: string): Promise<void> {
  await page.selectOption(`#choice-${key}`, { label });
  await drawn();
}

const drawn = () =>
  page.waitForFunction(`document.getElementById('choices-told').textContent.endsWith('again.')`);
const titleOf = (id: string) => page.locator(`#picture-${id} h3`).textContent();
/** Markup of drawings, by the ids of their pictures. */
const drawingsOf = (of: Page, ids: readonly string[]) =>
  of.evaluate<Record<string, string>>(`Object.fromEntries(${JSON.stringify(ids)}.map((id) =>
    [id, document.querySelector('#picture-' + id + ' .wide-only svg').outerHTML]))`);

/** Number of the row that is told, and the name of that row in the picture's table. */
async function readingOf(drawing: ReturnType<Page['locator']>, id: string) {
  const row = Number(await drawing.getAttribute('aria-valuenow'));
  const first = Number(await drawing.getAttribute('data-row'));
  const name = page
    .locator(`#picture-${id} tbody tr`)
    .nth(first + row)
    .locator('th');
  return { row, text: (await name.textContent())! };
}
