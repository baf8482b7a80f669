import type { Home } from '../../home/home.ts';
import { hasSensor } from '../checks/sensed.ts';
import { momentOfWeek } from '../clock-words.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { UNLISTED } from './defaults.ts';
import { type CooledRoom, cooledRooms } from './heating/cooled-rooms.ts';
import { coolingSchedules } from './heating/cooling-schedules.ts';
import { setpointSchedules } from './heating/setpoint-schedules.ts';
import type { BuiltHome } from './home/build-home.ts';
import { firstAbove } from './level-schedule.ts';

/** What of the cooling cannot be, once it is known which rooms it cools and what these are like. */
export function coolingFindings(data: ScenarioData, { home, plans }: BuiltHome): Finding[] {
  if (data.cooling?.source === 'reversible heat pump' && data.heating?.source !== 'heat pump') {
    const got = JSON.stringify(data.heating?.source ?? 'boiler');
    const expected = 'a heat pump as the source of heating, which then cools';
    return [{ path: ['cooling', 'source'], expected, got: `heating by ${got}` }];
  }
  if (home.cooling === undefined) return [];
  const rooms = cooledRooms(data, plans, home.emitters, UNLISTED);
  return [
    ...rooms.flatMap((room) => coolerFinding(data, home, room)),
    ...rooms.flatMap((room) => sensorFinding(data, plans, room)),
    ...setpointFindings(data, home, plans, rooms),
  ];
}

/** A unit with one duct needs a wall to blow through, a reversible heat pump something to feed. */
function coolerFinding(
  { cooling }: ScenarioData,
  { elements, panes, emitters }: Home,
  { plan }: CooledRoom,
): Finding[] {
  const at = placeOf(cooling, plan.name);
  if (cooling?.source === 'single duct') {
    const outer =
      panes.some(({ room }) => room === plan.index) ||
      elements.some(
        ({ room, kind, far }) => room === plan.index && kind === 'wall' && far.to === 'outdoors',
      );
    const expected = 'a room with an outdoor wall or a window, to blow its air out through';
    return outer ? [] : [{ ...at, expected, got: `${plan.name}, which has neither` }];
  }
  if (cooling?.source !== 'reversible heat pump') return [];
  if (emitters.some(({ room }) => room === plan.index)) return [];
  const expected = 'a room with an emitter, through which it cools';
  return [{ ...at, expected, got: `${plan.name}, which has none` }];
}

function sensorFinding(
  data: ScenarioData,
  plans: BuiltHome['plans'],
  { plan, programme: { gate } }: CooledRoom,
): Finding[] {
  const own = ownSettings(data.cooling, plan.name);
  const inRoom = typeof own === 'object' && own.gate !== undefined;
  const path = [...(inRoom ? ['cooling', 'rooms', plan.name] : ['cooling']), 'gate'];
  const sees = (name: string): boolean => hasSensor(data, name, 'presence');
  if (gate?.present === 'in the room' && !sees(plan.name)) {
    return [{ path, expected: `a presence sensor in ${plan.name}`, got: 'none there' }];
  }
  if (gate?.present === 'at home' && !plans.some(({ name }) => sees(name))) {
    return [{ path, expected: 'a presence sensor in some room', got: 'none at all' }];
  }
  return [];
}

/** Nothing may be heated to more than it is cooled to. */
function setpointFindings(
  data: ScenarioData,
  { emitters }: Home,
  plans: BuiltHome['plans'],
  rooms: readonly CooledRoom[],
): Finding[] {
  const heated = setpointSchedules(data, plans, emitters, UNLISTED);
  const cooled = coolingSchedules(data, plans, emitters, UNLISTED);
  return rooms.flatMap(({ plan: { index, name } }): Finding[] => {
    const clash = firstAbove(heated[index]!, cooled[index]!);
    if (clash === null) return [];
    const own = ownSettings(data.cooling, name);
    const byRoom = ['cooling', 'rooms', name];
    const path =
      typeof own === 'number'
        ? byRoom
        : [...(own?.setpoint === undefined ? ['cooling'] : byRoom), 'setpoint'];
    const expected = `a setpoint of that of heating (${clash.one} °C) or more`;
    const when = momentOfWeek(clash.minute);
    return [{ path, expected, got: `${clash.other} °C in ${name} on ${when}` }];
  });
}

type Cooling = ScenarioData['cooling'];

function ownSettings(cooling: Cooling, room: string) {
  const rooms = cooling?.rooms;
  if (typeof rooms !== 'object' || Array.isArray(rooms)) return undefined;
  const own = Object.hasOwn(rooms, room) ? rooms[room] : undefined;
  return own === 'off' ? undefined : own;
}

/** Where it says that a room is cooled. */
function placeOf(cooling: Cooling, room: string): { path: Path; key?: true } {
  const rooms = cooling?.rooms;
  if (Array.isArray(rooms)) return { path: ['cooling', 'rooms', rooms.indexOf(room)] };
  if (ownSettings(cooling, room) !== undefined) {
    return { path: ['cooling', 'rooms', room], key: true };
  }
  return { path: ['cooling', rooms === undefined ? 'source' : 'rooms'] };
}
