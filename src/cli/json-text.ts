/** Figures as `--json` prints them: indented, ending in a line break; NaN and infinity are null. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
