import { expect, test } from 'vitest';
import { layOutWalls } from '../../../src/engine/layout/lay-out-walls.ts';
import { bareHome, bareRoom } from '../homes.ts';
import { element } from '../worked-house.ts';

test('half of the sun on surfaces falls on the floor, the rest on all by area', () => {
  const home = bareHome([bareRoom('room', 40)], {
    elements: [element('floor', 0, 'floor', 20, 0.5), element('walls', 0, 'wall', 60, 1)],
  });
  const { walls } = layOutWalls(home, () => 0, 600);
  const share = (c: number): number =>
    walls.nearSun[c]! * (walls.nearAir[c]! + walls.nearRadiant[c]!);
  expect(share(0)).toBeCloseTo(0.5 + 0.5 * (20 / 80), 12);
  expect(share(1)).toBeCloseTo(0.5 * (60 / 80), 12);
});

test('an element without area is no wall', () => {
  const none = bareHome([bareRoom('room', 40)], { elements: [element('none', 0, 'wall', 0, 1)] });
  expect(layOutWalls(none, () => 0, 600).walls.count).toBe(0);
});
