import odex from 'odex';
import { expect, test } from 'vitest';
import type { Element, Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { always, bareHome, bareRoom, ideallyHeated, quietHousehold } from '../homes.ts';
import { recordRun, runInput } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';
import { lastDays } from '../short-weather.ts';

/** Without long-wave exchange a film of 0.13 m2K/W joins a wall to the air and to nothing else. */
const FILM = 1 / 0.13;
const POWER = 900;
/** Never reached: the heater runs at its limit. [°C] */
const SETTING = 200;
const FLOW = 0.01;
const HOURS = 96;
const STEP = 600;

const wall = (area: number, behind: readonly number[], capacity: readonly number[]) => ({
  ...{ name: `${area} m2`, room: 0, kind: 'wall' as const, area },
  chain: { resistance: [1 / FILM, ...behind], capacity },
});
const outer = wall(24, [0.3, 1.2, 0.04], [9e4, 6e4, 4e4]);
const inner = wall(40, [1], [5e4]);
const PANE = { area: 3, uValue: 2.4 };

/** A room of air with an outer wall, an inner one and a window, heated without a break. */
function home(): Home {
  const down = { azimuth: 0, tilt: 180 }; // sees neither sun nor sky
  const elements: Element[] = [
    { ...outer, far: { to: 'outdoors', ...down, absorptance: 0 } },
    { ...inner, far: { to: 'nothing' } },
  ];
  const pane = { name: 'window', room: 0, gValue: 0, frameShare: 0.2, unshaded: 1 };
  const heated = ideallyHeated(
    bareHome([bareRoom('room', 50, { furnishingFactor: 4 })], {
      ...{ elements, panes: [{ ...pane, ...PANE, ...down }], longWave: 0 },
      leakage: { how: { by: 'rate', flow: FLOW }, share: [1], ach50: null },
    }),
    POWER,
  );
  // Radiation from an emitter has nowhere to go but the air.
  return { ...heated, emitters: heated.emitters.map((e) => ({ ...e, radiantShare: 0.3 })) };
}

/** Air, three nodes of the outer wall and one of the inner one, then the air over time. */
function oneTemperature(outdoors: (t: number) => number, y: readonly number[]) {
  const solver = new odex.Solver(6);
  solver.absoluteTolerance = 1e-8;
  solver.relativeTolerance = 1e-9;
  const flow = (r: number, from: number, to: number): number => (from - to) / r;
  const rates = (t: number, [air, a, b, c, m]: number[]): number[] => {
    const out = outdoors(t);
    const [r0, r1, r2, r3] = outer.chain.resistance as [number, number, number, number];
    const [ca, cb, cc] = outer.chain.capacity as [number, number, number];
    const lost =
      outer.area * flow(r0, air!, a!) +
      inner.area * flow(1 / FILM, air!, m!) +
      (PANE.area * PANE.uValue + FLOW * AIR_HEAT) * (air! - out);
    return [
      (POWER - lost) / (4 * 50 * AIR_HEAT),
      (flow(r0, air!, a!) - flow(r1, a!, b!)) / ca,
      (flow(r1, a!, b!) - flow(r2, b!, c!)) / cb,
      (flow(r2, b!, c!) - flow(r3, c!, out)) / cc,
      flow(1 / FILM, air!, m!) / inner.chain.capacity[0]!,
      air!,
    ];
  };
  const means = new Float64Array((HOURS * 3600) / STEP);
  let state = [...y];
  means.forEach((_, s) => {
    solver.initialStepSize = 10;
    const from = s * STEP;
    const { y: end } = solver.solve(
      (t, now) => rates(from + t, now),
      0,
      [...state.slice(0, 5), 0],
      STEP,
    );
    means[s] = end[5]! / STEP;
    state = end;
  });
  return means;
}

test('a home without long-wave exchange is a home of one temperature a room', () => {
  // Straight between whole hours, as weather is.
  const hourly = (k: number): number => 4 + 5 * Math.sin(k / 5) + 2 * Math.sin(k / 17);
  const outdoors = (t: number): number => {
    const k = Math.floor(t / 3600);
    return hourly(k) + (t / 3600 - k) * (hourly(k + 1) - hourly(k));
  };
  const weather = lastDays({ temperature: (t) => hourly(t / 3600) }, HOURS / 24 + 1);
  const household = quietHousehold(home(), { setpoints: [always(SETTING)] });
  const input = { household, hours: HOURS, dt: STEP };
  const { room, run } = recordRun(runInput({ home: home(), weather }, input));
  const mean = weather.temperature.reduce((sum, t) => sum + t, 0) / weather.count;
  const begin = firstGuess(SETTING, mean);
  const exact = oneTemperature(outdoors, begin);
  const from = 86_400 / STEP;
  let sum = 0;
  for (let s = from; s < exact.length; s++) sum += (room.airTemperature[0]![s]! - exact[s]!) ** 2;
  compare({
    topic: 'Against a general-purpose integrator',
    what: 'air of a room without long-wave exchange, RMS, 10 min',
    unit: 'K',
    source: 'one temperature a room, each film to the air alone, by the package odex 2.0.4',
    mark: 'library',
    expected: 0,
    got: Math.sqrt(sum / (exact.length - from)),
    tolerance: { absolute: 0.02 },
    because: 'what a run promises',
  });
  // Two temperatures would differ by much more: the heater's share alone is 270 W on 64 m2.
  const usual = recordRun(runInput({ home: { ...home(), longWave: 5.13 }, weather }, input));
  expect(Math.abs(usual.room.airTemperature[0]!.at(-1)! - exact.at(-1)!)).toBeGreaterThan(0.2);
  expect(run.ledger.energy.heating.reduce((a, b) => a + b, 0)).toBeCloseTo(POWER * HOURS * 3600, 0);
});

/** As a run without spin-up begins: air at its setting, walls straight from there to the far side. */
function firstGuess(setting: number, mean: number): number[] {
  const along = (k: number, n: number): number => setting + ((mean - setting) * (k + 0.5)) / n;
  return [setting, along(0, 3), along(1, 3), along(2, 3), setting, 0];
}
