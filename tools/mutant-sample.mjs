// Picks, for run-mutants.mjs, the share of changes that MUTANT_SHARE says; the same ones each time.
import { createHash } from 'node:crypto';

class Sample {
  async init() {}

  /** Changes that are not picked are passed over as if they did not compile. */
  async check(mutants) {
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, isPicked(mutant) ? PASSED : PASSED_OVER]));
  }
}

function isPicked({ fileName, location: { start, end }, replacement }) {
  const place = fileName.slice(fileName.lastIndexOf('/src/'));
  const text = [place, start.line, start.column, end.line, end.column, replacement].join(' ');
  const draw = createHash('sha256').update(text).digest().readUInt32BE() / 2 ** 32;
  return draw < Number(process.env.MUTANT_SHARE);
}

const PASSED = { status: 'passed' };
const PASSED_OVER = { status: 'compileError', reason: 'not in the sample' };

export const strykerPlugins = [{ kind: 'Checker', name: 'sample', injectableClass: Sample }];
