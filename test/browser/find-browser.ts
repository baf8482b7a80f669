import { existsSync } from 'node:fs';
import { posix, win32 } from 'node:path';
import { unpackBrowser } from './unpack-browser.ts';

/** What of a machine says where its browser is. */
export interface Machine {
  readonly platform: string;
  readonly arch: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  isThere(path: string): boolean;
  /** The browser that comes as a package; null where it does not start. */
  unpack(): Promise<string | null>;
}

/**
 * Path of a Chromium, or of a browser made of it: the one that BROWSER_PATH names; else one on the
 * PATH or in a usual place; else the one that comes as a package, which runs on Linux x64. Null where
 * there is none, unless REQUIRE_BROWSER is 1.
 */
export async function findBrowser(machine: Machine = THIS): Promise<string | null> {
  const { platform, arch, env, isThere } = machine;
  const named = env['BROWSER_PATH'];
  if (named !== undefined && named !== '') {
    if (isThere(named)) return named;
    throw new Error(`BROWSER_PATH names a browser, but nothing is there: ${named}`);
  }
  const found = [...onPath(machine), ...usualPlaces(machine)].find(isThere);
  if (found !== undefined) return found;
  const unpacked = platform === 'linux' && arch === 'x64' ? await machine.unpack() : null;
  if (unpacked !== null) return unpacked;
  if (env['REQUIRE_BROWSER'] !== '1') return null;
  throw new Error(
    'REQUIRE_BROWSER is 1, but no Chromium is on the PATH or in a usual place: ' +
      'install one, or name it with BROWSER_PATH',
  );
}

/** The usual names in the folders of the PATH, folder by folder. */
function onPath({ platform, env }: Machine): string[] {
  const windows = platform === 'win32';
  const path = windows ? win32 : posix;
  const folders = (env['PATH'] ?? env['Path'] ?? '').split(path.delimiter);
  return folders
    .filter((folder) => folder !== '')
    .flatMap((folder) => NAMES.map((name) => path.join(folder, windows ? `${name}.exe` : name)));
}

function usualPlaces({ platform, env }: Machine): string[] {
  if (platform === 'linux') return LINUX;
  const homes = env['HOME'] === undefined ? [''] : ['', env['HOME']];
  if (platform === 'darwin') return homes.flatMap((home) => MACOS.map((place) => home + place));
  if (platform !== 'win32') return [];
  return ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'].flatMap((name) => {
    const folder = env[name];
    return folder === undefined ? [] : WINDOWS.map((place) => win32.join(folder, place));
  });
}

const THIS: Machine = {
  platform: process.platform,
  arch: process.arch,
  env: process.env,
  isThere: existsSync,
  unpack: unpackBrowser,
};
const NAMES = [
  ...['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'],
  'msedge',
];
const LINUX = [
  ...['/snap/bin/chromium', '/opt/google/chrome/google-chrome', '/opt/microsoft/msedge/msedge'],
];
const MACOS = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];
const WINDOWS = [
  ...['Chromium', 'Google/Chrome'].map((maker) => `${maker}/Application/chrome.exe`),
  'Microsoft/Edge/Application/msedge.exe',
];
