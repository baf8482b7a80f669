import { beforeAll, expect, test } from 'vitest';
import { createDayInputs } from '../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../src/control/fill-day-inputs.ts';
import { createCommands } from '../../src/control/observations.ts';
import { layOutShell } from '../../src/engine/air/lay-out-shell.ts';
import { layOutModel } from '../../src/engine/layout/model.ts';
import { OUTSIDE, ROOM } from '../../src/engine/layout/state-layout.ts';
import { createLedgerAccumulator } from '../../src/engine/ledger/ledger-accumulator.ts';
import { createRoomColumns } from '../../src/engine/record/room-columns.ts';
import { createStepper } from '../../src/engine/stepper.ts';
import { busyHome } from '../bench/busy-home.ts';
import { compileWhole, heapUsed, leaveNumber, median } from '../reference/heap-growth.ts';
import { NEW_YEAR } from './homes.ts';
import { randomHousehold } from './random-home.ts';

/** Growth of the heap in each of the later spans of steps of a busy home, apart from its control. [bytes] */
function growthOfSpans(spans: number, extra: () => void = () => {}): number[] {
  const { home } = busyHome(ROOMS);
  const household = randomHousehold(home, 1);
  const species = home.species.length;
  const start = layOutModel(home, 101_325, DT);
  const stepper = createStepper({
    model: start,
    shell: layOutShell(home, start.density, DT),
    day: createDayInputs(household, ROOMS, species, STEPS),
    commands: createCommands(home),
    ledger: createLedgerAccumulator(ROOMS, home.doorways.length, species, [0]),
    scrap: createLedgerAccumulator(ROOMS, home.doorways.length, species, [0]),
    columns: createRoomColumns(ROOMS, species, STEPS),
  });
  const { model, day, commands } = stepper.records;
  fillDayInputs(day, household, NEW_YEAR, DT, STEPS);
  for (let r = 0; r < model.rooms.length; r += ROOM.stride) {
    model.rooms[r + ROOM.temperature] = 18;
    model.rooms[r + ROOM.meanTemperature] = 18;
    model.rooms[r + ROOM.humidity] = 0.008;
    model.rooms[r + ROOM.meanHumidity] = 0.008;
  }
  commands.setpoints.fill(20);
  model.outside[OUTSIDE.humidity] = 0.005;
  const growth: number[] = [];
  let heated = 0;
  for (let span = 0; span < spans; span++) {
    model.outside[OUTSIDE.temperature] = 5 + 6 * Math.sin(span);
    model.boundary.fill(5 + 6 * Math.sin(span));
    const before = heapUsed();
    const between = heapUsed();
    for (let s = 0; s < SPAN; s++) {
      const at = (s % STEPS) * ROOMS;
      stepper.solve(at);
      stepper.finish(true, at, 0);
      extra();
    }
    growth.push(heapUsed() - between - (between - before));
    heated += model.rooms[ROOM.emitted]!;
  }
  expect(heated).toBeGreaterThan(0);
  return growth.slice(spans >> 1);
}

beforeAll(compileWhole);

test.skipIf('__stryker__' in globalThis)(
  'a million compiled steps leave nothing on the heap',
  () => {
    // A number on the heap takes 16 bytes. A power that the machine is asked for comes back as one, some
    // times a day; all else must stay below that.
    expect(median(growthOfSpans(1000)) / SPAN).toBeLessThan(8);
  },
);

test('what leaves one number a step on the heap is noticed', () => {
  expect(median(growthOfSpans(100, leaveNumber())) / SPAN).toBeGreaterThan(12);
});

const ROOMS = 6;
const DT = 600;
const STEPS = 144;
const SPAN = 1000;
