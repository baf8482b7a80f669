import type { Observer } from '../../engine/record/trace.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { PlanRequest } from '../../studies/run-plan.ts';
import { doubtedPlans, doubtOf, firstYear, tellDoubt } from '../doubt.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { keepApart } from '../keep-apart.ts';
import { loadPlans } from '../load/load-plans.ts';
import type { BesideLog } from '../options.ts';
import { type AskedDays, refuseDaysAlone } from '../plot/plot-days.ts';
import { ownCheck } from '../runs/own-check.ts';
import { startProgress } from '../runs/progress.ts';
import { withinFormulas } from '../runs/within-formulas.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the scenario's name. */
export interface RunOptions extends AskedDays, BesideLog {
  readonly against?: readonly string[];
  readonly replay?: readonly string[];
  readonly plan?: string;
  readonly set: readonly string[];
  readonly weather?: readonly string[];
  readonly doubt?: number;
  readonly seed: number;
  readonly trace?: string;
  readonly json?: true;
  readonly plot?: string;
  readonly page?: string;
}

/** Simulate one plan, print its figures, and write its series where asked. */
export async function run(io: Io, path: string, options: RunOptions): Promise<void> {
  if (options.plot === undefined) refuseDaysAlone(options);
  if (options.page !== undefined && options.against === undefined) {
    throw new UsageError("error: option '--page <file.html>' needs option '--against <file.csv>'");
  }
  const loaded = await loadPlans(io, path, {
    ...{ set: options.set, weather: firstYear(options) },
    plans: options.plan === undefined ? 'first' : [options.plan],
    check: 'named',
  });
  if (options.against !== undefined) {
    const { runAgainst } = await import('./run-against.ts');
    return runAgainst(io, path, loaded, options.against, options);
  }
  if (options.replay !== undefined) {
    const { runReplay } = await import('./run-replay.ts');
    return runReplay(io, loaded, options.replay, options);
  }
  const { plans, read } = loaded;
  await keepApart(io, [{ option: '--trace <file.csv>', path: options.trace }], read, true);
  if (options.trace !== undefined) await io.requireWritable(options.trace);
  const { runPlan } = await import('../../studies/run-plan.ts');
  const request = plans[0]!;
  const trace = options.trace === undefined ? null : await startTrace(request.plan);
  const plot = options.plot === undefined ? null : await startPlot(request, options.plot, options);
  const progress = await startProgress(io, [request.period.hours], 'plan');
  const watchers: Observer[] = [progress, trace, plot].flatMap((each) => each?.observe ?? []);
  let outcome: ReturnType<typeof runPlan>;
  try {
    outcome = withinFormulas(path, () => runPlan(request, watchers));
  } finally {
    progress.stop();
  }
  const { measures, run: ran } = outcome;
  const doubted = await doubtedPlans(loaded, options);
  const doubt = doubted && (await doubtOf(io, loaded, doubted, [measures], options));
  if (trace !== null) await io.writeWhole(options.trace!, trace.text());
  if (options.json) {
    io.out(jsonText(doubt === null ? measures : { ...measures, doubt }));
  } else if (plot !== null) {
    io.out(`${plot.text(io.width)}\n`);
  } else {
    const { runTables } = await import('../../report/tables/run-tables.ts');
    io.out(`${runTables(measures, ran.ledger, request.plan.household.clock, io.width)}\n`);
    if (doubt !== null) await tellDoubt(io, loaded, doubt);
  }
  ownCheck([measures]);
}

async function startPlot(request: PlanRequest, room: string, days: AskedDays) {
  const { plotRoom } = await import('../plot/plot-room.ts');
  return plotRoom(request, room, days);
}

async function startTrace({ home, household }: PreparedPlan) {
  const { createTraceCsv } = await import('../../report/trace-csv.ts');
  return createTraceCsv({
    rooms: home.rooms.map((room) => room.name),
    species: home.species,
    sources: home.sources.map((source) => source.name),
    backedUp: home.sources.filter(({ backup = 0 }) => backup > 0).map(({ name }) => name),
    devices: home.devices.map((device) => device.name),
    blinds: (home.blinds ?? []).map(({ name }) => name),
    clock: household.clock,
  });
}
