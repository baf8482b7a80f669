import type { Problem } from '../units/problem.ts';

/** The text of a file as lines, with what it takes to point at a cell. */
export interface TextTable {
  readonly file: string;
  readonly lines: readonly string[];
  /** One character; a space stands for any run of spaces. */
  readonly delimiter: string;
}

/** Lines of a text without their ends; empty lines at the end are dropped. */
export function splitLines(text: string): string[] {
  const body = text.charCodeAt(0) === BYTE_ORDER_MARK ? text.slice(1) : text;
  const lines = body.includes('\r') ? body.split(/\r\n|\n|\r/) : body.split('\n');
  while (lines.length > 0 && lines.at(-1)!.trim() === '') lines.pop();
  return lines;
}

/** Column at which a cell starts in its line, counted from 1. */
export function columnOfCell(table: TextTable, line: number, cell: number): number {
  const text = table.lines[line - 1] ?? '';
  if (table.delimiter === ' ') {
    return ([...text.matchAll(/\S+/g)][cell]?.index ?? text.length) + 1;
  }
  let quoted = false;
  let seen = 0;
  for (let k = 0; k < text.length; k++) {
    if (seen === cell) return k + 1;
    if (text[k] === '"') quoted = !quoted;
    else if (text[k] === table.delimiter && !quoted) seen++;
  }
  return text.length + 1;
}

/** A problem at a cell; the middle of the sentence names the column. */
export function cellProblem(
  table: TextTable,
  at: { readonly line: number; readonly cell: number },
  problem: Pick<Problem, 'where' | 'expected' | 'got'> & { readonly hint?: string },
): Problem {
  const column = at.line > 0 ? columnOfCell(table, at.line, at.cell) : 0;
  return { file: table.file, line: at.line, column, hint: '', ...problem };
}

const BYTE_ORDER_MARK = 0xfeff;
