import { join } from 'node:path';
import type { Io } from '../io.ts';

/** A text of a service, from the cache or fresh. */
export interface CachedAnswer {
  readonly text: string;
  /** Day on which it was fetched, "YYYY-MM-DD". */
  readonly fetched: string;
  /** Put it into the cache, once it has turned out to be what was wanted. */
  readonly keep: () => Promise<void>;
}

/**
 * The texts at some addresses, each from the cache where it is there.
 *
 * @param useCache  false to neither look there nor keep anything
 * @param allow     called before the first that has to be fetched; throws where it may not
 */
export async function cachedGet(
  io: Io,
  urls: readonly string[],
  useCache: boolean,
  allow: () => Promise<void>,
): Promise<CachedAnswer[]> {
  const sha256 = await io.loadSha256();
  const folder = join(await io.cacheFolder(), 'weather');
  const pathOf = (url: string) => join(folder, `${sha256(url).replaceAll(/[^\w]/g, '-')}.json`);
  const kept = await Promise.all(
    urls.map((url) => (useCache ? fromCache(io, pathOf(url), url) : null)),
  );
  if (kept.some((answer) => answer === null)) await allow();
  const answers: CachedAnswer[] = [];
  for (const [k, url] of urls.entries()) {
    const known = kept[k];
    if (known) {
      io.err(`note: kept since ${known.fetched}, not fetched again: ${new URL(url).host}\n`);
      answers.push(known);
      continue;
    }
    const text = await io.get(url);
    const fetched = io.today();
    const keep = async () => {
      if (useCache) await intoCache(io, folder, pathOf(url), { url, fetched, text });
    };
    answers.push({ text, fetched, keep });
  }
  return answers;
}

/** What the cache has; null for nothing, or for what nobody can read any more. */
async function fromCache(io: Io, path: string, url: string): Promise<CachedAnswer | null> {
  try {
    const kept = JSON.parse(await io.readText(path, MOST)) as Record<string, unknown>;
    const { text, fetched } = kept;
    if (kept['url'] !== url || typeof text !== 'string' || typeof fetched !== 'string') return null;
    return { text, fetched, keep: async () => {} };
  } catch {
    return null;
  }
}

/** A cache that cannot be written is no reason to fail: the answer is there. */
async function intoCache(io: Io, folder: string, path: string, kept: object): Promise<void> {
  try {
    await io.makeFolder(folder);
    await io.writeWhole(path, JSON.stringify(kept));
  } catch {
    io.err(`note: nothing could be kept in ${folder}\n`);
  }
}

const MOST = 45e6;
