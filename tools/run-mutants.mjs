// Changes the sources piece by piece and counts the changes that no test notices.
// usage: npm run mutants -- physics/heat [another folder or file of src] [--tests engine] [--jobs 2] [--share 0.2] [--all]
import { existsSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    jobs: { type: 'string', default: '1' }, // processes at a time
    tests: { type: 'string', multiple: true, default: [] }, // more folders of test/ that shall notice
    share: { type: 'string', default: '1' }, // of the changes to try: a sample
    all: { type: 'boolean', default: false }, // try changes again that were tried before
  },
});
const places = positionals.map((place) => place.replace(/^(\.\/)?src\//, '').replace(/\/+$/, ''));
const unknown = places.filter((place) => !existsSync(`src/${place}`));
const jobs = Number(values.jobs);
const share = Number(values.share);
const wrong = !(Number.isInteger(jobs) && jobs > 0 && share > 0 && share <= 1);
if (places.length === 0 || unknown.length > 0 || wrong) {
  const why = unknown.map((place) => `src/${place} does not exist. `).join('');
  console.error(`${why}usage: npm run mutants -- <folder or file of src> [--tests folder] [--jobs 2] [--share 0.2] [--all]`);
  process.exit(1);
}

const tops = places.map((place) => place.split('/')[0]);
process.env.MUTANT_TESTS = [...new Set([...tops, ...values.tests])].join(',');
process.env.MUTANT_SHARE = values.share;
process.env.MUTANT_PLACES = places.join(',');
const name = places.join('+').replaceAll('/', '-');
const results = await new Stryker({
  mutate: places.map((place) => (statSync(`src/${place}`).isDirectory() ? `src/${place}/**/*.ts` : `src/${place}`)),
  // The words of messages are the business of the tests that read them.
  mutator: { excludedMutations: ['StringLiteral'] },
  plugins: [
    import.meta.resolve('@stryker-mutator/vitest-runner'),
    import.meta.resolve('./mutant-sample.mjs'),
  ],
  checkers: share < 1 ? ['sample'] : [],
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutants.config.ts' },
  ignorePatterns: ['dist', 'build', 'reports', 'coverage'],
  disableTypeChecks: false, // nothing here looks at types
  concurrency: jobs,
  incremental: share === 1,
  incrementalFile: `reports/mutants/${name}.json`,
  force: values.all,
  reporters: ['clear-text', 'html', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: `reports/mutants/${name}.html` },
  timeoutMS: 5_000,
  timeoutFactor: 2,
  tempDirName: 'build/mutants',
}).runMutationTest();

const count = (...states) => results.filter((r) => states.includes(r.status)).length;
const late = count('Timeout');
const noticed = count('Killed') + late;
const missed = count('Survived', 'NoCoverage');
console.log(
  `${noticed} of ${noticed + missed} changes to ${places.join(', ')} noticed: ${((100 * noticed) / (noticed + missed)).toFixed(1)} %, ${late} by running out of time`,
);
