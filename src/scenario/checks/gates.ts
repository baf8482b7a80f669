import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { rulesInRooms } from './rules-in-rooms.ts';
import { hasSensor } from './sensed.ts';
import { items, mapping, roomNames, type UncheckedMapping } from './tolerant-readers.ts';

/** A gate that looks for people needs a presence sensor: in its room, or somewhere at home. */
export function gateFindings(raw: UncheckedMapping): Finding[] {
  const rooms = roomNames(raw);
  const looksSomewhere = rooms.some((room) => hasSensor(raw, room, 'presence'));
  const check = (gate: unknown, where: readonly unknown[], path: Path): Finding[] => {
    const words = [gate].flat();
    if (words.includes('when somebody is home') && !looksSomewhere) {
      return [{ path, expected: 'a presence sensor in some room', got: 'none at all' }];
    }
    if (!words.includes('when present')) return [];
    const blind = where.filter(
      (room) => typeof room === 'string' && !hasSensor(raw, room, 'presence'),
    );
    return blind.map((room) => ({
      path,
      expected: `a presence sensor in ${room}`,
      got: 'none there',
    }));
  };
  const heating = mapping(raw['heating']);
  const own = mapping(heating['rooms']);
  const byHome = rooms.filter((name) => own[name] !== 'off' && !('gate' in mapping(own[name])));
  const findings = check(heating['gate'], byHome, ['heating', 'gate']);
  for (const [name, room] of Object.entries(own)) {
    findings.push(...check(mapping(room)['gate'], [name], ['heating', 'rooms', name, 'gate']));
  }
  for (const [name, device] of Object.entries(mapping(raw['devices']))) {
    const { gate, room } = mapping(device);
    findings.push(...check(gate, [room], ['devices', name, 'gate']));
  }
  rulesInRooms(raw).forEach(({ rule: { gate, when }, k, room: own }) => {
    const first = items(when).map((one) => mapping(one)['room']);
    const room = own ?? first.find((name) => typeof name === 'string' && name !== 'outdoors');
    findings.push(...check(gate, [room], ['rules', k, 'gate']));
  });
  return findings;
}
