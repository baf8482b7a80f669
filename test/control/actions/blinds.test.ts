import { expect, test } from 'vitest';
import { createBlinds } from '../../../src/control/actions/blinds.ts';
import type { BlindControl } from '../../../src/control/automation.ts';
import { createCommands, createObservation } from '../../../src/control/observations.ts';
import type { Home, Pane } from '../../../src/home/home.ts';
import { bareHome, bareRoom } from '../../engine/homes.ts';

const ANY = Number.NEGATIVE_INFINITY;

const pane = (room: number): Pane => ({
  ...{ name: `window ${room}`, room, area: 2, uValue: 2, gValue: 0.6, frameShare: 0.2 },
  ...{ unshaded: 1, azimuth: 180, tilt: 90 },
});

/** The second room has the blind; the first is there to be mistaken for it. */
const HOME: Home = bareHome([bareRoom('hall', 30), bareRoom('living', 30)], {
  panes: [pane(0), pane(1)],
  blinds: [{ name: 'shutter', pane: 1, inside: false, gShare: 0.1, uShare: 0.7 }],
});

/** Whether the blind is closed as sun [W/m2] and room [°C] go through these values. */
function follow(control: BlindControl, course: readonly (readonly [number, number])[], hours = 1) {
  const close = createBlinds(HOME, { blinds: [control] });
  const observed = createObservation(2, 0, 0, 1);
  const commands = createCommands(HOME);
  return course.map(([sun, room]) => {
    observed.sun[0] = sun;
    observed.temperature[1] = room;
    commands.blinds[0] = hours;
    close(observed, commands);
    return commands.blinds[0];
  });
}

const bySun = (...sun: number[]) => sun.map((value) => [value, 20] as const);
const byRoom = (...room: number[]) => room.map((value) => [0, value] as const);

test('without levels it goes by the clock alone, part of a step included', () => {
  expect(follow({ sunAbove: ANY, roomAbove: ANY }, bySun(0, 900))).toEqual([1, 1]);
  expect(follow({ sunAbove: ANY, roomAbove: ANY }, bySun(0, 900), 0.25)).toEqual([0.25, 0.25]);
});

test('the sun closes it above its level and lets go of it at half of that', () => {
  const control = { sunAbove: 200, roomAbove: ANY };
  const sun = bySun(150, 200, 201, 150, 101, 100, 150, 250);
  expect(follow(control, sun)).toEqual([0, 0, 1, 1, 1, 0, 0, 1]);
});

test('the room closes it above its level and lets go of it a kelvin below', () => {
  const control = { sunAbove: ANY, roomAbove: 24 };
  const room = byRoom(23.9, 24, 24.1, 23.5, 23.1, 23, 23.9, 24.5);
  expect(follow(control, room)).toEqual([0, 0, 1, 1, 1, 0, 0, 1]);
});

test('with two levels it is closed where both are passed', () => {
  const control = { sunAbove: 200, roomAbove: 24 };
  const course = [
    [300, 22],
    [300, 25],
    [80, 25],
    [300, 23.5],
    [300, 22],
  ] as const;
  expect(follow(control, course)).toEqual([0, 1, 0, 1, 0]);
});

test('out of its hours it is open whatever is passed', () => {
  const control = { sunAbove: 200, roomAbove: 24 };
  expect(follow(control, [[300, 25]], 0)).toEqual([0]);
});
