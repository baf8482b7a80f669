import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { BIN, ending, requireBuild } from '../cli/built-program.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';
import { accessibilityFaults, closePages, type OpenPage, openPage } from './report-pages.ts';
import { writeSmallHome } from './small-home.ts';

// The served page and form in a real browser, under their policy.

const found = await findBrowser();
const folder = temporaryFolder();
const children: ChildProcess[] = [];
let browser: Browser;

/** Starts a server in the folder. @returns its address, and its end */
async function served(...args: readonly string[]) {
  const env = { ...process.env, XDG_CACHE_HOME: folder };
  const child = spawn(process.execPath, [BIN, 'serve', ...args], { cwd: folder, env });
  children.push(child);
  const ended = ending(child);
  const address = await new Promise<string>((done) =>
    child.stdout.once('data', (piece) => done(String(piece).trim())),
  );
  return { address, ended, end: () => child.kill('SIGINT') };
}

describe.skipIf(found === null)('roombalance serve in a browser', () => {
  beforeAll(async () => {
    requireBuild();
    browser = await openBrowser();
  });
  afterAll(async () => {
    for (const child of children) child.kill('SIGKILL');
    await closePages(browser);
  });

  describe('the page of a scenario', () => {
    let file = '';
    let text = '';
    let server: Awaited<ReturnType<typeof served>>;
    let open: OpenPage;
    let page: Page;
    const standing = (words: string | RegExp) =>
      page.locator('#standing').getByText(words).waitFor({ timeout: 30_000 });

    beforeAll(async () => {
      file = writeSmallHome(folder);
      text = readFileSync(file, 'utf8').replace('to: "04-08"', 'to: "03-19"'); // soon shown
      writeFileSync(file, text);
      server = await served('small.yaml');
      open = await openPage(browser, server.address);
      ({ page } = open);
      await standing('This page follows small.yaml');
    }, 60_000);

    test('keeps to its policy and can be used by everybody', async () => {
      expect(await page.locator('#pictures figure').count()).toBeGreaterThan(3);
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await open.wrong()).toEqual([]);
    });

    test('runs the home again in its workers', async () => {
      await page.locator('#try').scrollIntoViewIfNeeded();
      await page.locator('#try:not(.stale)').waitFor({ timeout: 60_000 });
      expect(await open.wrong()).toEqual([]);
    });

    test('shows what is saved at once', async () => {
      const money = () =>
        page.locator('#try-figures tbody tr:first-child td').first().textContent();
      const before = Number(await money());
      writeFileSync(
        file,
        text.replace('title: Small home', 'title: Warm home\nmoney: { electricity: 2 }'),
      );
      await page.getByText('Warm home.').waitFor({ timeout: 30_000 });
      expect(Number(await money())).toBeGreaterThan(2 * before);
      await standing('This page follows small.yaml');
      expect(await open.wrong()).toEqual([]);
    });

    test('says what is wrong while the last page stands, and that it is older', async () => {
      writeFileSync(file, text.replace('floor area: 9', 'floor area: nine'));
      await standing('What stands here is older');
      await standing(/^small\.yaml:9:25: home\.rooms\.nook\.floor area: expected /);
      expect(await page.locator('main.older').count()).toBe(1);
      expect(await page.getByText('Warm home.').count()).toBe(1);
      expect(await accessibilityFaults(page)).toEqual([]);
      await page.reload();
      await standing('What stands here is older');
      expect(await open.wrong()).toEqual([]);
    });

    test('shows all of a long list of what may stand there on a phone', async () => {
      const wide = page.viewportSize()!;
      await page.setViewportSize({ width: 360, height: 740 });
      writeFileSync(file, text.replace('setpoint:', 'setpiont:'));
      await standing(/setpiont.*did you mean "setpoint"/);
      const cut = await page.evaluate<number>(
        'document.getElementById("standing").scrollHeight - document.getElementById("standing").clientHeight',
      );
      expect(cut).toBeLessThanOrEqual(0);
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBe(0);
      await page.setViewportSize(wide);
    });

    test('takes a file that vanishes and one that is put in its place', async () => {
      renameSync(file, join(folder, 'aside.yaml'));
      await standing(/^small\.yaml: expected a file to read, got nothing of that name/);
      writeFileSync(join(folder, 'new.yaml'), text.replace('Small home', 'Third home'));
      renameSync(join(folder, 'new.yaml'), file);
      await page.getByText('Third home.').waitFor({ timeout: 30_000 });
    });

    test('whoever reads already is asked before a fuller page is shown', async () => {
      await page.keyboard.press('ArrowDown');
      writeFileSync(file, text.replace('Small home', 'Fourth home'));
      await page.getByText('Fourth home.').waitFor({ timeout: 30_000 });
      await page.keyboard.press('ArrowDown');
      const offer = page.getByRole('button', { name: 'Show all of it' });
      await offer.or(page.locator('#pictures')).first().waitFor({ timeout: 30_000 });
      if (await offer.isVisible()) await offer.click();
      await page.locator('#pictures').waitFor({ timeout: 30_000 });
    });

    test('tells that the program has ended', async () => {
      server.end();
      expect((await server.ended).status).toBe(0);
      await standing('The program that serves this page has ended or does not answer.');
    });
  });

  describe('the form of a first scenario', () => {
    let open: OpenPage;
    let page: Page;
    const tab = async (id: string): Promise<void> => {
      for (let k = 0; k < 60; k++) {
        await page.keyboard.press('Tab');
        const at = await page.evaluate<string>(
          'document.activeElement.name || document.activeElement.id',
        );
        if (at === id) return;
      }
      throw new Error(`no way to ${id} by the keyboard`);
    };
    const field = (id: string) => page.locator(`#field-${id}`);

    beforeAll(async () => {
      const { address } = await served('--new', 'made.yaml');
      open = await openPage(browser, address);
      ({ page } = open);
    }, 60_000);

    test('can be used by everybody', async () => {
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await open.wrong()).toEqual([]);
    });

    test('follows its answers, and takes none by Enter in a line', async () => {
      await tab('title');
      await page.keyboard.type('Mill');
      await page.keyboard.press('Enter');
      await tab('place');
      await page.keyboard.type('99,3');
      await tab('size');
      await page.keyboard.type('1');
      await tab('heat');
      await page.keyboard.type('nothing');
      await tab('people');
      expect(await field('worst-room').locator('select').inputValue()).toBe('');
      expect(await field('size').locator('select').inputValue()).toBe('1');
      await field('rooms').getByText('Left empty: living 24, bathroom 4').waitFor();
      expect(await field('setpoint').isVisible()).toBe(false);
      await field('place').getByText('Expected latitude and longitude in degrees').waitFor();
      expect(await field('place').locator('[aria-invalid="true"]').count()).toBe(1);
      expect(existsSync(join(folder, 'made.yaml'))).toBe(false);
    });

    test('tells what will not do, with the focus on it, and keeps what was typed', async () => {
      await tab('send');
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { name: 'Nothing is written yet' }).waitFor();
      // The page puts the focus there once it is read.
      await page.waitForFunction("document.activeElement.className === 'troubles'");
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await field('title').locator('input').inputValue()).toBe('Mill');
      expect(await open.wrong()).toEqual([
        'said: Failed to load resource: the server responded with a status of 422 (Unprocessable Entity)',
      ]);
    });

    test('writes the scenario by the keyboard alone, and shows it', async () => {
      await tab('place');
      await page.keyboard.press('Control+a');
      await page.keyboard.type('54.2,-1.9');
      await tab('bothers');
      await page.keyboard.press('Tab'); // past "as usual" to what heating costs
      await page.keyboard.press('Space');
      await tab('send');
      expect(await field('bothers').locator('input:checked').count()).toBe(1);
      await page.keyboard.press('Enter');
      await page.locator('#standing').waitFor({ timeout: 30_000 });
      expect(await page.getByText('Mill.').count()).toBe(1);
      const written = readFileSync(join(folder, 'made.yaml'), 'utf8');
      expect(written).toMatch(/^title: Mill$/m);
      expect(written).toMatch(/^heating: \{ source: none \}$/m);
      expect(existsSync(join(folder, 'made-weather.csv'))).toBe(true);
    });
  });
});
