import { withoutGroups } from '../units/sum-text.ts';

/**
 * Figures as `--json` prints them: indented, ending in a line break; NaN and infinity are null, and sums
 * within words have no blanks.
 */
export function jsonText(value: unknown): string {
  return `${withoutGroups(JSON.stringify(value, null, 2))}\n`;
}
