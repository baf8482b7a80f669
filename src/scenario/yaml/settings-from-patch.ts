import { pointerOf } from './json-pointer.ts';
import { isMapping } from './merge-patch.ts';
import { settingWords } from './settings.ts';

/**
 * A change in the shape of a merge patch as `/pointer=value` settings, one for each of its leaves.
 *
 * Laid on a scenario they give what the merge patch gives, null removing included, as long as the
 * change does not put a mapping where a list stood; an empty mapping is
 * left out. Values are written as JSON, which is YAML too.
 *
 * @example settingsFromPatch({ heating: { setpoint: 19 } }) // ['/heating/setpoint=19']
 *
 * Source: RFC 7386 (merge patch), RFC 6901 (pointer).
 */
export function settingsFromPatch(change: unknown, steps: readonly string[] = []): string[] {
  if (!isMapping(change)) return [settingWords(pointerOf(steps), JSON.stringify(change))];
  return Object.entries(change).flatMap(([key, value]) =>
    settingsFromPatch(value, [...steps, key]),
  );
}
