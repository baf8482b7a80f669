import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { conditionFindings } from './conditions.ts';
import { unknownRoom } from './room-names.ts';
import { rulesInRooms } from './rules-in-rooms.ts';
import { canBothHold } from './rules-overlap.ts';
import { frostGuardOf } from './setpoints.ts';
import {
  everyAt,
  items,
  mapping,
  readTolerantly,
  roomNames,
  type UncheckedMapping,
} from './tolerant-readers.ts';

/** Rules name things that exist, each once, and no two of them want opposite things at one time. */
export function ruleFindings(raw: UncheckedMapping): Finding[] {
  const rules = rulesInRooms(raw);
  const findings: Finding[] = [];
  const clashes: Clash[] = [];
  const seen = new Set<unknown>();
  rules.forEach(({ rule, k, room }, n) => {
    const at = ['rules', k];
    if (seen.has(rule['name'])) {
      findings.push({ path: [...at, 'name'], expected: 'a name that no other rule has' });
    }
    if (typeof rule['name'] === 'string') seen.add(rule['name']);
    if (room === null) findings.push(...roomlessFindings(rule, at));
    findings.push(...roomConditionFindings(raw, rule, k));
    findings.push(...actionFindings(raw, rule, at));
    clashes.push(
      ...rules.slice(0, n + 1).flatMap((earlier): Clash[] => {
        // One rule clashes with itself, if at all, in every room.
        if (earlier.k === k && earlier.rule !== rule) return [];
        const name = mapping(items(raw['rules'])[earlier.k])['name'];
        return contradictions(earlier.rule, rule, at).map((finding) => ({ finding, name }));
      }),
    );
  });
  findings.push(...onceForAllRooms(clashes));
  const rooms = roomNames(raw);
  return [
    ...findings,
    ...everyAt(raw, 'rules/#/rooms/#').flatMap((room) => unknownRoom(room, rooms)),
  ];
}

/** Readings and setpoints that need a room, in a rule that has none. */
function roomlessFindings(rule: UncheckedMapping, at: Path): Finding[] {
  const unread = items(rule['when']).flatMap((value, c): Finding[] => {
    const condition = mapping(value);
    if (!('reading' in condition) || 'room' in condition) return [];
    const path = [...at, 'when', c];
    const hint = 'write the room into the condition, or give the rule "rooms", such as all';
    return [{ path, expected: 'the room whose reading it is, or outdoors', got: 'none', hint }];
  });
  const unset = items(rule['response']).flatMap((action, a): Finding[] => {
    if (!('setpoint' in mapping(action)) || 'room' in mapping(action)) return [];
    const path = [...at, 'response', a, 'setpoint'];
    return [{ path, expected: 'the room of the setpoint', got: 'a setpoint alone' }];
  });
  return [...unread, ...unset];
}

/** What conditions ask of rooms; where it is the rule that puts a room in, its `rooms` are to blame. */
function roomConditionFindings(
  raw: UncheckedMapping,
  rule: UncheckedMapping,
  k: number,
): Finding[] {
  const written = items(mapping(items(raw['rules'])[k])['when']);
  return conditionFindings(raw, rule['when'], ['rules', k, 'when']).flatMap((finding) => {
    const own = written[Number(finding.path[3])];
    if ('room' in mapping(own)) return [finding];
    // A room that is not there is told where it is listed.
    if (finding.names !== undefined) return [];
    return [{ ...finding, path: ['rules', k, 'rooms'] }];
  });
}

function actionFindings(raw: UncheckedMapping, rule: UncheckedMapping, at: Path): Finding[] {
  const devices = Object.keys(mapping(raw['devices']));
  const rooms = roomNames(raw);
  const frost = frostGuardOf(raw);
  return items(rule['response']).flatMap((action, a): Finding[] => {
    const path = [...at, 'response', a];
    const { room, setpoint } = mapping(action);
    const findings = unknownRoom({ path: [...path, 'room'], value: room }, rooms);
    for (const key of ['run', 'stop']) {
      const name = mapping(action)[key];
      if (typeof name !== 'string' || devices.includes(name)) continue;
      const known = devices.length === 0 ? 'there are none' : devices.join(', ');
      const expected = `the name of a device: ${known}`;
      findings.push({ path: [...path, key], expected, names: devices });
    }
    if (readTolerantly(setpoint, '°C') < frost) {
      const expected = `a setpoint of the frost guard (${frost} °C) or more`;
      findings.push({ path: [...path, 'setpoint'], expected });
    }
    return findings;
  });
}

/** What is wrong beside an earlier rule, by the name that it was given. */
interface Clash {
  readonly finding: Finding;
  readonly name: unknown;
}

/** Rules that stand in several rooms clash in each; that is told once, by the first, with how many more there are. */
function onceForAllRooms(clashes: readonly Clash[]): Finding[] {
  const keyOf = ({ finding, name }: Clash): string => JSON.stringify([finding.path, name]);
  const count = new Map<string, number>();
  for (const clash of clashes) count.set(keyOf(clash), (count.get(keyOf(clash)) ?? 0) + 1);
  const first = new Map(clashes.toReversed().map((clash) => [keyOf(clash), clash]));
  return clashes.flatMap((clash): Finding[] => {
    if (first.get(keyOf(clash)) !== clash) return [];
    const more = count.get(keyOf(clash))! - 1;
    if (more === 0) return [clash.finding];
    const also = `and likewise in ${more} more ${more === 1 ? 'room' : 'rooms'}`;
    return [{ ...clash.finding, got: `${clash.finding.got}, ${also}` }];
  });
}

/** What one rule starts and another, or itself, stops while both may hold. */
function contradictions(earlier: UncheckedMapping, rule: UncheckedMapping, at: Path): Finding[] {
  const itself = earlier === rule;
  if (!itself && !canBothHold(earlier['when'], rule['when'])) return [];
  const against = itself
    ? 'nothing against what the same rule does'
    : `nothing against rule ${JSON.stringify(earlier['name'])}, which may hold as well`;
  return items(rule['response']).flatMap((action, a): Finding[] => {
    const path = [...at, 'response', a];
    const others = items(earlier['response']).slice(0, itself ? a : undefined);
    return others.flatMap((other) =>
      clash(mapping(other), mapping(action)).map(([key, got]) => ({
        path: [...path, key],
        expected: against,
        got,
        ...(!itself && { hint: APART }),
      })),
    );
  });
}

const APART =
  'give one a condition that rules the other out, such as windows closed beside windows open, or after 07:00 and before 22:00';

function clash(other: UncheckedMapping, action: UncheckedMapping): [string, string][] {
  const opposite = OPPOSITES.flatMap(([one, two]): [string, string][] => {
    if (action[one] === undefined || action[one] !== other[two]) return [];
    return [[one, `${one} ${action[one]} against ${two} ${action[one]}`]];
  });
  const { room, setpoint } = action;
  if (room === undefined || room !== other['room'] || setpoint === undefined) return opposite;
  if (other['setpoint'] === undefined || other['setpoint'] === setpoint) return opposite;
  return [...opposite, ['setpoint', `${setpoint} against ${other['setpoint']} in ${room}`]];
}

const OPPOSITES = [
  ['run', 'stop'],
  ['stop', 'run'],
  ['open', 'close'],
  ['close', 'open'],
] as const;
