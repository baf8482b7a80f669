import { expect, test } from 'vitest';
import type { RunInput } from '../../../src/engine/run.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { DeviceAction } from '../../../src/home/devices.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { bareHome, bareRoom, madeWeather, NEW_YEAR } from '../homes.ts';
import { runInput } from '../record-run.ts';

const home = bareHome([bareRoom('kitchen', 30), bareRoom('hall', 20)]);
const input = runInput({ home, weather: madeWeather() }, { hours: 1 });
const ten = [10, 10, 10, 10, 10, 10];

function wordsOf(more: Partial<RunInput>): string[] {
  try {
    simulate({ ...input, ...more }, []);
  } catch (error) {
    expect(error).toBeInstanceOf(InputProblems);
    return (error as InputProblems).message.split('\n');
  }
  return [];
}

test('everything wrong with imposed series is told at once, with room, series and place', () => {
  const bad = { airTemperatur: ten } as object;
  expect(
    wordsOf({
      imposed: {
        kichen: { airTemperature: ten },
        kitchen: {
          airTemperature: [10, Number.NaN, 10, Number.NaN, 10],
          relativeHumidity: [50, 50, 50, 50, 50, 101],
          humidityRatio: [0.005, 0.005, 0.005, 0.005, 0.005, 0.005],
          people: ten,
          peopleSpecies: { co3: ten },
          ...bad,
        },
        hall: {
          windows: [0, 0, 0, 0, -1, 2],
          airChange: ten,
          heat: [0, 0, 0, 0, 0, Number.POSITIVE_INFINITY],
        },
      },
    }),
  ).toEqual([
    'imposed: kichen: expected a room of the home, got "kichen" (did you mean "kitchen"?)',
    'imposed: kitchen.airTemperature: expected 6 values, one for each step, got 5',
    'imposed: kitchen.airTemperature[1]: expected a number, a series without gaps, got NaN and 1 more like it',
    'imposed: kitchen.relativeHumidity[5]: expected 0 to 100 %, got 101',
    'imposed: kitchen.airTemperatur: expected a series that can be given, got "airTemperatur" (did you mean "airTemperature"?)',
    'imposed: kitchen.peopleSpecies.co3: expected a species of the home, got "co3" (known: )',
    'imposed: kitchen: expected only one of humidityRatio, relativeHumidity, got humidityRatio and relativeHumidity',
    'imposed: kitchen.people: expected a household whose people say what one gives, got a household without people (give peopleHeat, peopleVapour and peopleSpecies instead)',
    'imposed: hall.windows[4]: expected 0 to 1, got -1 and 1 more like it',
    'imposed: hall.heat[5]: expected a number, a series without gaps, got Infinity',
    'imposed: hall: expected only one of windows, airChange, outdoorAir, got windows and airChange',
  ]);
});

test('presence is a share, in place of people and not beside them; it may have gaps, but no end', () => {
  const presence = [Number.NaN, 0, 1, 1.5, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  expect(wordsOf({ imposed: { hall: { presence, people: [0, 0, 0, 0, 0, 0] } } })).toEqual(
    expect.arrayContaining([
      'imposed: hall.presence[4]: expected a number, got Infinity and 1 more like it',
      'imposed: hall.presence[3]: expected 0 to 1, got 1.5',
      'imposed: hall: expected only one of people, presence, got people and presence',
    ]),
  );
  expect(wordsOf({ imposed: { hall: { presence: [Number.NaN, 0, 0.2, 1, 1, 1] } } })).toEqual([]);
});

test('a held start must end within the run, with a step, and say each thing once', () => {
  const rooms = { hall: { airTemperature: 20 } };
  const late = ['2023-01-01T00:00:00.000Z', '2023-01-01T01:00:00.000Z'];
  const within = `expected an instant after ${late[0]} and not after ${late[1]}, within the run`;
  expect(wordsOf({ heldStart: { until: NEW_YEAR + 7200, rooms } })).toEqual([
    `heldStart: until: ${within}, got 2023-01-01T02:00:00.000Z`,
  ]);
  expect(wordsOf({ heldStart: { until: NEW_YEAR, rooms } })).toEqual([
    `heldStart: until: ${within}, got 2023-01-01T00:00:00.000Z`,
  ]);
  expect(wordsOf({ heldStart: { until: Number.NaN, rooms } })).toEqual([
    `heldStart: until: ${within}, got NaN`,
  ]);
  expect(wordsOf({ heldStart: { until: NEW_YEAR + 700, rooms } })).toEqual([
    'heldStart: until: expected the end of a step of 600 s, got 2023-01-01T00:11:40.000Z',
  ]);
  const heldStart = {
    until: NEW_YEAR + 1800,
    rooms: {
      hall: { airTemperature: [20, 20], humidityRatio: -1 },
      kitchen: { airTemperature: 20, heat: 3 } as object,
      attic: {},
    },
  };
  expect(wordsOf({ heldStart, imposed: { kitchen: { airTemperature: ten } } })).toEqual([
    'heldStart: hall.airTemperature: expected 3 values, one for each step, got 2',
    'heldStart: hall.humidityRatio[0]: expected 0 to 0.2 kg/kg, got -1',
    'heldStart: kitchen.airTemperature: expected one series, got imposed airTemperature besides',
    'heldStart: kitchen.heat: expected a series that can be given, got "heat" (known: airTemperature, humidityRatio, relativeHumidity)',
    'heldStart: attic: expected a room of the home, got "attic" (known: kitchen, hall)',
  ]);
});

test('the power of devices is that of devices of the home, without gaps', () => {
  const does = { kind: 'heater', power: 500, radiantShare: 0.4 } as const;
  const fire = { kind: 'stove' } as Extract<DeviceAction, { kind: 'stove' }>;
  const devices = [
    { name: 'heater', room: 0, does },
    { name: 'stove', room: 0, does: fire },
  ];
  const devicePower = { heter: ten, stove: ten, heater: [0, -1, Number.NaN, 0, 0] };
  expect(wordsOf({ home: { ...home, devices }, devicePower })).toEqual([
    'devicePower: heter: expected a device of the home that draws electricity, got "heter" (did you mean "heater"?)',
    'devicePower: stove: expected a device of the home that draws electricity, got "stove" (known: heater)',
    'devicePower: heater: expected 6 values, one for each step, got 5',
    'devicePower: heater[2]: expected a number, a series without gaps, got NaN',
    'devicePower: heater[1]: expected 0 or more, got -1',
  ]);
});
