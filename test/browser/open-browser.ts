import { type Browser, chromium } from 'playwright-core';
import { findBrowser } from './find-browser.ts';
import { unpackedPath } from './unpack-browser.ts';

/**
 * A browser without a window, which also starts as root and without a network. It is started once for
 * all files of a process, and ends with that: a file closes what it has opened in it.
 *
 * Ask `findBrowser` first where a test is to be left out on a machine that has none.
 */
export function openBrowser(): Promise<Browser> {
  started ??= start();
  return started;
}

let started: Promise<Browser> | null = null;

async function start(): Promise<Browser> {
  const path = await findBrowser();
  if (path === null) throw new Error('There is no Chromium to open: name one with BROWSER_PATH');
  const args = path === unpackedPath() ? await ofThePackage() : ARGS;
  // With handlers of the library a signal would close the browser and leave this process running, and they
  // would stay for the files after. It is killed as the process exits, and ends by itself, its pipe being
  // closed, where a signal ends the process.
  const itself = { handleSIGINT: false, handleSIGTERM: false, handleSIGHUP: false };
  return chromium.launch({ executablePath: path, headless: true, args, ...itself });
}

/** Flags that the browser's build needs to start. */
async function ofThePackage(): Promise<string[]> {
  const { default: packaged } = await import('@sparticuz/chromium');
  packaged.setGraphicsMode = false; // pages are drawn without pretending to have a graphics card
  return packaged.args;
}

/**
 * The popups of an address bar, for which each window would start two pages of its own: most of what a
 * new context takes; and the process that is kept ready for a page that nobody opens. The flag takes the place of the library's, so it names again what asks somebody on
 * the network or holds a page back.
 */
const WITHOUT = [
  ...['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'AimEnabled', 'PreconnectToSearch'],
  ...['OptimizationHints', 'NetworkTimeServiceQuerying', 'MediaRouter', 'HttpsUpgrades'],
  ...['PaintHolding', 'DestroyProfileOnBrowserClose', 'SpareRendererForSitePerProcess'],
];

/** No sandbox, which root cannot have, and nothing that asks somebody on the network. */
const ARGS = [
  ...['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
  ...['--disable-component-update', '--disable-sync', '--disable-quic'],
  `--disable-features=${WITHOUT.join(',')}`,
];
