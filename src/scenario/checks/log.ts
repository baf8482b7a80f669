import type { Finding } from '../unplaced-problem.ts';
import { zoneClock, zoneNames } from '../zone-clock.ts';
import { unknownRoom } from './room-names.ts';
import { everyAt, mapping, roomNames, type UncheckedMapping } from './tolerant-readers.ts';

/** What is wrong with the section on logs: rooms, places, devices, the zone. */
export function logFindings(raw: UncheckedMapping): Finding[] {
  const log = mapping(raw['log']);
  const findings = everyAt(raw, 'log/readings/*/room').flatMap((one) =>
    unknownRoom(one, roomNames(raw)),
  );
  for (const [name, value] of Object.entries(mapping(log['readings']))) {
    const { room, place, quantity, device } = mapping(value);
    const path = ['log', 'readings', name];
    if (room !== undefined && place !== undefined) {
      findings.push({ path: [...path, 'place'], expected: 'a room or a place, not both' });
    }
    if (quantity === 'device power' && device === undefined) {
      findings.push({ path, expected: '`device`, whose power it is' });
    }
    if (typeof quantity === 'string' && quantity !== 'device power' && device !== undefined) {
      findings.push({ path: [...path, 'device'], expected: 'none but of `device power`' });
    }
  }
  const zone = log['zone'];
  if (typeof zone === 'string' && logClockOf(zone) === null) {
    const expected = 'a zone such as Europe/London, UTC, or hours ahead such as +01:00';
    findings.push({ path: ['log', 'zone'], expected, names: zoneNames() });
  }
  return findings;
}

/** The clock that a zone's name, "UTC" or a distance from it such as "+01:00" stands for; null for none. */
export function logClockOf(zone: string): ReturnType<typeof zoneClock> {
  if (/^(utc|gmt|z)$/i.test(zone)) return { from: [0], offset: [0] };
  const ahead = /^([+-])(\d\d)(?::?(\d\d))?$/.exec(zone);
  if (ahead === null) return zoneClock(zone);
  const seconds = Number(ahead[2]) * 3600 + Number(ahead[3] ?? 0) * 60;
  return { from: [0], offset: [ahead[1] === '-' ? -seconds : seconds] };
}
