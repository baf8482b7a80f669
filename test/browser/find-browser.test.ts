import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { findBrowser, type Machine } from './find-browser.ts';
import { openBrowser } from './open-browser.ts';

/** A machine that has files in the places named, and no browser that comes as a package. */
const machine = (over: Partial<Machine>, ...files: string[]): Machine => ({
  platform: 'linux',
  arch: 'arm64',
  env: {},
  isThere: (path) => files.includes(path),
  unpack: async () => 'unpacked',
  ...over,
});

describe('a browser is found', () => {
  test('where BROWSER_PATH says, before any other', async () => {
    const env = { BROWSER_PATH: '/opt/mine', PATH: '/usr/bin' };
    expect(await findBrowser(machine({ env }, '/usr/bin/chromium', '/opt/mine'))).toBe('/opt/mine');
    await expect(findBrowser(machine({ env }, '/usr/bin/chromium'))).rejects.toThrow(
      'BROWSER_PATH names a browser, but nothing is there: /opt/mine',
    );
  });

  test('on the PATH, in the order of its folders', async () => {
    const env = { PATH: '/usr/local/bin::/usr/bin' };
    const files = ['/usr/bin/chromium', '/usr/local/bin/google-chrome'];
    expect(await findBrowser(machine({ env }, ...files))).toBe('/usr/local/bin/google-chrome');
    const windows = { platform: 'win32', env: { Path: 'C:\\Windows;D:\\tools' } };
    expect(await findBrowser(machine(windows, 'D:\\tools\\msedge.exe'))).toBe(
      'D:\\tools\\msedge.exe',
    );
  });

  test.each([
    ['linux', {}, '/snap/bin/chromium'],
    ['darwin', {}, '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    ['darwin', { HOME: '/home/me' }, '/home/me/Applications/Chromium.app/Contents/MacOS/Chromium'],
    ['win32', { LOCALAPPDATA: 'C:\\Me' }, 'C:\\Me\\Google\\Chrome\\Application\\chrome.exe'],
    [
      ...(['win32', { 'ProgramFiles(x86)': 'C:\\P' }] as const),
      'C:\\P\\Microsoft\\Edge\\Application\\msedge.exe',
    ],
  ])('in a usual place of %s', async (platform, env, place) => {
    expect(await findBrowser(machine({ platform, env }, place))).toBe(place);
  });

  test('as a package where that one runs, else not at all', async () => {
    expect(await findBrowser(machine({ arch: 'x64' }))).toBe('unpacked');
    expect(await findBrowser(machine({ arch: 'x64', unpack: async () => null }))).toBeNull();
    expect(await findBrowser(machine({}))).toBeNull();
    expect(await findBrowser(machine({ platform: 'win32', arch: 'x64' }))).toBeNull();
  });

  test('or else it is told, where one is required', async () => {
    await expect(findBrowser(machine({ env: { REQUIRE_BROWSER: '1' } }))).rejects.toThrow(
      'REQUIRE_BROWSER is 1, but no Chromium is on the PATH or in a usual place: ' +
        'install one, or name it with BROWSER_PATH',
    );
  });
});

const none = (await findBrowser()) === null;
const root = temporaryFolder();

test.skipIf(none)(
  'a page from the disk opens, its script runs, and it can be pictured',
  async () => {
    const file = join(root, 'page.html');
    writeFileSync(file, '<h1>Page</h1><script>document.title = String(6 * 7)</script>');
    const browser = await openBrowser();
    const page = await browser.newPage({ viewport: { width: 320, height: 200 } });
    try {
      await page.goto(pathToFileURL(file).href);
      expect(await page.title()).toBe('42');
      const picture = await page.screenshot();
      expect([...picture.subarray(1, 4)]).toEqual([...Buffer.from('PNG')]);
      expect(picture.length).toBeGreaterThan(500);
    } finally {
      await page.close();
    }
  },
);
