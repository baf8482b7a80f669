import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { items, mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Every name of a room that is used somewhere must be the name of a room; likewise openings. */
export function roomNameFindings(raw: UncheckedMapping): Finding[] {
  const home = mapping(raw['home']);
  const rooms = mapping(home['rooms']);
  const names = Object.keys(rooms);
  const findings: Finding[] = [];
  const room = (value: unknown, path: Path) => {
    if (typeof value !== 'string' || names.includes(value)) return;
    findings.push({ path, expected: `the name of a room: ${names.join(', ')}`, names });
  };

  for (const [name, value] of Object.entries(rooms)) {
    const at = ['home', 'rooms', name];
    const { over, elements } = mapping(value);
    room(over, [...at, 'over']);
    items(elements).forEach((element, k) => {
      const far = mapping(mapping(element)['to'])['room'];
      room(far, [...at, 'elements', k, 'to', 'room']);
      if (far === name) {
        findings.push({ path: [...at, 'elements', k, 'to', 'room'], expected: 'another room' });
      }
    });
    if (over === name) findings.push({ path: [...at, 'over'], expected: 'another room' });
  }
  items(home['doorways']).forEach((doorway, k) => {
    const at = ['home', 'doorways', k, 'between'];
    const between = mapping(doorway)['between'];
    if (!Array.isArray(between)) return;
    between.forEach((name, end) => {
      room(name, [...at, end]);
    });
    if (between.length !== 2) findings.push({ path: at, expected: 'the names of two rooms' });
    else if (between[0] === between[1]) {
      findings.push({ path: [...at, 1], expected: `another room than ${between[0]}` });
    }
  });
  for (const section of ['heating', 'cooling']) {
    for (const name of Object.keys(mapping(mapping(raw[section])['rooms']))) {
      if (names.includes(name)) continue;
      const path = [section, 'rooms', name];
      const expected = `the name of a room: ${names.join(', ')}`;
      findings.push({ path, expected, got: JSON.stringify(name), key: true, names });
    }
  }
  items(mapping(raw['cooling'])['rooms']).forEach((name, k) => {
    room(name, ['cooling', 'rooms', k]);
  });
  items(raw['blinds']).forEach((entry, k) => {
    room(mapping(entry)['room'], ['blinds', k, 'room']);
    items(mapping(entry)['rooms']).forEach((name, n) => {
      room(name, ['blinds', k, 'rooms', n]);
    });
  });
  const household = mapping(raw['household']);
  items(household['people']).forEach((person, k) => {
    const at = ['household', 'people', k];
    room(mapping(person)['sleeps in'], [...at, 'sleeps in']);
    const lives = mapping(person)['lives in'];
    room(lives, [...at, 'lives in']);
    items(lives).forEach((one, n) => {
      room(mapping(one)['room'], [...at, 'lives in', n, 'room']);
    });
    room(mapping(person)['works in'], [...at, 'works in']);
    items(mapping(person)['schedule']).forEach((stay, s) => {
      room(mapping(stay)['room'], [...at, 'schedule', s, 'room']);
    });
  });
  items(household['guests']).forEach((guest, k) => {
    room(mapping(guest)['room'], ['household', 'guests', k, 'room']);
  });
  items(household['activities']).forEach((activity, k) => {
    room(mapping(activity)['room'], ['household', 'activities', k, 'room']);
  });
  items(household['airing']).forEach((habit, k) => {
    const at = ['household', 'airing', k];
    room(mapping(habit)['room'], [...at, 'room']);
    items(mapping(habit)['rooms']).forEach((name, n) => {
      room(name, [...at, 'rooms', n]);
    });
  });
  return findings;
}
