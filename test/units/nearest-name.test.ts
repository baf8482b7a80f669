import { describe, expect, test } from 'vitest';
import { nearestName } from '../../src/units/nearest-name.ts';

describe('the nearest name', () => {
  test.each([
    ['bedrom', 'bedroom'], // one letter dropped
    ['bderoom', 'bedroom'], // two swapped
    ['Bed-Room', 'bedroom'], // case and hyphens do not count
    ['hal', 'hall'],
    ['cellar', null],
    ['', null],
  ])('of %j is %j', (typed, near) => {
    expect(nearestName(typed, ['living', 'bedroom', 'hall'])).toBe(near);
  });

  test('allows a third of the letters, and one of two', () => {
    expect(nearestName('abcxyf', ['abcdef'])).toBe('abcdef'); // 2 of 6
    expect(nearestName('abxyzf', ['abcdef'])).toBeNull(); // 3 of 6
    expect(nearestName('ax', ['ab'])).toBe('ab');
    expect(nearestName('abcdefxyz', ['abcdef'])).toBe('abcdef'); // 3 of 9, all of them too many
    expect(nearestName('abcdefwxyz', ['abcdef'])).toBeNull(); // 4 of 10
  });

  test('is what people call so, before another name that it is a part of', () => {
    const keys = ['water temperature', 'setpoint', 'setback'];
    expect(nearestName('temperature', keys)).toBe('setpoint');
    expect(nearestName('temperature', ['water temperature', 'setback'])).toBe('water temperature');
    const readings = ['temperature', 'humidity', 'dew point', 'co2', 'tvoc', 'pm25'];
    for (const [said, meant] of [
      ['RH', 'humidity'],
      ['temp', 'temperature'],
    ]) {
      expect(nearestName(said!, readings)).toBe(meant);
    }
    const actions = ['tell', 'lamp', 'run', 'stop', 'open', 'close', 'setpoint'];
    for (const [said, meant] of [
      ['notify', 'tell'],
      ['turn off', 'stop'],
      ['heat', 'setpoint'],
    ]) {
      expect(nearestName(said!, actions)).toBe(meant);
    }
  });

  test('is that of fewest differences, and of these the first', () => {
    expect(nearestName('bath', ['batch', 'baths', 'bat'])).toBe('batch');
    expect(nearestName('baths2', ['batch', 'baths'])).toBe('baths');
  });

  test('goes by whole words before several letters', () => {
    const glazings = ['single', 'double', 'double low-e', 'triple'];
    expect(nearestName('double glazed', glazings)).toBe('double'); // low-e is 6 letters off
    expect(nearestName('double low e', glazings)).toBe('double low-e');
    expect(nearestName('semi', ['terrace', 'semi-detached', 'detached'])).toBe('semi-detached');
    expect(nearestName('detached', ['semi-detached', 'flat'])).toBe('semi-detached');
    // Two names have one word of it each: neither is meant more.
    expect(nearestName('night setpoint', ['night', 'setpoint'])).toBeNull();
    // Two letters are not.
    expect(nearestName('box room', ['bedroom', 'room'])).toBe('room');
    // A letter is nearer than a word.
    expect(nearestName('hall 2', ['hall', 'hall 1'])).toBe('hall');
  });

  test('is that which people call otherwise, unless it might be several', () => {
    const shapes = ['flat', 'terrace', 'end terrace', 'semi-detached', 'detached'];
    expect(nearestName('apartment', shapes)).toBe('flat');
    expect(nearestName('Row-house', shapes)).toBe('terrace');
    expect(nearestName('gas furnace', ['boiler', 'direct electric'])).toBe('boiler');
    expect(nearestName('gas resistance', ['boiler', 'direct electric'])).toBeNull();
    expect(nearestName('apartment', ['house', 'constructor'])).toBeNull();
  });

  test('is none for more than 100 characters, at once', () => {
    const name = 'n'.repeat(100);
    expect(nearestName(`${name.slice(1)}x`, [name])).toBe(name);
    expect(nearestName(`${name}x`, [name])).toBeNull();
    expect(nearestName(name, [`${name}x`])).toBeNull();
    const began = performance.now();
    expect(nearestName('x'.repeat(400_000), ['y'.repeat(400_000), 'short'])).toBeNull();
    expect(nearestName('short', ['y'.repeat(400_000)])).toBeNull();
    expect(performance.now() - began).toBeLessThan(1000); // all pairs of letters would take hours
  });
});

test.each([
  ['hum', ['temperature', 'humidity'], 'humidity'],
  ['switch off', ['run', 'stop', 'tell'], 'stop'],
  ['turn_on', ['run', 'stop', 'tell'], 'run'],
  ['conditions', ['name', 'when', 'response'], 'when'],
  ['trigger', ['name', 'when', 'response'], 'when'],
  ['actions', ['name', 'when', 'response'], 'response'],
])('%j is what people say for one of %j', (typed, names, meant) => {
  expect(nearestName(typed, names)).toBe(meant);
});
