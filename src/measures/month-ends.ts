/** Instants at which the calendar months (UTC) that a period touches end, one for each row of the ledger. [s UTC] */
export function monthEnds({ start, hours }: { start: number; hours: number }): number[] {
  const first = new Date(start * 1000);
  const ends: number[] = [];
  for (let k = 1; ; k++) {
    const end = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + k, 1) / 1000;
    ends.push(end);
    if (end >= start + hours * 3600) return ends;
  }
}
