import { visibleValue } from './visible-text.ts';

/**
 * One thing wrong with what a person wrote: where, what was expected, what came.
 *
 * Readers never stop at the first: they collect problems and hand them all back.
 */
export interface Problem {
  /** Name of the file as the person gave it. */
  readonly file: string;
  /** Counted from 1; 0 where there is no place in the text (a whole file, a command-line value). */
  readonly line: number;
  readonly column: number;
  /** Place in words of the file: "home.rooms.living.floor area", "row 17, column temperature". */
  readonly where: string;
  /** Keys down to the value, where the place in the text is still to be found by whoever has it. */
  readonly path?: readonly string[];
  /** End of the sentence "expected ...". */
  readonly expected: string;
  /** End of the sentence "got ...". */
  readonly got: string;
  /** A next step in words, such as the nearest known name; empty for none. */
  readonly hint: string;
}

/**
 * `file:line:column: where: expected ..., got ... (hint)`
 *
 * What may have been meant comes first, `where: did you mean ...? Expected ...`, before a list that is
 * longer than anybody reads at one look, at whose end nobody would find it.
 *
 * A part that is longer than anybody reads, such as a name of thousands of characters, is cut. What
 * would break the line or steer a terminal stands as \uXXXX.
 */
export function problemText(problem: Problem): string {
  const { line, column } = problem;
  const [file, where, expected, got, hint] = [
    visibleValue(problem.file),
    visibleValue(problem.where),
    visibleValue(problem.expected),
    visibleValue(problem.got),
    visibleValue(problem.hint),
  ];
  const place = line > 0 ? `${file}:${line}:${column}` : file;
  const middle = where === '' ? '' : `${where}: `;
  if (hint.startsWith('did you mean ') && expected.length > LINE) {
    return `${place}: ${middle}${hint} Expected ${expected}, got ${got}`;
  }
  const end = hint === '' ? '' : ` (${hint})`;
  return `${place}: ${middle}expected ${expected}, got ${got}${end}`;
}

/** The first problems of many, and one that says how many more there are. */
export function firstOf(problems: readonly Problem[], most: number): readonly Problem[] {
  const [first] = problems;
  if (first === undefined || problems.length <= most) return problems;
  const got = `${problems.length - most} further problems`;
  const rest = { line: 0, column: 0, where: '', expected: 'no more than these', got, hint: '' };
  return [...problems.slice(0, most), { file: first.file, ...rest }];
}

/** Thrown across layers when a person's input cannot be used; carries every problem found. */
export class InputProblems extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(problemText).join('\n'));
    this.name = 'InputProblems';
    this.problems = problems;
  }
}

/** Characters that are read at one look. */
const LINE = 120;
