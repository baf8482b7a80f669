/** Day of the year of an instant [s UTC], 1 on the first of January, with its fraction. */
export function dayOfYear(utc: number): number {
  const year = new Date(utc * 1000).getUTCFullYear();
  return (utc - Date.UTC(year, 0, 1) / 1000) / 86_400 + 1;
}
