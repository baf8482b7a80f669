import { existsSync, mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { simulate } from '../../src/engine/simulate.ts';

/** An engine to measure, under the name that is printed. */
export interface Build {
  readonly name: string;
  /** The module that it was imported from. */
  readonly file: string;
  readonly simulate: typeof simulate;
  /** Whether its ratio is printed as this build's time over its own, or the other way round. */
  readonly ratio: 'this over it' | 'it over this';
}

/**
 * The engine of another build.
 *
 * @param dist  where its modules are, `engine/simulate.js` among them
 */
export async function otherBuild(dist: string): Promise<Build> {
  const file = resolve(dist, 'engine/simulate.js');
  if (!existsSync(file)) throw new Error(`--against ${dist}: there is no ${file}`);
  return { name: 'other', file, simulate: await importSimulate(file), ratio: 'this over it' };
}

/** The engine of these sources as one minified script, by the options that the page's script has. */
export async function bundledBuild(): Promise<Build> {
  const file = resolve('build/bundled/engine.mjs');
  mkdirSync(resolve('build/bundled'), { recursive: true });
  await build({
    entryPoints: ['src/engine/simulate.ts'],
    outfile: file,
    bundle: true,
    minify: true,
    format: 'iife',
    globalName: 'engine',
    target: 'es2022',
    footer: { js: 'export const { simulate } = engine;' },
    logLevel: 'warning',
  });
  return { name: 'bundled', file, simulate: await importSimulate(file), ratio: 'it over this' };
}

/** What another file exports as `simulate`. */
export async function importSimulate(file: string): Promise<Build['simulate']> {
  const module: Pick<Build, 'simulate'> = await import(pathToFileURL(file).href);
  return module.simulate;
}

/** The engine of these sources, one module a file. */
export const THIS_BUILD: Build = {
  name: 'this',
  file: fileURLToPath(new URL('../../src/engine/simulate.js', import.meta.url)),
  simulate,
  ratio: 'it over this',
};
