import type { DayInputs } from '../control/day-inputs.ts';
import type { Commands } from '../control/observations.ts';
import type { i32 } from '../units/portable.ts';
import { moveAir, settleAir } from './air/air.ts';
import type { Shell } from './air/lay-out-shell.ts';
import { stepSpecies } from './air/species.ts';
import { correctGuesses, guessTemperatures, settleHeat, solveHeat } from './heat/heat.ts';
import type { Model } from './layout/model.ts';
import { OUTSIDE } from './layout/state-layout.ts';
import type { LedgerAccumulator } from './ledger/ledger-accumulator.ts';
import { bookFlows } from './record/book-flows.ts';
import { type RoomColumns, recordRooms } from './record/room-columns.ts';
import { stepWater } from './water/water.ts';

/**
 * Solve for flows of air and the rooms' temperatures: once more where flows were worked out with
 * temperatures that turn out to be far off.
 *
 * @param at  place of the step's first room in the day's inputs
 */
export function solveStep(
  m: Model,
  shell: Shell,
  day: DayInputs,
  commands: Commands,
  at: i32,
): void {
  const outdoor = m.outside[TEMPERATURE]!;
  guessTemperatures(m);
  moveAir(m, shell, commands);
  solveHeat(m, day, at, commands, outdoor);
  if (correctGuesses(m)) {
    moveAir(m, shell, commands);
    solveHeat(m, day, at, commands, outdoor);
  }
}

/**
 * End the step once flows of air and temperatures agree: stores of heat, water, species, ledger and trace.
 *
 * @param row  first record of the month in the ledger
 */
export function finishStep(
  m: Model,
  shell: Shell,
  day: DayInputs,
  ledger: LedgerAccumulator,
  columns: RoomColumns,
  at: i32,
  row: i32,
): void {
  const outdoor = m.outside[TEMPERATURE]!;
  settleAir(m);
  bookFlows(m, ledger, row);
  settleHeat(m, day, at, outdoor, ledger.flows, row);
  stepWater(m, day, at, outdoor, m.outside[HUMIDITY]!, ledger.flows, row);
  stepSpecies(m, day, at, ledger.species, row);
  recordRooms(m, shell, day, columns, at);
}

const { temperature: TEMPERATURE, humidity: HUMIDITY } = OUTSIDE;
