import { InputProblems, problemText } from '../units/problem.ts';
import type { Io } from './io.ts';
import { OwnCheckFailed } from './runs/own-check-failed.ts';
import { UsageError } from './usage-error.ts';

/**
 * Say on standard error why a command did not end well.
 *
 * @returns exit status: 1 usage error, 2 wrong input, 3 a check or piece of our own failed
 */
export function explainError(error: unknown, io: Io): number {
  if (error instanceof UsageError) {
    io.err(`${error.message}\n`);
    return 1;
  }
  if (error instanceof InputProblems) {
    io.err(problemLines(error));
    return 2;
  }
  if (error instanceof OwnCheckFailed) {
    io.err(`${error.message}\n`);
    return 3;
  }
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  io.err(`This is a fault of roombalance, not of your files. Please report it with:\n${trace}\n`);
  return 3;
}

/** A line for each problem; of very many the first, and how many more there are. */
function problemLines({ problems }: InputProblems): string {
  const lines = problems.slice(0, MOST).map(problemText);
  const more = problems.length - lines.length;
  const rest = more === 0 ? [] : [`and ${more} more ${more === 1 ? 'problem' : 'problems'}`];
  return [...lines, ...rest].map((line) => `${line}\n`).join('');
}

const MOST = 250; // a file's 200 with room for those of settings and weather
