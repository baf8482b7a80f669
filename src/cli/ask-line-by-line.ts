import type { Readable } from 'node:stream';
import { type AskedOption, type Asking, Interrupted } from './asking.ts';
import { nextLine } from './next-line.ts';

/**
 * Asks in plain lines, answered by a line each: for terminals that cannot move their cursor or show all
 * signs, and for whoever has them read aloud. Enter alone takes what stands in brackets.
 */
export function askLineByLine(
  input: Readable,
  output: { readonly write: (text: string) => unknown },
): Asking {
  /** Ask until an answer will do. @param taken  what a line means, or why it will not do */
  async function ask<T>(
    question: string,
    usual: string,
    taken: (line: string) => { readonly answer: T } | { readonly wrong: string },
  ): Promise<T> {
    output.write(`${question} [${usual}] `);
    const told = taken((await lineOf(input)).trim());
    if ('answer' in told) return told.answer;
    output.write(`${told.wrong}\n`);
    return ask(question, usual, taken);
  }
  return {
    confirm: (question, initial) =>
      ask(question, initial ? 'yes' : 'no', (line) => {
        if (line === '') return { answer: initial };
        return /^(y|yes|n|no)$/i.test(line)
          ? { answer: /^y/i.test(line) }
          : { wrong: 'Answer yes or no.' };
      }),
    line: (question, initial, check) =>
      ask(question, initial, (line) => {
        const answer = line === '' ? initial : line;
        const wrong = check(answer);
        return wrong === null ? { answer } : { wrong };
      }),
    one: (question, options, initial) =>
      ask(listed(question, options), numberOf(options, initial), (line) => {
        const found = line === '' ? initial : named(options, line);
        return found === null ? { wrong: oneOf(options) } : { answer: found };
      }),
    several: (question, options, initial) => {
      const usual = initial.map((value) => numberOf(options, value)).join(' ') || '0';
      const more = `${listed(question, options)} (several with blanks between, 0 for none)`;
      return ask(more, usual, (line) => {
        if (line === '') return { answer: initial };
        if (line === '0') return { answer: [] };
        const found = line.split(/[\s,]+/).map((word) => named(options, word));
        return found.every((value) => value !== null)
          ? { answer: found }
          : { wrong: oneOf(options) };
      });
    },
  };
}

/** The next line. @throws Interrupted where there will be none */
async function lineOf(input: Readable): Promise<string> {
  const line = await nextLine(input);
  if (line === null) throw new Interrupted();
  return line;
}

const listed = (question: string, options: readonly AskedOption[]): string => {
  const rows = options.map(
    ({ label, hint }, k) => `  ${k + 1} ${label}${hint === undefined ? '' : ` (${hint})`}\n`,
  );
  return `${question}\n${rows.join('')}Number`;
};

const numberOf = (options: readonly AskedOption[], value: string): string =>
  `${options.findIndex((option) => option.value === value) + 1}`;

/** The value that a number or the value itself stands for. */
const named = (options: readonly AskedOption[], word: string): string | null =>
  (options[Number(word) - 1] ?? options.find(({ value }) => value === word))?.value ?? null;

const oneOf = (options: readonly AskedOption[]): string =>
  `Answer a number from 1 to ${options.length}.`;
