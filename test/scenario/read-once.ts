import { type CheckScope, readScenario, type Scenario } from '../../src/scenario/read-scenario.ts';

/**
 * A scenario as readScenario reads it, for tests that ask nothing of reading: each text is read and checked
 * once for all files of a process, because nobody changes what was read.
 */
export function readOnce(text: string, file: string, scope: CheckScope = {}): Scenario {
  const key = JSON.stringify([file, scope, text]);
  const read = known.get(key) ?? readScenario(text, file, scope);
  known.set(key, read);
  return read;
}

const known = new Map<string, Scenario>();
