/**
 * Cells of one line, trimmed. Inside quotation marks the separator counts for nothing and a doubled
 * mark is one mark (RFC 4180); line breaks inside a cell are not known here.
 *
 * @returns null where the marks of the line do not pair
 */
export function splitCells(line: string, separator: string): string[] | null {
  if (!line.includes('"')) {
    const cells = line.split(separator);
    for (let k = 0; k < cells.length; k++) cells[k] = cells[k]!.trim();
    return cells;
  }
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let k = 0; k < line.length; k++) {
    const mark = line[k]!;
    if (quoted) {
      if (mark !== '"') cell += mark;
      else if (line[k + 1] === '"') {
        cell += '"';
        k++;
      } else quoted = false;
    } else if (mark === '"' && cell.trim() === '') {
      quoted = true;
      cell = '';
    } else if (mark === separator) {
      cells.push(cell.trim());
      cell = '';
    } else cell += mark;
  }
  cells.push(cell.trim());
  return quoted ? null : cells;
}

/** Column at which a cell begins in its line, counted from 1. */
export function columnOfCell(line: string, separator: string, cell: number): number {
  let quoted = false;
  let seen = 0;
  for (let k = 0; k < line.length; k++) {
    if (seen === cell) return k + 1;
    if (line[k] === '"') quoted = !quoted;
    else if (line[k] === separator && !quoted) seen++;
  }
  return line.length + 1;
}

/** Walks the lines of a text without making a list of them. */
export function* linesFrom(text: string): Generator<string> {
  let at = 0;
  while (at < text.length) {
    let end = text.indexOf('\n', at);
    if (end < 0) end = text.length;
    yield text.charCodeAt(end - 1) === CARRIAGE_RETURN && end > at
      ? text.slice(at, end - 1)
      : text.slice(at, end);
    at = end + 1;
  }
}

const CARRIAGE_RETURN = 13;
