import { expect, test } from 'vitest';
import { createCoolingGates } from '../../../src/control/actions/cooling-gates.ts';
import type { Gate } from '../../../src/control/automation.ts';
import { createCommands } from '../../../src/control/observations.ts';
import type { Cooler, Home } from '../../../src/home/home.ts';
import { bareHome, bareRoom } from '../../engine/homes.ts';
import { noAutomation } from '../no-automation.ts';

const ROOMS = ['living', 'bedroom', 'hall'];
const PRESENT: Gate = { present: 'in the room', windowsShut: false };
const SHUT: Gate = { present: 'no matter', windowsShut: true };
const OPEN: Gate = { present: 'no matter', windowsShut: false };

const cooler = (room: number): Cooler => ({
  ...{ name: 'unit', room, source: 'split', power: 2000, coil: null, exhaust: 0, radiantShare: 0 },
  eer: { outdoor: [0], value: [3] },
});

const HOME: Home = bareHome(
  ROOMS.map((name) => bareRoom(name, 30)),
  { cooling: [cooler(0), cooler(1)] },
);

/** What is commanded of cooling set to 24 °C in every room. */
function commanded(
  gates: readonly Gate[] | undefined,
  { present = [0, 0, 0], open = [0, 0, 0], setpoints = [18, 18, 18] } = {},
) {
  const automation = { ...noAutomation(3), ...(gates && { coolingGates: gates }) };
  const presence = {
    present: Uint8Array.from(present),
    anyone: present.includes(1),
    someoneHome: false,
    awakeHome: false,
  };
  const gate = createCoolingGates(HOME, automation, {
    presence,
    windows: { open: Uint8Array.from(open), readOpen: Uint8Array.from(open) },
  });
  const commands = createCommands(HOME);
  commands.setpoints.set(setpoints);
  commands.coolingSetpoints.fill(24);
  gate(commands);
  return [...commands.coolingSetpoints];
}

test('without gates cooling follows its schedule', () => {
  expect(commanded(undefined)).toEqual([24, 24, 24]);
});

test('a room in which nobody is seen is not cooled', () => {
  expect(commanded([PRESENT, PRESENT, OPEN], { present: [0, 1, 0] })).toEqual([Infinity, 24, 24]);
});

test('an open window turns off the cooling of its room', () => {
  expect(commanded([SHUT, SHUT, OPEN], { open: [1, 0, 0] })).toEqual([Infinity, 24, 24]);
});

test('a room is never cooled below what heating holds', () => {
  expect(commanded(undefined, { setpoints: [25, 18, 18] })).toEqual([25, 24, 24]);
});
