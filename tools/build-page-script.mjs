// Bundles the script of the report's page, and the engine that the page runs in a worker, each into one
// file of dist/, the licences of what is in it first.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { build } from 'esbuild';

const shared = {
  bundle: true,
  minify: true,
  format: 'iife',
  target: 'es2022',
  legalComments: 'none', // the banner has them whole
  logLevel: 'warning',
};

await bundle('src/report/browser/page-script.ts', 'dist/report/page-script.js');
await bundle('src/report/browser/living-worker.ts', 'dist/report/page-engine.js');
await bundle('src/report/browser/follow-script.ts', 'dist/report/follow-script.js');
await bundle('src/report/browser/form-script.ts', 'dist/report/form-script.js');

async function bundle(from, outfile) {
  const options = { ...shared, entryPoints: [from], metafile: true, write: false };
  const { metafile, outputFiles } = await build(options);
  const packages = new Set(
    Object.keys(metafile.inputs).flatMap((file) => /^node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file) ?? []),
  );
  const byLicence = new Map();
  for (const folder of [...packages].sort()) {
    const { name, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
    const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
    const text = file === undefined ? `Licence: ${license}` : readFileSync(`${folder}/${file}`, 'utf8');
    byLicence.set(text, [...(byLicence.get(text) ?? []), name]);
  }
  const notices = [...byLicence].map(([text, names]) => `${names.join(', ')}\n\n${text.trim()}`);
  const banner = `/*!\n${notices.join('\n\n').replaceAll('*/', '* /')}\n*/`;
  mkdirSync(dirname(outfile), { recursive: true });
  writeFileSync(outfile, `${banner}\n${outputFiles[0].text}`);
}
