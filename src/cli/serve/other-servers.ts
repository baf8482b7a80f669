import { join } from 'node:path';
import { InputProblems } from '../../units/problem.ts';
import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';

/**
 * Tells of others who show the same scenario, and lets others know of this one.
 *
 * They do not disturb each other, but whoever has forgotten one wonders which page is the newer. A note
 * in the folder of what can be fetched again holds the port; the address with its token is nowhere.
 *
 * @returns what takes the note away again
 */
export async function tellOthers(io: Io, path: string, port: string): Promise<() => Promise<void>> {
  const { host, pid, isRunning } = await io.self();
  const folder = join(await io.cacheFolder(), 'served');
  const hash = (await io.loadSha256())(await io.sharedName(path));
  const beginning = `${hash.replaceAll(/[^\w]/g, '').slice(0, 24)}-${host}-`;
  const names = await io.listFolder(folder).catch(() => []);
  for (const name of names.filter((one) => one.startsWith(beginning))) {
    const other = Number(name.slice(beginning.length));
    const note = join(folder, name);
    if (other === pid || !isRunning(other)) await io.remove(note);
    else io.err(alreadyShown(path, other, await io.readText(note, LONGEST).catch(() => '')));
  }
  const own = join(folder, `${beginning}${pid}`);
  try {
    await io.makeFolder(folder);
    await io.writeWhole(own, port);
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error; // a note that cannot be kept is no great loss
  }
  return () => io.remove(own);
}

const alreadyShown = (path: string, other: number, port: string): string =>
  `note: process ${other} shows ${visibleValue(path)} already, at port ${visibleValue(port)}; both follow it.\n`;

const LONGEST = 100; // [byte]
