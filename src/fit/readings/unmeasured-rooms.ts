import type { Home } from '../../home/home.ts';
import { andList } from '../../units/word-list.ts';
import type { Readings } from './readings.ts';

/** A caution where a meter of the home counts heat of rooms whose temperature nobody logged; none elsewhere. */
export function unmeasuredRooms(home: Home, { heating, rooms }: Readings): string[] {
  if (heating === null) return [];
  const heated = new Set(home.emitters.map(({ room }) => room));
  const names = rooms
    .filter(({ temperature }, i) => temperature === null && heated.has(i))
    .map(({ name }) => name);
  if (names.length === 0) return [];
  return [
    `The meter counts the heat of ${andList(names)} too, where no temperature was logged: ${names.length === 1 ? 'it is' : 'they are'} heated as the scenario says, and more or less heat than that is taken for that of other rooms. A sensor there would tell.`,
  ];
}
