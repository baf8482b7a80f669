import { existsSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import type { Plugin } from 'vitest/config';

/**
 * Gives tests what was built of a module of `src/` in its place: they judge what ships, and nothing of
 * it is transformed again, which is sooner. What is not built, scripts of pages, stays source.
 */
export const builtSource: Plugin = {
  name: 'built-source',
  enforce: 'pre',
  resolveId(id, importer) {
    if (importer === undefined || !id.startsWith('.') || !id.endsWith('.ts')) return null;
    const within = relative(resolve('src'), join(dirname(importer), id));
    if (within.startsWith('..')) return null;
    const built = resolve('dist', within.replace(/\.ts$/, '.js'));
    return existsSync(built) ? built : null;
  },
};
