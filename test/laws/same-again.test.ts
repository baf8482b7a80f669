import { expect, test } from 'vitest';
import { simulate } from '../../src/engine/simulate.ts';
import { randomHome, randomHousehold, swingingWeather } from '../engine/random-home.ts';
import { runInput } from '../engine/record-run.ts';

/** Every number of a run, as text that differs where a single bit does. */
function bytesOf(seed: number): string {
  const home = randomHome(5, seed);
  const household = randomHousehold(home, seed);
  const weather = swingingWeather();
  const parts: string[] = [];
  const bits = (values: Float64Array, count: number): void => {
    parts.push(Buffer.from(values.slice(0, count).buffer).toString('base64'));
  };
  const input = runInput({ home, weather }, { household, hours: 24 * 10, spinUpDays: 3 });
  const { ledger } = simulate(input, [
    ({ room, home: whole, steps, rooms }) => {
      const { species, ...columns } = room;
      for (const column of [...Object.values(columns), ...species]) bits(column, steps * rooms);
      const { sourceFuel, sourceBackup, outdoorSpecies, coolers, devices, blinds, ...series } =
        whole;
      const ofDevices = [...coolers, ...devices].flatMap((device) => Object.values(device));
      const all = [
        ...Object.values(series),
        ...sourceFuel,
        ...sourceBackup,
        ...outdoorSpecies,
        ...blinds,
        ...ofDevices,
      ];
      for (const column of all) bits(column, steps);
    },
  ]);
  for (const column of Object.values(ledger.energy)) bits(column, column.length);
  for (const column of Object.values(ledger.water)) bits(column, column.length);
  return parts.join('\n');
}

test('the same run gives the same bytes, whatever ran between', () => {
  const first = bytesOf(1);
  const other = bytesOf(2);
  expect(bytesOf(1) === first).toBe(true);
  expect(other === first).toBe(false);
});

test('what an observer does to its arrays does not reach the run', () => {
  const home = randomHome(3, 8);
  const household = randomHousehold(home, 8);
  const input = runInput({ home, weather: swingingWeather() }, { household, hours: 72 });
  const heat = (spoil: boolean): number[] => {
    const { ledger } = simulate(input, [
      ({ room }) => {
        if (spoil) for (const column of [room.airTemperature, room.humidityRatio]) column.fill(99);
      },
    ]);
    return [...ledger.energy.heating, ...ledger.water.leakage];
  };
  expect(heat(true)).toEqual(heat(false));
});
