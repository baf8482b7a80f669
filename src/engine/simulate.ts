import type { Controller } from '../control/controller.ts';
import { createController } from '../control/create-controller.ts';
import { createDayInputs, type DayInputs } from '../control/day-inputs.ts';
import { fillDayInputs } from '../control/fill-day-inputs.ts';
import {
  type Commands,
  createCommands,
  createObservation,
  followSchedules,
  type Observation,
} from '../control/observations.ts';
import type { Notice } from '../home/notices.ts';
import { toLocal } from '../units/local-clock.ts';
import { monthStarts } from '../units/month-starts.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../units/time-units.ts';
import type { Weather } from '../weather/weather.ts';
import { layOutShell, type Shell } from './air/lay-out-shell.ts';
import { copyNumbers, copyState } from './copy-state.ts';
import { observeSun, setBlinds } from './equipment/blinds.ts';
import {
  imposeDevices,
  type Running,
  restDevices,
  runDevices,
  startDevices,
} from './equipment/devices.ts';
import { blowOut, finishCoolers } from './heat/cooling.ts';
import { requireImposable } from './imposed/check-imposed.ts';
import type { Series } from './imposed/imposed.ts';
import { imposePeople, imposeStep } from './imposed/imposing.ts';
import { type Imposing, layOutImposing } from './imposed/lay-out-imposing.ts';
import { keepRun } from './keep-run.ts';
import type { Model } from './layout/model.ts';
import { ROOM } from './layout/state-layout.ts';
import {
  createLedgerAccumulator,
  finishLedger,
  type LedgerAccumulator,
} from './ledger/ledger-accumulator.ts';
import { applyCommands, observeRooms } from './observe-rooms.ts';
import { createOutdoors, layOutOutdoors, type Outdoors } from './outdoors/outdoors.ts';
import type { Season } from './outdoors/season.ts';
import { setGround, setOutdoors } from './outdoors/set-outdoors.ts';
import type { SunSeries } from './outdoors/sun-series.ts';
import type { Sunlight } from './outdoors/sunlight.ts';
import type { Preparation } from './preparation.ts';
import { keptDay, keptOutdoors, preparationOf } from './prepare-runs.ts';
import { bookImposed } from './record/book-imposed.ts';
import { createRoomColumns } from './record/room-columns.ts';
import { storedAmounts } from './record/storage.ts';
import type { Observer } from './record/trace.ts';
import { createTraceBuffer, recordHome, type TraceBuffer } from './record/trace-buffer.ts';
import type { Run, RunInput } from './run.ts';
import { settleStart } from './start.ts';
import { createStepper, type Stepper } from './stepper.ts';

/**
 * Simulate one home over one period.
 *
 * The period is walked a day at a time: what people do and what the weather is are laid out for the
 * day, its control steps are taken one by one (air, heat, water, species, in that order), and the
 * day is shown to the observers. A spin-up precedes the period, so that the initial wall temperatures
 * no longer matter; neither observers nor ledger include it.
 *
 * @throws RangeError for a step that does not divide an hour, or a period the weather does not cover
 *   or a preparation that was made for other runs
 * @throws InputProblems for imposed series and held starts that do not fit the run
 */
export function simulate(input: RunInput, observers: readonly Observer[]): Run {
  requireSteps(input);
  requireImposable(input);
  const { weather, dt, start, hours, spinUpDays } = input;
  const end = start + hours * SECONDS_PER_HOUR;
  const months = monthStarts(start, end, input.household.clock);
  const walk = prepareWalk(input, months);
  const { model, ledger } = walk;
  settleStart(model, input, walk.season);

  for (let utc = start - spinUpDays * SECONDS_PER_DAY; utc < start; utc += SECONDS_PER_DAY) {
    const until = Math.min(utc + SECONDS_PER_DAY, start);
    walkDay(walk, utc, until, standIn(weather, utc, spinUpDays), false, oneRow);
  }

  const before = storedAmounts(model);
  clearAir(model);
  walk.controller?.startCounting();
  for (let utc = start; utc < end; utc += SECONDS_PER_DAY) {
    const steps = walkDay(walk, utc, Math.min(utc + SECONDS_PER_DAY, end), 0, true, months);
    walk.trace.begin(Math.round((utc - start) / dt), steps, utc);
    for (const observe of observers) observe(walk.trace.view);
  }
  keepRun([walk, observers]);
  const volume = input.home.rooms.reduce((sum, room) => sum + room.volume, 0);
  const air = (field: number): Float64Array =>
    Float64Array.from(input.home.rooms, (_, i) => model.rooms[i * ROOM_STRIDE + field]!);
  return {
    start,
    hours,
    dt,
    ledger: finishLedger(
      ledger,
      before,
      storedAmounts(model),
      { net: air(ROOM.airNet), through: air(ROOM.airThrough), density: model.density },
      input.home.species.map(({ outdoor }) => outdoor * volume),
    ),
    control: walk.controller?.report() ?? null,
    notices: noticesOf(weather),
  };
}

/**
 * Where a day of the spin-up lies before a file that does not close on itself, the file's first
 * days stand in for it, over and over. @returns what to add to the instant [s]
 */
function standIn(
  { periodic, start, count, step }: Weather,
  utc: number,
  spinUpDays: number,
): number {
  if (periodic || utc >= start) return 0;
  // A day that begins between the file's own must end before the file does.
  const whole =
    Math.floor((count * step) / SECONDS_PER_DAY) - ((start - utc) % SECONDS_PER_DAY === 0 ? 0 : 1);
  const days = Math.max(1, Math.min(spinUpDays, whole));
  const back = Math.ceil((start - utc) / (days * SECONDS_PER_DAY));
  return back * days * SECONDS_PER_DAY;
}

/** State of the time loop that is shared by all its days. */
interface Walk {
  readonly input: RunInput;
  readonly preparation: Preparation;
  readonly stepper: Stepper;
  readonly model: Model;
  readonly shell: Shell;
  readonly day: DayInputs;
  /** Of the day at hand. */
  outdoors: Outdoors;
  readonly ledger: LedgerAccumulator;
  /** Takes the spin-up, and nobody reads it. */
  readonly scrap: LedgerAccumulator;
  readonly sunlight: Sunlight;
  readonly sun: SunSeries;
  readonly season: Season;
  readonly trace: TraceBuffer;
  readonly saturation: (temperature: number) => number;
  /** Controller; null where nothing acts. */
  readonly controller: Controller | null;
  readonly observed: Observation;
  readonly commands: Commands;
  readonly running: readonly Running[];
  /** Series that take the place of the model's own; null where there are none. */
  readonly imposing: Imposing | null;
  /** Electric power of each device, in the place of its control; null is its own, empty those of all. [W] */
  readonly devicePowers: readonly (Series | null)[];
}

/** Of each device the power that is known; none where none is. */
function powersOf({ home, devicePower = {} }: RunInput): (Series | null)[] {
  if (Object.keys(devicePower).length === 0) return [];
  return home.devices.map(({ name }) =>
    Object.hasOwn(devicePower, name) ? devicePower[name]! : null,
  );
}

/** @param months  instants at which the rows of the ledger begin [s UTC] */
function prepareWalk(input: RunInput, months: readonly number[]): Walk {
  const { home, household, dt } = input;
  const preparation = preparationOf(input);
  const { sunlight, sun, season, saturation } = preparation;
  const perDay = SECONDS_PER_DAY / dt;
  const rooms = home.rooms.length;
  const doors = home.doorways.length;
  const species = home.species.length;
  const calendar = months.map((m) => new Date(toLocal(household.clock, m) * 1000).getUTCMonth());
  const stepper = createStepper(
    {
      model: copyState(preparation.model),
      shell: layOutShell(home, preparation.model.density, dt),
      day: createDayInputs(household, rooms, species, perDay),
      commands: createCommands(home),
      ledger: createLedgerAccumulator(rooms, doors, species, calendar),
      scrap: createLedgerAccumulator(rooms, doors, species, [0]),
      columns: createRoomColumns(rooms, species, perDay),
    },
    input.compiled,
  );
  const { model, columns } = stepper.records;
  input.automation?.thermostats.forEach(({ radiantShare }, i) => {
    model.rooms[i * ROOM_STRIDE + ROOM.sensorRadiant] = radiantShare;
  });
  const observed = createObservation(rooms, species, home.devices.length, model.blinds.count);
  return {
    input,
    preparation,
    stepper,
    ...stepper.records,
    outdoors: createOutdoors(home.species, perDay),
    sunlight,
    sun,
    season,
    trace: createTraceBuffer(model, columns, perDay),
    saturation,
    controller:
      input.automation === undefined
        ? null
        : createController(home, household, input.automation, dt),
    observed,
    running: startDevices(model, observed, saturation),
    imposing: layOutImposing(input),
    devicePowers: powersOf(input),
  };
}

/**
 * Take the control steps from one instant to another, at most a day later.
 *
 * @param shift   added to every instant before the weather is looked up [s]
 * @param counted  whether the ledger of the period shall have them
 * @param months  instants at which the rows of the ledger begin [s UTC]
 * @returns how many steps were taken
 */
function walkDay(
  walk: Walk,
  from: number,
  to: number,
  shift: number,
  counted: boolean,
  months: readonly number[],
): number {
  const { model, season } = walk;
  const { dt } = model;
  const steps = Math.round((to - from) / dt);
  const first = Math.round((from - walk.input.start) / dt);
  beginDay(walk, from, first, steps, shift);
  walk.controller?.beginDay(from, steps);
  setGround(model, season, from + shift);
  let row = rowAt(months, from);
  for (let s = 0; s < steps; s++) {
    if (row + 1 < months.length && from + s * dt >= months[row + 1]!) row++;
    takeStep(walk, s, first + s, counted, row);
  }
  return steps;
}

/** Lay out what people do and what the weather is on a day, or take what a run before this one laid out. */
function beginDay(walk: Walk, from: number, first: number, steps: number, shift: number): void {
  const { input, imposing, sun, day, outdoors, preparation, model } = walk;
  const { home, household, weather } = input;
  const { dt } = model;
  if (input.preparation !== undefined) {
    walk.outdoors = keptOutdoors(preparation, from + shift);
    copyNumbers(day, keptDay(preparation, household, from));
  } else {
    layOutOutdoors(outdoors, weather, sun, home.species, from, dt, steps, shift);
    fillDayInputs(day, household, from, dt, steps);
  }
  if (imposing?.people) imposePeople(day, imposing, first, steps);
}

/**
 * @param s     number of the step in its day
 * @param step  and since the period's start
 */
function takeStep(walk: Walk, s: number, step: number, counted: boolean, month: number): void {
  const { stepper, model, shell, day, outdoors, sunlight, saturation, trace } = walk;
  const { controller, observed, commands, running, imposing } = walk;
  const { roomCount } = model;
  const at = s * roomCount;
  const row = month * roomCount;
  setOutdoors(model, sunlight, outdoors, s);
  followSchedules(commands, day, s);
  if (controller !== null) {
    observeRooms(model, observed, outdoors, s, saturation);
    observeSun(model, observed, sunlight, outdoors.interval[s]!);
    controller.act(day, s, observed, commands);
    applyCommands(model, commands);
    restDevices(model);
    if (step >= 0) imposeDevices(running, walk.devicePowers, step, observed, commands);
    runDevices(running, observed, commands);
  } else if (model.coolers.count > 0) restDevices(model);
  if (model.blinds.count > 0) setBlinds(model, sunlight, commands.blinds, outdoors.interval[s]!);
  if (imposing !== null) imposeStep(model, imposing, step, shell.openingRoom, commands);
  blowOut(model);
  stepper.solve(at);
  stepper.finish(counted, at, row);
  finishCoolers(model);
  if (imposing !== null) {
    const { flows } = counted ? walk.ledger : walk.scrap;
    bookImposed(model, trace.view, s, flows, row);
  }
  recordHome(trace, model, day, running, s);
}

function rowAt(months: readonly number[], utc: number): number {
  let row = 0;
  while (row + 1 < months.length && utc >= months[row + 1]!) row++;
  return row;
}

function clearAir({ rooms, roomCount }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + ROOM.airNet] = 0;
    rooms[r + ROOM.airThrough] = 0;
  }
}

function requireSteps({ weather, dt, start, hours }: RunInput): void {
  if (!(dt >= 60 && dt <= SECONDS_PER_HOUR && SECONDS_PER_HOUR % dt === 0)) {
    throw new RangeError(
      `simulate: the control step must divide an hour into whole parts of at least a minute, got ${dt} s`,
    );
  }
  if (!(Number.isInteger(hours) && hours > 0)) {
    throw new RangeError(`simulate: the period must be a whole number of hours, got ${hours}`);
  }
  const end = weather.start + weather.count * weather.step;
  if (!weather.periodic && (start < weather.start || start + hours * SECONDS_PER_HOUR > end)) {
    throw new RangeError('simulate: the weather does not cover the period');
  }
}

function noticesOf(weather: Weather): Notice[] {
  return weather.sun === 'none'
    ? [
        {
          id: 'no-sun',
          text: 'The weather file has neither irradiance nor cloud: no sun shines in this run. Heating comes out too high and rooms too cold on sunny days.',
        },
      ]
    : [];
}

const oneRow: readonly number[] = [Number.NEGATIVE_INFINITY];

const ROOM_STRIDE = ROOM.stride;
