import { expect, test } from 'vitest';
import { readingsOf } from '../../../src/fit/readings/readings.ts';
import { loggedRequest } from '../../../src/fit/simulate/logged-request.ts';
import { NOTHING_SAID } from '../../../src/log/read/log-options.ts';
import { readLog } from '../../../src/log/read/read-log.ts';
import { bareHome, bareRoom, madeWeather } from '../../engine/homes.ts';

const home = bareHome([bareRoom('den', 40)]);
const start = Date.UTC(2023, 0, 2) / 1000;
const DT = 1800;

/** Of a log of events in twelve hours beside a temperature: what a run of steps of half an hour follows. */
function imposedBy(events: readonly string[]) {
  const temperature = Array.from({ length: 25 }, (_, k) => {
    const time = new Date((start + k * DT) * 1000).toISOString();
    return `den temperature,${20 + (k % 3) / 10},${time}`;
  });
  const text = `name,state,time\n${[...temperature, ...events].join('\n')}\n`;
  const { log } = readLog([{ file: 'hub.csv', text }], { ...NOTHING_SAID, rooms: ['den'] });
  const beside = { gas: null, electricity: null };
  const weather = madeWeather({}, { start });
  const readings = readingsOf(log, home, { start, hours: 12, withheld: 12 }, DT, weather, beside);
  const follows = { from: 0, release: 6, to: 12, temperature: false };
  return loggedRequest(readings, DT, follows).imposed['den']!;
}

const at = (time: string) => `2023-01-02T${time}:00Z`;

test('a window counts for the share of each step in which it stood open, and stays shut after the last word', () => {
  const { windows } = imposedBy([
    `den window,closed,${at('00:00')}`,
    `den window,open,${at('07:05')}`,
    `den window,closed,${at('07:20')}`,
  ]);
  const expected = Array(24).fill(0);
  expected[14] = 0.5; // 07:00 to 07:30
  expect([...(windows as Float64Array)]).toEqual(expected);
});

test('a window of which nothing is known is left to the household', () => {
  const { windows } = imposedBy([
    `den window,open,${at('02:00')}`,
    `den window,unavailable,${at('03:00')}`,
  ]);
  const known = [...(windows as Float64Array)].map((x) => (Number.isNaN(x) ? '-' : String(x)));
  expect(known.join('')).toBe(`----11${'-'.repeat(18)}`);
});

test('motion tells that somebody is there, numbers tell how many', () => {
  const motion = imposedBy([`den motion,on,${at('00:00')}`, `den motion,off,${at('06:15')}`]);
  expect(motion.people).toBeUndefined();
  expect([...(motion.presence as Float64Array)].slice(11, 14)).toEqual([1, 0.5, 0]);
  const counted = imposedBy([`den people,3,${at('00:00')}`, `den people,0,${at('06:15')}`]);
  expect(counted.presence).toBeUndefined();
  expect([...(counted.people as Float64Array)].slice(11, 14)).toEqual([3, 1.5, 0]);
});

test('a window is no more than open, and readings of air are as far apart as in the room that is read least often', () => {
  const hourly = (quantity: string, room: string | null, every: number, value: number) => ({
    ...{ quantity, room, device: null, from: 'a', reading: 'instant' as const },
    place: room === null ? ('outdoors' as const) : ('room' as const),
    times: Float64Array.from({ length: 13 }, (_, k) => start + k * every),
    values: new Float64Array(13).fill(value),
  });
  const log = {
    ...{ start, end: start + 12 * 3600 },
    series: [
      { ...hourly('window', 'den', 3600, 1.2), reading: 'state' as const },
      hourly('relative humidity', 'den', 600, 50),
      hourly('co2', 'den', 1800, 500),
      hourly('relative humidity', null, 3600, 80),
      hourly('temperature', 'den', 2400, 20),
    ],
  };
  const span = { start, hours: 12, withheld: 12 };
  const beside = { gas: null, electricity: null };
  const readings = readingsOf(log, home, span, DT, madeWeather({}, { start }), beside);
  expect(new Set(readings.rooms[0]!.windows)).toEqual(new Set([1]));
  expect(readings.apart).toBe(1800);
});
