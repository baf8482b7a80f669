import { expect, test } from 'vitest';
import { notUsed } from '../../../src/fit/readings/not-used.ts';
import { readingsOf } from '../../../src/fit/readings/readings.ts';
import type { HeatSource, Home } from '../../../src/home/home.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import { bareHome, bareRoom, madeWeather } from '../../engine/homes.ts';

const HOURS = 48;
const series = (quantity: string, more: Partial<LoggedSeries> = {}): LoggedSeries => ({
  ...{ quantity, place: more.room === undefined ? 'home' : 'room', room: null, device: null },
  ...{ reading: 'instant', from: `m.csv, ${quantity}` },
  times: Float64Array.from({ length: HOURS + 1 }, (_, h) => h * 3600),
  values: Float64Array.from({ length: HOURS + 1 }, (_, h) => 100 + h),
  ...more,
});
const boiler: HeatSource = {
  ...{ name: 'boiler', fuel: 'gas', waterTemperature: 60, power: 2e4 },
  conversion: { by: 'efficiency', efficiency: 0.9 },
};
const pump: HeatSource = { ...boiler, name: 'pump', fuel: 'electricity' };
const emitter = {
  name: 'radiator',
  room: 0,
  source: 0,
  ratedPower: 1000,
} as Home['emitters'][number];
const home = (more: Partial<Home>): Home =>
  bareHome([bareRoom('den', 30), bareRoom('hall', 20)], more);

function unused(of: Home, ...all: LoggedSeries[]): string[] {
  const log: Log = { series: all, start: 0, end: HOURS * 3600 };
  const span = { start: 0, hours: HOURS, withheld: HOURS };
  const weather = madeWeather({}, { start: 0 });
  const { used } = readingsOf(log, of, span, 600, weather, { gas: null, electricity: null });
  return notUsed(log, of, used);
}

test('what a fit makes nothing of is named with the reason, one sentence for what shares it', () => {
  const all = [
    series('temperature', { room: 'den' }),
    series('pm25', { room: 'den' }),
    series('dew point', { room: 'hall' }),
    series('temperature', { place: 'outdoors', from: 'porch.csv, T' }),
    series('electricity'),
    series('device power', { device: 'fridge' }),
    series('window'),
  ];
  expect(unused(home({ sources: [boiler], emitters: [emitter] }), ...all)).toEqual([
    'Not used: particles of den (m.csv, pm25) and dew point of hall (m.csv, dew point). A fit goes by temperature, relative humidity and CO2, and follows windows, people, heat and the power of devices.',
    'Not used: temperature outdoors (porch.csv, T). Outdoor air is that of the weather file.',
    'Not used: electricity of the home (m.csv, electricity). It counts everything in the home: what heats takes a meter or plug of its own (`heating electricity`, or `device power` with its `device`).',
    'Not used: fridge (m.csv, device power). No device of the scenario is called that; its heat is among what the household gives off.',
    'Not used: window of the home (m.csv, window). It does not say its room.',
  ]);
});

test('power of a stove is of none of its electricity', () => {
  const does = { kind: 'stove' } as Home['devices'][number]['does'];
  const devices = [{ name: 'fire', room: 0, does }];
  expect(unused(home({ devices }), series('device power', { device: 'fire' }))).toEqual([
    'Not used: fire (m.csv, device power). A stove burns wood and no electricity.',
  ]);
});

test('gas and electricity of heating count where they alone heat the home', () => {
  const electricity = series('heating electricity');
  const ofRoom = series('heating electricity', { room: 'den', from: 'den.csv, W' });
  const gas = series('gas');
  const byGas = home({ sources: [boiler], emitters: [emitter] });
  const byPump = home({ sources: [pump], emitters: [emitter] });
  expect(unused(byGas, gas)).toEqual([]);
  expect(unused(byPump, electricity)).toEqual([]);
  expect(unused(byPump, ofRoom)).toEqual([]);
  const why = (of: Home, ...all: LoggedSeries[]) =>
    unused(of, ...all).map((said) => said.replace(/^.*?\)\. /, ''));
  expect(why(byGas, electricity)).toEqual(['No electricity heats the home.']);
  expect(why(byPump, gas)).toEqual(['No gas heats the home.']);
  expect(why(home({ sources: [boiler, pump] }), gas, electricity)).toEqual([
    'Several sources heat the home, and it is not known which gave how much.',
  ]);
  expect(why(byPump, electricity, ofRoom)).toEqual(['Heat that was logged in itself comes first.']);
  expect(why(byGas, ofRoom)).toEqual([
    'Other heating warms that room: give the scenario a device of kind heater there, and name its power `device power`.',
  ]);
  const ofDen = { room: 'den', from: 'den.csv, heat' };
  const byBoth = { emitters: [emitter, { ...emitter, source: 1 }] };
  for (const sources of [
    [pump, boiler],
    [boiler, pump],
  ]) {
    expect(why(home({ sources, ...byBoth }), ofRoom)[0]).toMatch(/^Other heating warms that room/);
  }
  const late = { times: Float64Array.of(1e7, 2e7), values: Float64Array.of(1, 2) };
  for (const quantity of ['gas', 'heating power']) {
    expect(why(byGas, series(quantity, late))).toEqual([
      'No two readings in a row of it, at most five weeks apart, are both in the fitted hours.',
    ]);
  }
  expect(why(byGas, series('heating power', late), series('heating power', ofDen))).toEqual([
    'Rooms have heat of their own logged.',
  ]);
});

test('heat of a room is what its heaters drew over each step, by what heats it', () => {
  const weather = madeWeather({ temperature: () => 0 }, { start: 0 });
  const drawn = series('heating electricity', { room: 'den', reading: 'mean' });
  const log: Log = { series: [drawn], start: 0, end: HOURS * 3600 };
  const span = { start: 0, hours: HOURS, withheld: HOURS };
  const beside = { gas: null, electricity: null };
  const by = (source: Home['sources'][number] | null) =>
    readingsOf(
      log,
      home(source === null ? {} : { sources: [source], emitters: [emitter] }),
      ...([span, 1800, weather, beside] as const),
    ).rooms[0]!.heat!;
  const cop = { by: 'cop', outdoor: [-10, 10], cop: [2, 4] } as const;
  // the mean of the first hour is 101 W, in both of its steps
  expect([...by(null).driving.subarray(0, 3)]).toEqual([101, 101, 102]);
  expect([...by({ ...pump, conversion: cop }).driving.subarray(0, 3)]).toEqual([303, 303, 306]);
  expect(by({ ...pump, conversion: cop }).hourly[1]).toBe(306);
  // Colder and warmer than the table it is as at its ends.
  const beyond = (outdoor: readonly number[]) => ({ ...cop, outdoor });
  expect(by({ ...pump, conversion: beyond([5, 10]) }).hourly[1]).toBe(2 * 102);
  expect(by({ ...pump, conversion: beyond([-10, -5]) }).hourly[1]).toBe(4 * 102);
});

test('a meter and a contact that tell nothing of the hours are said to, though they have readings there', () => {
  const gas = series('gas', {
    ...{ reading: 'mean', times: Float64Array.of(-86_400, 86_400) },
    values: Float64Array.of(Number.NaN, 900),
  });
  const shut = series('window', {
    ...{ room: 'den', reading: 'state', holdsUntil: 20 * 86_400 },
    ...{ times: Float64Array.of(0), values: Float64Array.of(0) },
  });
  expect(unused(home({ sources: [boiler], emitters: [emitter] }), gas, shut)).toEqual([
    'Not used: gas of the home (m.csv, gas). No two readings in a row of it, at most five weeks apart, are both in the fitted hours.',
    'Not used: window of den (m.csv, window). It tells nothing of the hours that log and weather share: what was last told counts for two weeks at most.',
  ]);
});
