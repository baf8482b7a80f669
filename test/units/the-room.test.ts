import { expect, test } from 'vitest';
import { theRoom } from '../../src/units/the-room.ts';

test.each([
  ['bedroom', 'the bedroom'],
  ['living', 'the living room'],
  ['Dining', 'the Dining room'],
  ['living room', 'the living room'],
  ['den', 'the den'],
  ['Wohnzimmer', 'the Wohnzimmer'],
  ['bedroom 2', 'bedroom 2'],
  ['living 2', 'living room 2'],
  ["Mia's room", "Mia's room"],
  ['parents’ bedroom', 'parents’ bedroom'],
  ['our bedroom', 'our bedroom'],
  ['theatre', 'the theatre'],
])('%s is "%s"', (name, words) => {
  expect(theRoom(name)).toBe(words);
});
