import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import { accessibilityFaults, closePages, oneTab } from './report-pages.ts';
import { writeSmallHome } from './small-home.ts';
import { WRITING_TIME, writtenReport } from './written-report.ts';

// A report in which there is nothing to buy, and the ways through it.

const found = await findBrowser();
const folder = temporaryFolder();
let file = '';
let browser: Browser;
let open: ReturnType<typeof oneTab>;

describe.skipIf(found === null)('a report without a purchase', () => {
  beforeAll(async () => {
    file = await writtenReport(writeSmallHome(folder));
    browser = await openBrowser();
    open = oneTab(browser);
  }, WRITING_TIME);
  afterAll(() => closePages(browser));

  test.each([1100, 360])('opens whole, %i px wide', async (width) => {
    const { page, wrong } = await open(file, { width });
    expect(await page.locator('section h2').allTextContents()).toEqual(SECTIONS);
    expect(await page.locator('figure.picture').count()).toBe(13);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await wrong()).toEqual([]);
  });

  describe('what has the focus is framed and in sight', () => {
    let page: Page;

    beforeAll(async () => {
      ({ page } = await open(file));
      // What is tried is run when it comes into sight: its figures shall not come while we walk.
      await page.locator('#try').scrollIntoViewIfNeeded();
      await page.locator('#try:not(.stale)').waitFor();
      await page.evaluate(
        `for (const one of document.querySelectorAll('details')) one.open = true`,
      );
    });

    test.each([1100, 600, 360])('%i px', async (width) => {
      await page.setViewportSize({ width, height: 900 });
      await page.evaluate(`scrollTo(0, 0)`);
      await page.mouse.click(1, 1); // the edge of the page, from which a walk begins
      const all = await page.evaluate<number>(MARK_FOCUSABLE);
      expect(all).toBeGreaterThan(30);
      const there = await placesAfter(page, 'Tab', all);
      expect(there.map(({ number }) => number)).toEqual(Array.from({ length: all }, (_, k) => k));
      const back = await placesAfter(page, 'Shift+Tab', all - 1);
      expect(back.map(({ number }) => number)).toEqual(back.map((_, k) => all - 2 - k));
      expect(back).toHaveLength(all - 1);
      const walked = [...there, ...back];
      expect(walked.filter(({ outline }) => !/^solid 3px/.test(outline))).toEqual([]);
      expect(walked.filter(({ seen }) => !seen)).toEqual([]);
    });
  });

  test('the contents lead to each section', async () => {
    const { page } = await open(file);
    for (const link of await page.locator('nav a').all()) {
      await link.click();
      const id = (await link.getAttribute('href'))!.slice(1);
      await expect(page.locator(`#${id}-title`).isVisible()).resolves.toBe(true);
      const top = (await page.locator(`#${id}`).boundingBox())!.y;
      expect(top, id).toBeLessThan(900);
    }
  });
});

/** Something that has the focus: its number in the order of the page, its frame, whether it is in sight. */
interface Place {
  readonly number: number;
  readonly what: string;
  readonly outline: string;
  readonly seen: boolean;
}

/** Where the focus is after each of so many keys. */
async function placesAfter(page: Page, key: string, times: number): Promise<Place[]> {
  await page.evaluate(NOTE_PLACES);
  // One behind the other without waiting for what is drawn in between, which is what takes long.
  const keyboard = await page.context().newCDPSession(page);
  const tab = {
    key: 'Tab',
    code: 'Tab',
    windowsVirtualKeyCode: 9,
    modifiers: key === 'Tab' ? 0 : 8,
  };
  const pressed = Array.from({ length: times }, () =>
    (['rawKeyDown', 'keyUp'] as const).map((type) =>
      keyboard.send('Input.dispatchKeyEvent', { type, ...tab }),
    ),
  );
  await Promise.all(pressed.flat());
  await keyboard.detach();
  return page.evaluate<Place[]>('placesSoFar()');
}

/** A place is noted when the next key comes, once all is done that the key before it did. */
const NOTE_PLACES = `(() => {
  const places = [];
  let pressed = 0;
  const note = () => {
    const here = document.activeElement;
    const { outlineStyle, outlineWidth } = getComputedStyle(here);
    const { left, top, width } = here.getBoundingClientRect();
    const there = document.elementFromPoint(left + Math.min(width, innerWidth) / 2, Math.max(top, 0) + 5);
    places.push({
      number: Number(here.dataset.number),
      what: here.tagName + ' ' + (here.id || here.ariaLabel || here.textContent).slice(0, 40),
      outline: outlineStyle + ' ' + outlineWidth,
      seen: here.contains(there) || there?.contains(here) === true,
    });
  };
  const onKey = ({ key }) => {
    if (key === 'Tab' && pressed++ > 0) note();
  };
  addEventListener('keydown', onKey, true);
  globalThis.placesSoFar = () => {
    removeEventListener('keydown', onKey, true);
    note();
    return places;
  };
})()`;

/** Numbers all that can take the focus, in the order of the page; tells how many there are. */
const MARK_FOCUSABLE = `(() => {
  for (const one of document.querySelectorAll('[data-number]')) delete one.dataset.number;
  const all = [...document.querySelectorAll('a[href], button, select, input, summary, [tabindex="0"]')]
    .filter((one) => one.getClientRects().length > 0);
  all.forEach((one, k) => { one.dataset.number = String(k); });
  return all.length;
})()`;
const SECTIONS = [
  ...['The answer', 'Plans, a line each', 'Hour by hour', 'Air and alerts'],
  ...['Cautions', 'Assumptions', 'Method'],
];
