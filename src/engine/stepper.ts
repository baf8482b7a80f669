import type { DayInputs } from '../control/day-inputs.ts';
import type { Commands } from '../control/observations.ts';
import { outputAtExcess } from '../physics/heating/radiator-output.ts';
import { saturationPressure } from '../physics/moist-air/saturation-pressure.ts';
import { fromBase64 } from '../units/base64.ts';
import type { Shell } from './air/lay-out-shell.ts';
import type { Model } from './layout/model.ts';
import type { LedgerAccumulator } from './ledger/ledger-accumulator.ts';
import { memoryNeeded, moveToMemory } from './linear-memory.ts';
import type { RoomColumns } from './record/room-columns.ts';
import { finishStep, solveStep } from './step.ts';
import { STEP_MODULE } from './step-module.ts';

/** What the step of a run reads and writes. */
export interface StepRecords {
  readonly model: Model;
  readonly shell: Shell;
  readonly day: DayInputs;
  readonly commands: Commands;
  /** Ledger of the period, and one for the spin-up that nobody reads. */
  readonly ledger: LedgerAccumulator;
  readonly scrap: LedgerAccumulator;
  readonly columns: RoomColumns;
}

/** The step of a run, and the records it works on: not always those it was made for. */
export interface Stepper {
  readonly records: StepRecords & Record<string, object>;
  /** See solveStep. */
  readonly solve: (at: number) => void;
  /** See finishStep. @param counted  whether the ledger of the period shall have it */
  readonly finish: (counted: boolean, at: number, row: number) => void;
}

/** @param compiled  false for JavaScript, else WebAssembly where there is any */
export function createStepper(given: StepRecords, compiled = true): Stepper {
  return (compiled ? compiledStepper(given) : null) ?? plainStepper(given);
}

/** The step as JavaScript. */
function plainStepper(given: StepRecords): Stepper {
  const records = { ...given };
  const { model, shell, day, commands, ledger, scrap, columns } = records;
  return {
    records,
    solve: (at) => solveStep(model, shell, day, commands, at),
    finish: (counted, at, row) =>
      finishStep(model, shell, day, counted ? ledger : scrap, columns, at, row),
  };
}

/**
 * The step as WebAssembly, compiled from the same source; its results are the same to the last bit.
 * Null where the machine, or the policy of a page, does not allow it.
 */
function compiledStepper(given: StepRecords): Stepper | null {
  const module = compiledModule();
  if (module === null) return null;
  const all = { ...given };
  const pages = Math.ceil(memoryNeeded(all, KINDS) / PAGE);
  const memory = new WebAssembly.Memory({ initial: pages, maximum: pages });
  const { records, addresses } = moveToMemory(all, KINDS, memory.buffer);
  const machine = { outputAtExcess, saturationPressure };
  const { solveStep: solve, finishStep: finish } = new WebAssembly.Instance(module, {
    env: { memory },
    machine,
  }).exports;
  const { model, shell, day, commands, ledger, scrap, columns } = addresses;
  return {
    records,
    solve: (at) => solve(model, shell, day, commands, at),
    finish: (counted, at, row) => {
      finish(model, shell, day, counted ? ledger : scrap, columns, at, row);
    },
  };
}

/** What of the machine's WebAssembly is used; some machines have none. */
interface Assembly {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Memory: new (size: {
    initial: number;
    maximum: number;
  }) => { readonly buffer: ArrayBuffer };
  readonly Instance: new (module: object, imports: object) => { readonly exports: Exports };
}
declare const WebAssembly: Assembly;

interface Exports {
  readonly solveStep: (
    model: number,
    shell: number,
    day: number,
    commands: number,
    at: number,
  ) => void;
  readonly finishStep: (
    model: number,
    shell: number,
    day: number,
    ledger: number,
    columns: number,
    at: number,
    row: number,
  ) => void;
}

const KINDS = {
  model: 'Model',
  shell: 'Shell',
  day: 'DayInputs',
  commands: 'Commands',
  ledger: 'LedgerAccumulator',
  scrap: 'LedgerAccumulator',
  columns: 'RoomColumns',
};

/** Compiled once for all runs; null where that was refused. */
let known: { readonly module: object | null } | undefined;

function compiledModule(): object | null {
  known ??= { module: typeof WebAssembly === 'undefined' ? null : compileStep(WebAssembly) };
  return known.module;
}

/** The step as a module of a machine, or null where a page's policy forbids to compile. */
export function compileStep({ Module }: Pick<Assembly, 'Module'>): object | null {
  try {
    return new Module(fromBase64(STEP_MODULE));
  } catch (refused) {
    // Anything else is a fault of the module or the machine.
    if (refused instanceof Error && refused.name === 'CompileError') return null;
    throw refused;
  }
}

const PAGE = 65_536; // B
