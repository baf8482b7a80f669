/** An instant as text to the minute, such as 2023-01-31T05:00Z. @param utc instant [s UTC] */
export function isoTime(utc: number): string {
  return `${new Date(utc * 1000).toISOString().slice(0, 16)}Z`;
}
