import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { prepareRuns } from '../../src/engine/prepare-runs.ts';
import { simulate } from '../../src/engine/simulate.ts';
import { bareHome, bareRoom, madeWeather, NEW_YEAR } from './homes.ts';
import { randomHome, randomHousehold, swingingWeather } from './random-home.ts';
import { recordRun, runInput } from './record-run.ts';

const weather = swingingWeather();
const home = randomHome(4, 12);
const input = runInput(
  { home, weather },
  { household: randomHousehold(home, 12), hours: 53, spinUpDays: 3 },
);

test('runs that share their preparation give the same bytes as runs alone, in any order', () => {
  const steps = (input.hours * 3600) / input.dt;
  const people = new Float64Array(steps).fill(1);
  const airTemperature = new Float64Array(steps).fill(17);
  const inputs = [
    input,
    { ...input, imposed: { 'room 1': { people, airTemperature } } },
    { ...input, household: randomHousehold(home, 13), start: NEW_YEAR + 86_400 },
    { ...input, start: NEW_YEAR + 7 * 3600, spinUpDays: 0 },
  ];
  const alone = inputs.map((one) => recordRun(one));
  const preparation = prepareRuns(home, weather, input.dt);
  const shared = inputs.map((one) => recordRun({ ...one, preparation }));
  for (const [k, run] of shared.entries()) expect(areSame(run, alone[k]!)).toBe(true);
  // The first again, after what the others have done.
  expect(areSame(recordRun({ ...input, preparation }), alone[0]!)).toBe(true);
});

test('weather that repeats its first days before its start is prepared too', () => {
  const short = swingingWeather();
  const cut = { ...short, periodic: false };
  const preparation = prepareRuns(home, cut, input.dt);
  const one = { ...input, weather: cut, start: cut.start };
  expect(areSame(recordRun({ ...one, preparation }), recordRun(one))).toBe(true);
});

test('a run keeps nothing of a preparation: its arrays stay as they were', () => {
  const preparation = prepareRuns(home, weather, input.dt);
  const before = structuredClone(stateOf(preparation));
  simulate({ ...input, preparation }, []);
  expect(stateOf(preparation)).toEqual(before);
});

test('the preparation of another home, weather or step is refused', () => {
  const other = bareHome([bareRoom('room', 30)]);
  const preparation = prepareRuns(other, madeWeather(), 300);
  expect(() => simulate({ ...input, preparation }, [])).toThrow(
    new RangeError(
      'simulate: the preparation was made for another home and other weather and a control step of 300 s instead of 600 s',
    ),
  );
});

/** Whether all that was recorded of two runs is the same; expect takes a second for so many numbers. */
const areSame = (one: Recording, other: Recording): boolean => isDeepStrictEqual(one, other);
type Recording = ReturnType<typeof recordRun>;

/** Everything in a preparation that a run could write to, but for the days it keeps. */
function stateOf({ model, sun, sunlight, season }: ReturnType<typeof prepareRuns>) {
  const { conversion: _, home: __, ...layout } = model;
  const { eer: ___, ...coolers } = layout.coolers;
  return { layout: { ...layout, coolers }, sun, sunlight, season };
}
