import { expect, test } from 'vitest';
import { exposedAreas, VENT_WEIGHTS } from '../../src/home/exposed-area.ts';
import { aHome, anElement, aPane, aRoom } from './a-home.ts';

const home = aHome({
  rooms: [aRoom('front', 10), aRoom('back', 20), aRoom('larder', 2)],
  elements: [
    anElement('front wall', 12, 1, undefined, 0),
    anElement('back wall', 7, 1, undefined, 1),
    { ...anElement('back floor', 20, 1, { to: 'ground', damping: 0.3 }, 1), kind: 'floor' },
    { ...anElement('larder roof', 4, 1, undefined, 2), kind: 'roof' },
    anElement('between', 9, 1, { to: 'room', room: 1 }, 0),
    anElement('party wall', 9, 1, { to: 'neighbour', temperature: 19 }, 0),
  ],
  panes: [aPane('back window', 1, 2, 1)],
});

test('counts walls and panes to outdoors in full, roofs and floors by half, nothing else', () => {
  expect(exposedAreas(home)).toEqual([12, 7 + 1 + 10, 2]);
});

test('vents sit in walls and windows', () => {
  expect(exposedAreas(home, VENT_WEIGHTS)).toEqual([12, 8, 0]);
});

test('a home without envelope is shared by floor area', () => {
  const inner = { ...home, elements: [], panes: [] };
  expect(exposedAreas(inner)).toEqual([10, 20, 2]);
});
