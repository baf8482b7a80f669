import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { isYearOrMore } from '../years-in.ts';

/**
 * A home whose windows stay shut for a year, which is nobody's home but that of a file that says nothing
 * of windows.
 *
 * @param hoursOpen  of the windows of each room [h]
 * @param hours  of the period [h]
 */
export function shutWindows(
  { openings }: Pick<Home, 'openings'>,
  hoursOpen: readonly number[],
  hours: number,
): Notice[] {
  if (openings.length === 0 || !isYearOrMore(hours) || hoursOpen.some((open) => open > 0))
    return [];
  const text =
    'No window is opened in the whole year. People open windows on warm days and most bedrooms on winter ' +
    'mornings: say so under household, airing, or summers come out too hot and rooms too damp.';
  return [{ id: SHUT_WINDOWS, text }];
}

/** Id of that notice, which stands first where figures are read. */
export const SHUT_WINDOWS = 'windows-shut-all-year';
