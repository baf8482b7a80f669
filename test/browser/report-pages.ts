import { pathToFileURL } from 'node:url';
import axe, { type RunOptions } from 'axe-core';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { expect } from 'vitest';
import { calledHere } from '../cli/call-built.ts';

/** Writes a report by the built program. */
export async function writeReport(scenario: string, page: string, ...more: readonly string[]) {
  const args = ['report', scenario, '-o', page, '--date', '2026-01-31', ...more];
  const { status, err } = await calledHere(args);
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${err}`);
}

/** A page that is open, and what went wrong in it: complaints, breaches of its policy, requests. */
export interface OpenPage {
  readonly page: Page;
  wrong(): Promise<readonly string[]>;
}

/** Opens a report from disk, as somebody does who was sent it. */
export const openReport = (
  browser: Browser,
  file: string,
  options: OpenOptions = {},
): Promise<OpenPage> => openPage(browser, pathToFileURL(file).href, options);

type OpenOptions = BrowserContextOptions & { readonly width?: number };

/** No worker of a page ever answers: it looks as it does until what is tried has been run, which takes a second. */
const STILL = `globalThis.Worker = class extends EventTarget { postMessage() {} terminate() {} };`;

/**
 * Opens reports one after the other in one tab, each loaded anew: half the work of a tab of its own,
 * where a test is done with the page of the one before it.
 *
 * @param still  whether homes shall not be run in their pages, for tests that ask nothing of that
 */
export function oneTab(browser: Browser, still = false) {
  let tab: Page | null = null;
  let heard: string[] = [];
  let address = '';
  const open = async (file: string, { width = 1100 } = {}): Promise<OpenPage> => {
    address = pathToFileURL(file).href;
    const viewport = { width, height: 900 };
    if (tab === null) {
      tab = await (await browser.newContext({ viewport })).newPage();
      if (still) await tab.addInitScript(STILL);
      await listenTo(tab, () => ({ address, heard }));
    }
    const page = tab;
    await page.goto('about:blank');
    heard = [];
    await page.emulateMedia({ media: null, colorScheme: null });
    await page.mouse.move(0, 0);
    await page.setViewportSize(viewport);
    await page.goto(address);
    return { page, wrong: async () => [...heard, ...(await page.evaluate<string[]>('breaches'))] };
  };
  return open;
}

/** Closes what a file has opened, for the next one. */
export async function closePages(browser: Browser | undefined): Promise<void> {
  for (const context of browser?.contexts() ?? []) await context.close();
}

/** Opens a page by its address; whatever it asks for beyond that counts as wrong. */
export async function openPage(
  browser: Browser,
  address: string,
  { width = 1100, ...options }: OpenOptions = {},
): Promise<OpenPage> {
  const context = await browser.newContext({ viewport: { width, height: 900 }, ...options });
  const page = await context.newPage();
  const heard: string[] = [];
  await listenTo(page, () => ({ address, heard }));
  await page.goto(address);
  const scripted = options.javaScriptEnabled !== false;
  return {
    page,
    wrong: async () => [...heard, ...(scripted ? await page.evaluate<string[]>('breaches') : [])],
  };
}

/** Notes what goes wrong in a tab. */
async function listenTo(
  page: Page,
  now: () => { readonly address: string; readonly heard: string[] },
): Promise<void> {
  page.on('console', (message) => now().heard.push(`said: ${message.text()}`));
  page.on('pageerror', (error) => now().heard.push(`threw: ${error.message}`));
  page.on('request', (request) => {
    const { address, heard } = now();
    // A worker made of what the page holds is asked for from the page itself. Browsers that keep
    // files of a disk together call their origin "file:", others "null".
    const ours = [
      address,
      `blob:${new URL(address).origin}/`,
      `blob:${new URL(address).protocol}///`,
    ];
    if (!ours.some((own) => request.url().startsWith(own))) {
      heard.push(`asked for: ${request.url()}`);
    }
  });
  await page.context().addInitScript(KEEP_BREACHES);
}

/** What a check of accessibility finds in a part of a page, all of it unless told: rule, and where. */
export async function accessibilityFaults(page: Page, part = 'html'): Promise<string[]> {
  const colours = { 'color-contrast': { enabled: false } };
  return [
    ...(await faultsBy(page, part, { runOnly: STANDARDS, rules: { ...NOT_ASKED, ...colours } })),
    ...(await colourFaults(page, part)),
  ];
}

/**
 * What it finds by the rules about colours, all that can differ between light and dark.
 *
 * They judge text that is in sight, and what fills a text of a picture they do not know. So they are
 * spared the rest of figures, which takes them longer than all the text.
 */
export async function colourFaults(page: Page, part = 'html'): Promise<string[]> {
  await page.evaluate(TAKE_OUT_UNSEEN);
  try {
    return await faultsBy(page, part, { runOnly: ['cat.color'], rules: NOT_ASKED });
  } finally {
    await page.evaluate('globalThis.putBack.forEach((put) => put())');
  }
}

async function faultsBy(page: Page, part: string, options: RunOptions): Promise<string[]> {
  await page.evaluate(`globalThis.axe === undefined && (() => { ${axe.source} })()`);
  const asked = JSON.stringify({ ...options, resultTypes: ['violations'] });
  return page.evaluate<string[]>(`axe.run('${part}', ${asked}).then(({ violations }) =>
    violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + ': ' + html)))`);
}

/** Ids of all pictures, each of which has marks and a place within the page. */
export async function picturesSeen(page: Page, width: number): Promise<string[]> {
  const pictures = await page.evaluate<{ id: string; marks: number; wide: number }[]>(`
    [...document.querySelectorAll('figure.picture')].map((figure) => {
      const svg = [...figure.querySelectorAll('svg')].find((one) => one.getClientRects().length > 0);
      const shown = [...svg.querySelectorAll('path, text, rect, line')].filter((mark) => {
        const { width, height } = mark.getBoundingClientRect();
        return width + height > 0;
      });
      return { id: figure.id, marks: shown.length, wide: svg.getBoundingClientRect().width };
    })`);
  for (const { id, marks, wide } of pictures) {
    expect(marks, id).toBeGreaterThan(3);
    expect(wide, id).toBeLessThanOrEqual(width);
    expect(wide, id).toBeGreaterThan(300);
  }
  return pictures.map(({ id }) => id);
}

/** Names of tables and pictures that are wider than the place they have. */
export const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate<string[]>(`[...document.querySelectorAll('.wide, .drawing')]
    .filter((one) => one.offsetParent !== null && one.scrollWidth > one.clientWidth + 1)
    .map((one) => one.getAttribute('aria-label') ?? one.parentElement.id)`);

/** Names of plans that stand on more than one line. */
export const brokenNames = (page: Page): Promise<string[]> =>
  page.evaluate<string[]>(`[...document.querySelectorAll('.name')]
    .filter((one) => one.getClientRects().length > 1)
    .map((one) => one.textContent)`);

/** Takes out of figures what is out of sight, and pictures' insides, to be put back: nothing that a script asks for by the clock. */
const TAKE_OUT_UNSEEN = `(() => {
  const isUnseen = (one) =>
    one.parentElement.tagName === 'svg' || !(one.checkVisibility() || one.closest('select'));
  const outermost = [...document.querySelectorAll('figure *')].filter(
    (one) => isUnseen(one) && !isUnseen(one.parentElement),
  );
  globalThis.putBack = outermost.map((one) => {
    const place = document.createComment('');
    one.replaceWith(place);
    return () => place.replaceWith(one);
  });
})()`;
const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'best-practice'];
const NOT_ASKED = { 'color-contrast-enhanced': { enabled: false } };

/** Width of A4 less its margins, a little less than it is. [px] */
export const A4 = 688;

const KEEP_BREACHES = `globalThis.breaches = [];
document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
  breaches.push('breach: ' + violatedDirective + ' by ' + blockedURI));`;
