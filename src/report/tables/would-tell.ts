import type { HomeFit } from '../../fit/fit-home.ts';
import type { Adjustable } from '../../scenario/edits/adjustables.ts';
import { FIT_KINDS } from './fit-kinds.ts';

/**
 * Which measurement would tell what a log does not: the first that was not logged, in the room that the
 * value is of.
 *
 * @param logged  what was, and in which room
 */
export function wouldTell(
  { kind, room }: Pick<Adjustable, 'kind' | 'room'>,
  logged: HomeFit['logged'] = [],
): string {
  const isLogged = (quantities: readonly string[]) =>
    logged.some(
      (one) => quantities.includes(one.quantity) && (room === undefined || one.room === room),
    );
  const { tellers } = FIT_KINDS[kind];
  return tellers.find(({ of = [] }) => !isLogged(of))?.words ?? 'a longer log';
}
