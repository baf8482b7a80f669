import { expect, test } from 'vitest';
import { burnOver, coldFire } from '../../../src/engine/equipment/fire.ts';
import type { Stove } from '../../../src/home/devices.ts';

const STOVE: Stove = {
  kind: 'stove',
  batch: 1.3,
  interval: 45 * 60,
  energy: 15e6,
  efficiency: 0.65,
  radiantShare: 0.5,
  lag: 0,
  perRefuelling: [],
  roomAir: 0.01,
};
const MINUTE = 60;
const HOUR = 3600;

/** Eight hours in steps of so many minutes: ordered to burn from one minute to another. */
function evening(minutes: number, from: number, to: number) {
  const dt = minutes * MINUTE;
  const fire = coldFire();
  const done = { fuel: 0, heat: 0, burning: 0, refuellings: 0, byHour: new Float64Array(8) };
  for (let at = 0; at < 8 * HOUR; at += dt) {
    const share = Math.max(0, Math.min(at + dt, to * MINUTE) - Math.max(at, from * MINUTE)) / dt;
    burnOver(fire, STOVE, share, dt);
    done.fuel += fire.fuel * dt;
    done.heat += fire.heat * dt;
    done.burning += fire.burning * dt;
    done.refuellings += fire.refuellings;
    done.byHour[Math.floor(at / HOUR)]! += fire.heat * dt;
  }
  return done;
}

const STEPS = [1, 2, 5, 6, 10, 12, 15, 20, 30, 60];

test.each(STEPS)('four hours take six batches of 45 minutes in steps of %i min', (minutes) => {
  const done = evening(minutes, 60, 300);
  const wood = 6 * STOVE.batch * STOVE.energy;
  expect(done.refuellings).toBe(6);
  expect(done.fuel / wood).toBeCloseTo(1, 9);
  expect(done.heat / (wood * STOVE.efficiency)).toBeCloseTo(1, 9);
  expect(done.burning / (6 * STOVE.interval)).toBeCloseTo(1, 9);
  const exact = evening(1, 60, 300).byHour;
  done.byHour.forEach((heat, hour) => {
    expect(heat / 1e6).toBeCloseTo(exact[hour]! / 1e6, 6);
  });
});

test.each(STEPS)('a fire lit inside a step burns from then on, in steps of %i min', (minutes) => {
  const exact = evening(1, 65, 300);
  const done = evening(minutes, 65, 300);
  expect(done.refuellings).toBe(6); // the last at 65 + 5 x 45 = 290 min
  expect(done.fuel / exact.fuel).toBeCloseTo(1, 9);
  done.byHour.forEach((heat, hour) => {
    expect(heat / 1e6).toBeCloseTo(exact.byHour[hour]! / 1e6, 6);
  });
});

test.each(STEPS)('no wood is laid on when its time is over, in steps of %i min', (minutes) => {
  // The sixth batch would be due at 60 + 5 x 45 = 285 min.
  expect(evening(minutes, 60, 285).refuellings).toBe(5);
  expect(evening(minutes, 60, 286).refuellings).toBe(6);
});

test('a fire that is not ordered stays out', () => {
  const done = evening(10, 0, 0);
  expect([done.fuel, done.heat, done.burning, done.refuellings]).toEqual([0, 0, 0, 0]);
});
