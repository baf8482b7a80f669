import { expect, test } from 'vitest';
import { takenAsSaid } from '../../../src/fit/readings/taken-as-said.ts';
import type { Home } from '../../../src/home/home.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import { bareHome, bareRoom, madeWeather } from '../../engine/homes.ts';

const DIVISION = { start: 0, hours: 48, release: 0, withheld: 40 };
const plug: LoggedSeries = {
  ...{ quantity: 'device power', place: 'home', room: null, device: 'fan heater' },
  ...{ reading: 'instant', from: 'plug.csv, W' },
  times: Float64Array.of(0, 3600),
  values: Float64Array.of(0, 1000),
};
const log = (...series: readonly LoggedSeries[]): Log => ({ series, start: 0, end: 48 * 3600 });
const device = (name: string, kind: string) => ({
  name,
  room: 0,
  does: { kind } as Home['devices'][number]['does'],
});
const cooling = [{ room: 0 }] as unknown as NonNullable<Home['cooling']>;
const saidOf = (
  setpoint: boolean,
  more: Partial<Home>,
  outdoors: number,
  ...series: LoggedSeries[]
) =>
  takenAsSaid(
    bareHome([bareRoom('den', 30)], more),
    log(...series),
    madeWeather({ temperature: () => outdoors }, { start: 0 }),
    DIVISION,
    setpoint,
  ).join('\n');
const said = (more: Partial<Home>, outdoors: number, ...series: LoggedSeries[]) =>
  saidOf(false, more, outdoors, ...series);

test('stoves and heaters that nobody measured are named, and what cools in warm weather', () => {
  const devices = [device('tiled stove', 'stove'), device('fan heater', 'heater')];
  expect(said({ devices, cooling }, 25)).toMatch(
    /^Taken as the scenario says, .*: cooling, its settings and hours, tiled stove and fan heater\. /,
  );
  expect(said({ devices, cooling }, 5, plug)).toContain('no error there: tiled stove. ');
});

test('of cooling whose setpoint is looked for its hours and power are named', () => {
  expect(saidOf(true, { cooling }, 25)).toMatch(
    /no error there: the hours and power of cooling\. /,
  );
  expect(saidOf(true, { cooling }, 5)).toBe('');
});

test('nothing is said of a home without them', () => {
  expect(said({ devices: [device('fan', 'extract fan')] }, 25)).toBe('');
  expect(said({ cooling }, 5)).toBe('');
});

test('it is warm above 20 °C outdoors', () => {
  expect(said({ cooling }, 20.5)).toContain('cooling, its settings and hours');
  expect(said({ cooling }, 20)).toBe('');
});
