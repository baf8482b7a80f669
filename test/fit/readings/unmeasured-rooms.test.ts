import { expect, test } from 'vitest';
import type { Readings } from '../../../src/fit/readings/readings.ts';
import { unmeasuredRooms } from '../../../src/fit/readings/unmeasured-rooms.ts';
import type { Home } from '../../../src/home/home.ts';

const room = (name: string, warm: boolean) => ({ name, temperature: warm ? {} : null });
const home = { emitters: [{ room: 0 }, { room: 1 }, { room: 2 }] } as unknown as Home;
const rooms = [room('den', true), room('bath', false), room('hall', false), room('loft', false)];
const said = (heating: object | null) =>
  unmeasuredRooms(home, { heating, rooms } as unknown as Readings);

test('heated rooms of which no temperature was logged are named where a meter counts their heat', () => {
  expect(said({})).toEqual([
    'The meter counts the heat of bath and hall too, where no temperature was logged: they are heated as the scenario says, and more or less heat than that is taken for that of other rooms. A sensor there would tell.',
  ]);
  expect(said(null)).toEqual([]);
  expect(
    unmeasuredRooms(home, {
      heating: {},
      rooms: rooms.map(({ name }) => room(name, true)),
    } as unknown as Readings),
  ).toEqual([]);
});
