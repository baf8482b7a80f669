import { mkdirSync, writeFileSync } from 'node:fs';
import { TARGETS } from './targets.ts';
import { tryCases } from './try-cases.ts';

// npm run fuzz -- <target> <seed> <cases>: prints what was tried and found; keeps what was found.
const [name = '', seed = '1', cases = '1000'] = process.argv.slice(2);
const target = TARGETS[name];
if (target === undefined || !/^\d+$/.test(seed) || !/^\d+$/.test(cases)) {
  process.stderr.write(
    `usage: npm run fuzz -- <target> <seed> <cases>; targets: ${Object.keys(TARGETS).join(', ')}\n`,
  );
  process.exit(1);
}
const FOUND = 'test/fuzz/found';
const started = performance.now();
const { found, slowest } = tryCases(target, Number(seed), Number(cases));
const took = performance.now() - started;
mkdirSync(FOUND, { recursive: true });
for (const { text, number, wrong } of found.slice(0, 20)) {
  const file = `${FOUND}/${name}.${seed}-${number}.txt`;
  writeFileSync(file, text);
  process.stdout.write(`${file}: ${wrong.split('\n').slice(0, 4).join(' | ')}\n`);
}
process.stdout.write(
  `${name}, seed ${seed}: ${cases} cases, ${found.length} wrong, ${(took / Number(cases)).toFixed(1)} ms a case, slowest ${slowest.toFixed(0)} ms\n`,
);
process.exitCode = found.length === 0 ? 0 : 3;
