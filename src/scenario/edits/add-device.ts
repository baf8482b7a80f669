import { mapping } from '../checks/tolerant-readers.ts';
import type { Edit } from './edit.ts';

/** An extract fan that runs while the air of its room is humid. @param raw a scenario as plain values */
export const addExtractFan = (raw: unknown, name: string, room: string): Edit =>
  addDevice(raw, name, { kind: 'extract fan', room, runs: 'by humidity' });

/**
 * A compressor dehumidifier by its label.
 *
 * @param raw    a scenario as plain values
 * @param label  water it removes at 30 °C and 80 % [L/day]
 */
export const addDehumidifier = (raw: unknown, name: string, room: string, label: number): Edit =>
  addDevice(raw, name, {
    kind: 'dehumidifier',
    room,
    type: 'compressor',
    label,
    'tested at': '30 °C/80 %',
  });

/** Adds a device under a name that no device of the scenario has yet. */
function addDevice(raw: unknown, name: string, device: Edit): Edit {
  return { devices: { [unusedName(name, mapping(mapping(raw)['devices']))]: device } };
}

const unusedName = (name: string, taken: object): string =>
  Object.hasOwn(taken, name) ? unusedName(`${name} too`, taken) : name;
