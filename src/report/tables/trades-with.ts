import type { FitKind } from '../../scenario/edits/fit-places.ts';
import { FIT_KINDS } from './fit-kinds.ts';

/**
 * Whether a value of one kind may make up for another that is not as it is in the home: air trades with
 * heat and with water, which both leave by it, but heat and water do not with each other.
 */
export function tradesWith(kind: FitKind, other: FitKind): boolean {
  const [one, two] = [FIT_KINDS[kind].moves, FIT_KINDS[other].moves];
  return one === 'air' || two === 'air' || one === two;
}
