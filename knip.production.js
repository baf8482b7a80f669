import { readFileSync } from 'node:fs';

/**
 * What knip asks of the program alone: every export is imported by another of its files, or called
 * by its own. The latter are exported so that tests can judge a step of a formula that runs; what
 * neither imports nor calls is for tests only and belongs to test/reference.
 */
export default {
  ...JSON.parse(readFileSync('knip.json', 'utf8')),
  ignoreExportsUsedInFile: true,
};
