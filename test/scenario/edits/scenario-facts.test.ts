import { expect, test } from 'vitest';
import { addDehumidifier, addExtractFan } from '../../../src/scenario/edits/add-device.ts';
import { bothEdits, isLegalEdit } from '../../../src/scenario/edits/edit.ts';
import {
  givenNumber,
  hasDevice,
  hasOpenFluedStove,
  roomUsedAs,
} from '../../../src/scenario/edits/scenario-facts.ts';
import { readYaml } from '../../../src/scenario/yaml/read-yaml.ts';
import { homeWith } from '../problems-of.ts';

const raw = (more: string): unknown => readYaml(homeWith(more), 'h.yaml').value;
const STOVE = 'devices: { stove: { kind: stove, room: living } }';

test('a stove with room air has an open flue, one with outdoor air has not', () => {
  expect(hasOpenFluedStove(raw(STOVE))).toBe(true);
  expect(hasOpenFluedStove(raw(STOVE.replace('living }', 'living, air: outdoors }')))).toBe(false);
  expect(hasDevice(raw(STOVE), 'stove')).toBe(true);
  expect(hasDevice(raw(STOVE), 'purifier')).toBe(false);
  expect(hasDevice(undefined, 'stove')).toBe(false);
});

test('a room is found by its use', () => {
  const home = { home: { rooms: { a: { use: 'kitchen' }, b: {}, c: { use: 'kitchen' } } } };
  expect(roomUsedAs(home, 'kitchen')).toBe('a');
  expect(roomUsedAs(home, 'bathroom')).toBeNull();
  // By its name where its use is not given, as the home itself is built; a use that is given comes first.
  const unsaid = { home: { rooms: { bath: { use: 'storage' }, 'my bathroom': {}, den: {} } } };
  expect(roomUsedAs(unsaid, 'bathroom')).toBe('my bathroom');
});

test('a given number comes in the unit of its place, and only where it is given', () => {
  const home = raw('heating: { setpoint: 68 °F }');
  expect(givenNumber(home, '/heating/setpoint')).toBeCloseTo(20, 9); // 68 °F is 20 °C by definition
  expect(givenNumber(home, '/heating/efficiency')).toBeUndefined();
  expect(givenNumber(home, 'heating')).toBeUndefined();
  expect(givenNumber({ home: 5 }, '/home')).toBeUndefined();
});

test('a device is added under a name that is still free', () => {
  const taken = { devices: { fan: {}, 'fan too': {} } };
  expect(Object.keys(addExtractFan(taken, 'fan', 'den')['devices'] as object)).toEqual([
    'fan too too',
  ]);
});

test('two edits make one, and a wrong one is told from a legal one', () => {
  const home = raw('');
  const both = bothEdits(
    addExtractFan(home, 'fan', 'bedroom'),
    addDehumidifier(home, 'dryer', 'living', 12),
  );
  expect(Object.keys(both['devices'] as object)).toEqual(['fan', 'dryer']);
  expect(isLegalEdit(home, both)).toBe(true);
  expect(isLegalEdit(home, { devices: { fan: { kind: 'no such thing', room: 'living' } } })).toBe(
    false,
  );
});
