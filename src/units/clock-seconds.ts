/** Seconds since 1970 of a date and time on one clock, or null where no calendar has it. Hour 24 is allowed. */
export function clockSeconds(
  year: number,
  month: number,
  day: number,
  hour: number,
  minute: number,
  second = 0,
): number | null {
  const parts = [year, month, day, hour, minute, second];
  if (!parts.every((part) => Number.isInteger(part) && part >= 0)) return null;
  if (hour > 24 || minute >= 60 || second >= 60) return null;
  if (hour === 24 && (minute > 0 || second > 0)) return null;
  const midnight = Date.UTC(year, month - 1, day);
  const date = new Date(midnight);
  if (date.getUTCFullYear() !== year) return null; // also years below 100, which Date moves
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return null;
  return midnight / 1000 + hour * 3600 + minute * 60 + second;
}
