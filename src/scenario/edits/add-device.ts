import { mapping, textOf } from '../checks/tolerant-readers.ts';
import type { Edit } from './edit.ts';

/** An extract fan that runs while the air of its room is humid. @param raw a scenario as plain values */
export const addExtractFan = (raw: unknown, name: string, room: string): Edit =>
  addDevice(raw, name, { kind: 'extract fan', room, runs: 'by humidity' });

/**
 * A compressor dehumidifier by its label.
 *
 * @param raw    a scenario as plain values
 * @param label   water it removes at 30 °C and 80 % [L/day]
 * @param target  relative humidity that it keeps; the usual one where not given [%]
 */
export const addDehumidifier = (
  raw: unknown,
  name: string,
  room: string,
  label: number,
  target?: number,
): Edit =>
  addDevice(raw, name, {
    kind: 'dehumidifier',
    room,
    type: 'compressor',
    label,
    'tested at': '30 °C/80 %',
    ...(target !== undefined && { target: `${target} %` }),
  });

/**
 * The first dehumidifier that a scenario has, with another label and target; where it has none, one in
 * a room, whose water drains away.
 *
 * @param raw     a scenario as plain values
 * @param label   water it removes at its test condition [L/day]
 * @param target  relative humidity that it keeps [%]
 */
export function resizeDehumidifier(
  raw: unknown,
  room: string,
  label: number,
  target: number,
): Edit {
  const has = firstDehumidifier(raw);
  if (has !== null) return { devices: { [has.name]: { label, target } } };
  const added = mapping(addDehumidifier(raw, 'dehumidifier', room, label)['devices']);
  return {
    devices: Object.fromEntries(
      Object.entries(added).map(([name, device]) => [
        name,
        { ...mapping(device), tank: 'drained', target },
      ]),
    ),
  };
}

/** The first dehumidifier of a scenario, and its room; null for none. @param raw as plain values */
export function firstDehumidifier(raw: unknown): { name: string; room: string } | null {
  const all = Object.entries(mapping(raw, 'devices'));
  const found = all.find(([, device]) => mapping(device)['kind'] === 'dehumidifier');
  return found === undefined ? null : { name: found[0], room: textOf(mapping(found[1])['room']) };
}

/**
 * Outdoor air blown into a room all the time and as much out again, without heat recovery, and moved
 * for nothing, so that what it costs is its heat.
 *
 * @param raw   a scenario as plain values
 * @param flow  [m3/h]
 */
export const addSteadyAir = (raw: unknown, name: string, room: string, flow: number): Edit =>
  addDevice(raw, name, {
    kind: 'balanced ventilation',
    supplies: { [room]: flow },
    extracts: { [room]: flow },
    'heat recovery': 0,
    'moisture recovery': 0,
    filter: 'none',
    power: 0,
    runs: 'always',
  });

/** Adds a device under a name that no device of the scenario has yet. */
function addDevice(raw: unknown, name: string, device: Edit): Edit {
  return { devices: { [unusedName(name, mapping(raw, 'devices'))]: device } };
}

const unusedName = (name: string, taken: object): string =>
  Object.hasOwn(taken, name) ? unusedName(`${name} too`, taken) : name;
