import { describe, expect, test } from 'vitest';
import { asInBritain } from '../../../src/scenario/notices/as-in-britain.ts';

type Data = Parameters<typeof asInBritain>[0];

const ASSUMED = [
  { path: '/home/build/wall u-value', value: 1.6 },
  { path: '/home/build/window u-value', value: 2.9 },
];
/** What is told of rooms as given, in a home whose first room has a window. */
function told(rooms: object, timezone?: string): string | undefined {
  const data = { site: timezone === undefined ? {} : { timezone }, home: { rooms } } as Data;
  const panes = [{ room: 0 }] as unknown as Parameters<typeof asInBritain>[2];
  return asInBritain(data, ASSUMED, panes)[0]?.text.split(' taken')[0];
}

describe('what nobody gave is told where it is used', () => {
  const [wall, both] = [
    'Walls (1.60 W/m2K) are',
    'Walls (1.60 W/m2K) and windows (2.90 W/m2K) are',
  ];
  test.each([
    ['drawn walls and windows', { den: {} }, both],
    ['windows of their own', { den: { panes: [{ 'u-value': 1.1 }] } }, wall],
    ['windows without a U-value', { den: { panes: [{ area: 2 }] } }, both],
    ['walls of their own', { den: { elements: [] } }, 'Windows (2.90 W/m2K) are'],
    ['no window', { den: { panes: [] }, hall: {} }, wall],
    ['nothing drawn', { den: { elements: [], panes: [] } }, undefined],
  ])('%s', (_, rooms, words) => expect(told(rooms, 'Europe/Madrid')).toBe(words));
});

test('nothing is told at home, or where nobody knows where', () => {
  expect(told({ den: {} }, 'Europe/London')).toBeUndefined();
  expect(told({ den: {} }, 'Europe/Dublin')).toBeUndefined();
  expect(told({ den: {} })).toBeUndefined();
});
