/** Text in the tidy layout, of the invented place Saltmere. */
export function tidy(header: string, rows: readonly string[]): string {
  return `${[...HEAD, header, ...rows].join('\n')}\n`;
}

/** Hours from 2023-01-01T00:00Z in the tidy layout, a temperature each; the rest steady. */
export function tidyHours(temperatures: readonly (number | string)[]): string {
  const rows = temperatures.map((t, k) => `${isoHour(k)},${t},70,3`);
  return tidy('time,temperature,relative humidity,wind speed', rows);
}

/** Hour k of 2023. */
export const isoHour = (k: number): string =>
  `${new Date(Date.UTC(2023, 0) + k * 3_600_000).toISOString().slice(0, 16)}Z`;

const HEAD = [
  '# title: Saltmere',
  '# latitude: 54.2',
  '# longitude: -1.9',
  '# elevation: 35',
  '# invented for a test',
];
