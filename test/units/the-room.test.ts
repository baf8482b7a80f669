import { expect, test } from 'vitest';
import { theRoom } from '../../src/units/the-room.ts';

test.each([
  ['bedroom', 'the bedroom'],
  ['living', 'the living room'],
  ['Dining', 'the Dining room'],
  ['living room', 'the living room'],
  ['den', 'the den'],
])('%s is "%s"', (name, words) => {
  expect(theRoom(name)).toBe(words);
});
