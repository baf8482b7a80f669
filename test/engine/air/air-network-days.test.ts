import { expect, test } from 'vitest';
import { LINK, PATH, PRESSURE_COUNT } from '../../../src/engine/layout/state-layout.ts';
import { randomNumbers } from '../random-home.ts';
import { flowOf, leftIn } from './a-network.ts';
import { solveStep, type TwoStoreys, twoStoreys } from './two-storeys.ts';

/** Wind of an hour and where it comes from. [m/s] and [deg] */
type Wind = readonly [number, number];

/**
 * Ten-minute steps of a week: bedroom windows open for half an hour each morning, the bathroom's fan on
 * half an hour in six.
 */
function everyStep(houses: readonly TwoStoreys[], windOf: (hour: number) => Wind, each = () => {}) {
  for (let k = 0; k < STEPS; k++) {
    const hour = k / 6;
    const [wind, windFrom] = windOf(hour);
    const weather = { outdoor: 5 + 4 * Math.sin(hour / 3.8), wind, windFrom };
    const indoors = Float64Array.from(WARMTH, (t, room) => t + Math.sin(hour / 4 + room));
    const open = k % 144 > 42 && k % 144 < 46 ? [3, 4] : [];
    for (const house of houses) solveStep(house, weather, indoors, open, k % 36 < 3 ? 0.02 : 0);
    each();
  }
}

/** Between 0 and 8 m/s and over half the compass, drawn anew each hour. */
function gusty(): (hour: number) => Wind {
  const random = randomNumbers(3);
  const hours = Array.from({ length: 170 }, (): Wind => [8 * random(), 105 + 150 * random()]);
  return (hour) => {
    const [before, after] = [hours[Math.floor(hour)]!, hours[Math.floor(hour) + 1]!];
    const part = hour - Math.floor(hour);
    return [before[0] + part * (after[0] - before[0]), before[1] + part * (after[1] - before[1])];
  };
}

test('gusts: every room balances, and no flow is off by more than a hundredth', () => {
  const [house, exact] = [twoStoreys(), twoStoreys(1e-11)];
  const { net } = house;
  let squares = 0;
  everyStep([house, exact], gusty(), () => {
    let [off, into] = [0, 0];
    for (let p = 0; p < net.pathCount; p++) {
      off = Math.max(off, Math.abs(flowOf(net, p) - flowOf(exact.net, p)));
      if (net.links[p * LINK.stride + LINK.from]! < 0) into += Math.max(0, flowOf(exact.net, p));
    }
    // The tolerance that the network promises: a hundredth of all air that comes in.
    expect(off).toBeLessThanOrEqual(0.01 * into);
    squares += (off / into) ** 2;
    for (let room = 0; room < net.roomCount; room++) {
      expect(Math.abs(leftIn(net, room))).toBeLessThanOrEqual(1e-12 * through(house, room));
    }
  });
  // And less than a thousandth as a rule.
  expect(Math.sqrt(squares / STEPS)).toBeLessThan(1e-3);
  const { counts } = net;
  expect(counts[PRESSURE_COUNT.steps]).toBe(STEPS);
  expect(counts[PRESSURE_COUNT.unsettled]).toBe(0);
  expect(counts[PRESSURE_COUNT.solved]! / STEPS).toBeLessThan(2);
});

test('a day that drifts: most steps need one system', () => {
  const house = twoStoreys();
  everyStep([house], (hour) => [3 + Math.sin(hour / 4), 200 + 30 * Math.sin(hour / 5)]);
  expect(house.net.counts[PRESSURE_COUNT.again]).toBeLessThan(0.5 * STEPS);
});

/** Air that comes into a room from anywhere. [kg/s] */
function through({ net }: TwoStoreys, room: number): number {
  let into = 1e-6;
  for (let p = 0; p < net.pathCount; p++) {
    const flow = net.paths[p * PATH.stride + PATH.flow]!;
    if (net.links[p * LINK.stride + LINK.to] === room) into += Math.max(0, flow);
    if (net.links[p * LINK.stride + LINK.from] === room) into += Math.max(0, -flow);
  }
  return into;
}

const STEPS = 7 * 144;
const WARMTH = [20, 19, 18, 17, 17.5, 18];
