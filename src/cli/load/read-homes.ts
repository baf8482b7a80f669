import { pointerSteps } from '../../scenario/yaml/json-pointer.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import type { StockHome } from '../../studies/sweep/sweep-layout.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { tableRows } from '../../weather/read/table-rows.ts';
import { cellProblem, splitLines, type TextTable } from '../../weather/text-table.ts';

/**
 * The homes of a stock: CSV with a column `name` and columns whose heads are RFC 6901 pointers, such
 * as `/home/leakage/ach50`. A cell is what the file of the scenario would have at that place; an
 * empty one leaves the scenario's own.
 *
 * @throws InputProblems with everything that is wrong
 */
export function readHomes(text: string, file: string): StockHome[] {
  const table: TextTable = { file, lines: splitLines(text), delimiter: ',' };
  const problems: Problem[] = [];
  const [head, ...rows] = tableRows(table, 0, table.lines.length, problems);
  const heads = head?.cells.map((cell) => cell.trim()) ?? [];
  const names = heads.indexOf('name');
  const wrong = (line: number, cell: number, about: Pick<Problem, 'where' | 'expected' | 'got'>) =>
    void problems.push(cellProblem(table, { line, cell }, about));
  const where = (cell: number) => `column ${heads[cell] ?? cell + 1}`;
  const line = head?.line ?? 1;
  if (names < 0) wrong(line, 0, { where: 'head', expected: 'a column "name"', got: 'none' });
  for (const [cell, pointer] of heads.entries()) {
    if (cell === names) continue;
    const got = JSON.stringify(pointer);
    if (heads.indexOf(pointer) !== cell) {
      wrong(line, cell, { where: 'head', expected: 'each column once', got: `${got} again` });
    } else if (pointerSteps(pointer) === null || /^\/?$|\/__proto__(\/|$)/.test(pointer)) {
      const expected = 'a column "name" or a pointer such as /home/leakage/ach50';
      wrong(line, cell, { where: 'head', expected, got });
    }
  }
  if (rows.length === 0) wrong(0, 0, { where: '', expected: 'at least one home', got: 'none' });
  const seen = new Set<string>();
  const homes = rows.map(({ line: at, cells }): StockHome => {
    const name = cells[names]?.trim() ?? '';
    if (cells.length !== heads.length) {
      const expected = `${heads.length} cells`;
      wrong(at, cells.length, { where: `row of ${name}`, expected, got: String(cells.length) });
    }
    if (name === '' || seen.has(name) || /\p{Cc}/u.test(name)) {
      const again = seen.has(name) ? ' again' : '';
      const got = name === '' ? 'none' : `${JSON.stringify(name)}${again}`;
      wrong(at, names, { where: where(names), expected: 'a name of its own, on one line', got });
    }
    seen.add(name);
    const set = heads.flatMap((pointer, cell) => {
      const value = cells[cell]?.trim() ?? '';
      return cell === names || value === '' ? [] : [settingWords(pointer, value)];
    });
    return { name, set };
  });
  if (problems.length > 0) throw new InputProblems(problems);
  return homes;
}
