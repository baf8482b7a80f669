import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';

/**
 * Path of the browser that comes as a package; null where it does not start, for want of libraries of
 * the system.
 */
export async function unpackBrowser(): Promise<string | null> {
  const program = await unpackedProgram();
  return spawnSync(program, ['--version'], { timeout: 30_000 }).status === 0 ? program : null;
}

/**
 * Unpacked at the first call and kept for later ones.
 *
 * The package unpacks into the folder for temporary files, where another test that asks meanwhile
 * would find half a browser. So it is given a folder of its own, which gets its name once all is there.
 */
async function unpackedProgram(): Promise<string> {
  const program = unpackedPath();
  if (existsSync(program)) return program;
  const folder = resolve(program, '..');
  mkdirSync(resolve(folder, '..'), { recursive: true });
  const aside = mkdtempSync(`${folder}-`);
  const { default: chromium } = await import('@sparticuz/chromium');
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = aside;
  try {
    await chromium.executablePath();
    renameSync(aside, folder);
  } catch (error) {
    rmSync(aside, { recursive: true });
    if (!existsSync(program)) throw error; // unless another test was first
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
  return program;
}

/** Where that browser is once it is unpacked, with its version in the path. */
export function unpackedPath(): string {
  const { devDependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
  const version: string = devDependencies['@sparticuz/chromium'];
  return resolve(join('node_modules', '.cache', `roombalance-browser-${version}`, 'chromium'));
}
