import { nearestName } from '../../units/nearest-name.ts';
import { WHATS } from '../choices.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { everyAt, items, mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Fans and airing habits wait for activities that the household has. */
export function activityNameFindings(raw: UncheckedMapping): Finding[] {
  const names = activityNames(mapping(raw['household']));
  const check = (asked: unknown, path: Path): Finding[] =>
    (typeof asked === 'string' ? [asked] : items(asked)).flatMap((name) => {
      if (typeof name !== 'string' || names.includes(name)) return [];
      const near = nearestName(name, names);
      const finding = {
        path,
        expected: `an activity of the household: ${names.join(', ')}`,
        got: JSON.stringify(name),
      };
      return [near === null ? finding : { ...finding, hint: `did you mean "${near}"?` }];
    });
  const fans = everyAt(raw, 'devices/*').flatMap(({ path, value }): Finding[] => {
    const { kind, runs, with: asked } = mapping(value);
    if (kind !== 'extract fan') return [];
    if (runs === 'with activities' && asked === undefined) {
      return [{ path, expected: 'with: the activities it runs with', got: 'none' }];
    }
    return check(asked, [...path, 'with']);
  });
  const habits = everyAt(raw, 'household/airing/#/after').flatMap(({ path, value }) =>
    check(value, path),
  );
  return [...fans, ...habits];
}

/** Names and kinds of the activities; the kinds that are filled in where a household gives none. */
export function activityNames(household: UncheckedMapping): readonly string[] {
  if (household['activities'] === undefined) return WHATS;
  const said = items(household['activities'])
    .map((one) => mapping(one))
    .flatMap(({ name, what }) => [name, what]);
  return [...new Set(said.filter((word) => typeof word === 'string'))];
}
