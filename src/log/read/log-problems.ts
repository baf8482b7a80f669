import type { Problem } from '../../units/problem.ts';
import { columnOfCell, linesFrom } from './split-cells.ts';

/** Collects what is wrong with one file of a log: one problem a kind and column, with its count. */
export interface LogProblems {
  /** Something wrong at a cell; further ones of the same kind in the same column are only counted. */
  at(line: number, cell: number, kind: string, found: Found): void;
  /** Something wrong with the file as a whole. */
  whole(found: Found): void;
  /** All that was found, in the order of the file. */
  all(): Problem[];
}

type Found = Pick<Problem, 'where' | 'expected' | 'got'> & { readonly hint?: string };

export function logProblems(file: string, text: string, separator: string): LogProblems {
  const kept = new Map<string, { line: number; cell: number; found: Found; more: number }>();
  const wholes: Problem[] = [];
  return {
    at(line, cell, kind, found) {
      const key = `${kind} ${cell}`;
      const known = kept.get(key);
      if (known === undefined) kept.set(key, { line, cell, found, more: 0 });
      else known.more++;
    },
    whole(found) {
      wholes.push({ file, line: 0, column: 0, hint: '', ...found });
    },
    all() {
      const placed = [...kept.values()].map(({ line, cell, found, more }) => {
        const column = columnOfCell(lineOf(text, line), separator, cell);
        const others = more === 0 ? '' : `, and ${more} more like it`;
        return { file, line, column, hint: '', ...found, got: `${found.got}${others}` };
      });
      return [...wholes, ...placed.sort((a, b) => a.line - b.line || a.column - b.column)];
    },
  };
}

function lineOf(text: string, line: number): string {
  let n = 0;
  for (const each of linesFrom(text)) if (++n === line) return each;
  return '';
}
