import { HERE, nameInRoom, OCCUPIED, roomsOfRule } from '../rule-rooms.ts';
import { items, mapping, roomNames, type UncheckedMapping } from './tolerant-readers.ts';

/** A rule as it stands in one room, or by itself, and its place in the list. */
export interface PlacedRule {
  readonly rule: UncheckedMapping;
  readonly k: number;
  /** Null for a rule that stands by itself. */
  readonly room: string | null;
}

/** Every rule as often as it stands in a room, with that room put in wherever none is named. */
export function rulesInRooms(raw: UncheckedMapping): PlacedRule[] {
  const all = roomNames(raw);
  return items(raw['rules']).flatMap((value, k): PlacedRule[] => {
    const rule = mapping(value);
    const rooms = roomsOfRule(rule, all);
    if (rooms === null) return [{ rule, k, room: null }];
    return rooms.map((room) => ({ rule: inRoom(rule, room), k, room }));
  });
}

function inRoom(rule: UncheckedMapping, room: string): UncheckedMapping {
  const when = items(rule['when']).map((condition) => placedIn(room, condition));
  const seen = rule['rooms'] === OCCUPIED ? [{ room, presence: 'somebody' }] : [];
  return {
    ...rule,
    name: nameInRoom(rule['name'], room),
    when: [...when, ...seen],
    response: items(rule['response']).map((action) => actionIn(room, mapping(action))),
  };
}

function placedIn(room: string, value: unknown): unknown {
  const condition = mapping(value);
  const own = condition['room'];
  const hasRoom = ['reading', 'windows', 'presence'].some((key) => key in condition);
  return hasRoom && (own === undefined || own === HERE) ? { ...condition, room } : value;
}

function actionIn(room: string, action: UncheckedMapping): UncheckedMapping {
  const here = (key: string) => (action[key] === HERE ? { [key]: room } : {});
  const setsHere = 'setpoint' in action && !('room' in action);
  return {
    ...action,
    ...here('open'),
    ...here('close'),
    ...here('room'),
    ...(setsHere && { room }),
  };
}
