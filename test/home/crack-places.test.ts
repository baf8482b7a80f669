import { expect, test } from 'vitest';
import { crackPlaces } from '../../src/home/crack-places.ts';
import type { Home } from '../../src/home/home.ts';
import { aHome, anElement, aPane, aRoom } from './a-home.ts';

const home = aHome({
  rooms: [aRoom('front', 10), { ...aRoom('back', 20), elevation: 3 }, aRoom('larder', 2)],
  elements: [
    anElement('front wall', 12, 1, undefined, 0),
    anElement('back wall', 7, 1, undefined, 1),
    { ...anElement('back floor', 20, 1, { to: 'ground', damping: 0.3 }, 1), kind: 'floor' },
    { ...anElement('larder roof', 4, 1, undefined, 2), kind: 'roof' },
    anElement('between', 9, 1, { to: 'room', room: 1 }, 0),
    anElement('party wall', 9, 1, { to: 'neighbour', temperature: 19 }, 0),
  ],
  panes: [{ ...aPane('back window', 1, 2, 1), azimuth: 0 }],
});

/** Weights by room. */
function byRoom(of: Home): number[] {
  const weights = of.rooms.map(() => 0);
  for (const { room, weight } of crackPlaces(of, 35)) weights[room]! += weight;
  return weights;
}

test('counts walls and panes to outdoors in full, roofs and floors by half, nothing else', () => {
  expect(byRoom(home)).toEqual([12, 7 + 1 + 10, 2]);
});

test('walls leak at a quarter and three quarters of the room, roofs and floors at their height', () => {
  // aRoom is 2.4 m high.
  const places = crackPlaces(home, 35).map(({ room, azimuth, height, weight }) => [
    room,
    azimuth,
    Number(height.toFixed(6)),
    weight,
  ]);
  expect(places).toEqual([
    [0, 180, 0.6, 6],
    [0, 180, 1.8, 6],
    [1, 180, 3.6, 3.5],
    [1, 180, 4.8, 3.5],
    [1, 0, 3.6, 0.5],
    [1, 0, 4.8, 0.5],
    [1, null, 3, 10],
    [2, null, 2.4, 2],
  ]);
});

test('wind pulls at a flat roof more than at a pitched one', () => {
  const at = (pitch: number) => crackPlaces(home, pitch).at(-1)!.pressureCoefficient;
  expect([at(0), at(20), at(35)]).toEqual([-0.7, -0.6, -0.2]);
});

test('vents sit high in walls and windows', () => {
  const vents = crackPlaces(home, 35).filter((place) => place.vents);
  expect(vents.map(({ room, weight }) => [room, weight])).toEqual([
    [0, 6],
    [1, 3.5],
    [1, 0.5],
  ]);
});

test('a home without envelope is shared by floor area', () => {
  expect(byRoom({ ...home, elements: [], panes: [] })).toEqual([10, 20, 2]);
});
