/** The fields of one line of CSV, quotes as RFC 4180 has them undone; `csvLine` put together. */
export function csvFields(line: string): string[] {
  if (!line.includes('"')) return line.split(',');
  const fields: string[] = [];
  let from = 0;
  for (;;) {
    if (line[from] !== '"') {
      const comma = line.indexOf(',', from);
      fields.push(line.slice(from, comma < 0 ? undefined : comma));
      if (comma < 0) return fields;
      from = comma + 1;
      continue;
    }
    let end = from + 1;
    while (end < line.length && (line[end] !== '"' || line[end + 1] === '"')) {
      end += line[end] === '"' ? 2 : 1;
    }
    fields.push(line.slice(from + 1, end).replaceAll('""', '"'));
    if (line[end + 1] !== ',') return fields;
    from = end + 2;
  }
}
