import type { FitKind } from '../../scenario/edits/fit-places.ts';
import { FIT_KINDS } from './fit-kinds.ts';

/** What names of fitted values mean, a line for each that is among them; those that say it themselves have none. */
export function namesInWords(kinds: readonly FitKind[]): string[] {
  const lines = Object.entries(FIT_KINDS)
    .filter(([kind]) => kinds.some((one) => one === kind))
    .flatMap(([, { means }]) => (means === undefined ? [] : [`${means[0]}: ${means[1]}`]));
  return [...new Set(lines)];
}
