import type { Command } from 'commander';
import type { Io } from '../io.ts';
import { type Candidate, candidatesOf } from '../load/candidates.ts';
import { namesOfScenario } from '../load/scenario-names.ts';

/** `complete -- WORDS`: a candidate a line, behind a tab what it is; nothing where a file is meant. */
export async function complete(io: Io, program: Command, words: readonly string[]): Promise<void> {
  const typed = words.at(-1)?.replace(/^["']/, '') ?? '';
  const found = candidatesOf(program, [...words.slice(0, -1), typed]);
  const names = found === 'plans' || found === 'rooms';
  const candidates = names ? await named(io, words, found) : found;
  // Of names with commas between, the last one is completed.
  const before = names ? typed.slice(0, typed.lastIndexOf(',') + 1) : '';
  for (const { word, about } of candidates) {
    const whole = `${before}${word}`;
    if (whole.startsWith(typed)) io.out(about === '' ? `${whole}\n` : `${whole}\t${about}\n`);
  }
}

/** Names of plans or rooms of the first scenario of the line. */
async function named(
  io: Io,
  words: readonly string[],
  kind: 'plans' | 'rooms',
): Promise<readonly Candidate[]> {
  const file = words.slice(0, -1).find((word) => /\.ya?ml$/.test(word));
  if (file === undefined) return [];
  return (await namesOfScenario(io, file))[kind];
}
