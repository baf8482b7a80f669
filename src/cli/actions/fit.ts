import { basename } from 'node:path';
import type { HomeFit } from '../../fit/fit-home.ts';
import type { RunLogged } from '../../fit/simulate/run-logged.ts';
import type { Log } from '../../log/log.ts';
import { isoDay } from '../../units/iso-time.ts';
import { visibleValue } from '../../units/visible-text.ts';
import type { Weather } from '../../weather/weather.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { keepApart } from '../keep-apart.ts';
import { loadLog } from '../load/load-log.ts';
import { type LoadedPlans, loadPlans } from '../load/load-plans.ts';
import type { BesideLog } from '../options.ts';
import { startProgress } from '../runs/progress.ts';
import type { Workers } from '../runs/start-workers.ts';
import { tellLog } from '../tell-log.ts';
import { tellNote } from '../tell-note.ts';

/** What may be said beside the scenario's name. */
export interface FitOptions extends BesideLog {
  readonly log: readonly string[];
  readonly plan?: string;
  readonly set: readonly string[];
  readonly weather?: string;
  readonly out?: string;
  readonly page?: string;
  readonly writeAnyway?: true;
  readonly threads?: number;
  readonly json?: true;
}

/** Fit a scenario to a log, tell what was learnt, and write it where asked. */
export async function fitLog(io: Io, path: string, options: FitOptions): Promise<void> {
  const plans = options.plan === undefined ? ('first' as const) : [options.plan];
  const loaded = await loadPlans(io, path, { ...options, plans, check: 'named' });
  const outputs = [
    { option: '--out <file.yaml>', path: options.out },
    { option: '--page <file.html>', path: options.page },
  ];
  await keepApart(io, outputs, [...loaded.read, ...options.log], true);
  for (const { path } of outputs) if (path !== undefined) await io.requireWritable(path);
  const { log, files } = await loadLog(io, loaded, options.log, options);
  await tellLog(io, files);
  const found = await fitted(io, loaded, log, options);
  if (options.json) {
    const { fitFigures } = await import('../../report/fit-figures.ts');
    io.out(jsonText(fitFigures(found)));
  } else {
    const { fitText } = await import('../../report/tables/fit-text.ts');
    io.out(`${fitText(found, io.width)}\n`);
  }
  if (options.page !== undefined) await writePage(io, loaded, found, options.page);
  if (options.out !== undefined) await write(io, loaded, found, options, options.out);
}

async function fitted(
  io: Io,
  loaded: LoadedPlans,
  log: Log,
  options: FitOptions,
): Promise<HomeFit> {
  const { fitHome } = await import('../../fit/fit-home.ts');
  const { scenario, files, weather, plans } = loaded;
  const wanted = options.threads ?? MOST_THREADS;
  const workers = wanted > 1 ? await io.startWorkers(wanted) : null;
  const expected = new Array<number>(EXPECTED_RUNS).fill(1);
  const progress = await startProgress(io, expected, 'runs, at most,');
  try {
    return await fitHome({
      ...{ scenario, files, log, weather, plan: plans[0]!.plan.plan, set: options.set },
      startRuns: (outdoors) => startLogged(workers, scenario.file, outdoors, progress.next),
    });
  } finally {
    progress.stop();
    await workers?.close();
  }
}

async function startLogged(
  workers: Workers | null,
  file: string,
  weather: Weather,
  done: () => void,
): Promise<RunLogged> {
  const setup = { file, weather };
  workers?.share(setup);
  const { loggedAnswer } = await import('../runs/logged-task.ts');
  return async (task) => {
    const { hourly } = workers === null ? loggedAnswer(setup, task) : await workers.ask(task);
    done();
    return hourly;
  };
}

async function writePage(
  io: Io,
  { scenario: { invented } }: LoadedPlans,
  found: HomeFit,
  path: string,
): Promise<void> {
  const { fitPage } = await import('../../report/page/fit-page.ts');
  const own = { invented, version: io.version, sha256: await io.loadSha256() };
  await io.writeWhole(path, await fitPage(found, own));
  io.err(`${visibleValue(path)} written\n`);
}

async function write(
  io: Io,
  { scenario, text, plans }: LoadedPlans,
  found: HomeFit,
  { log, writeAnyway }: FitOptions,
  out: string,
): Promise<void> {
  if (!found.skilled && !writeAnyway) {
    const good = found.foreseen.filter(({ alone }) => alone.skill > 0).length;
    const words = `${out} was not written, because the home as fitted foresees better than guessing in ${good} of ${found.foreseen.length} cases only; --write-anyway writes it`;
    await tellNote(io, words);
    return;
  }
  const { fittedValues } = await import('../../fit/fitted-values.ts');
  const { writeFitted } = await import('../../scenario/edits/write-fitted.ts');
  const { readScenario } = await import('../../scenario/read-scenario.ts');
  const day = (hour: number) => isoDay(found.division.start + hour * 3600);
  const words = `${log.map((file) => basename(file)).join(', ')}, ${day(0)} to ${day(found.division.withheld)}`;
  const written = writeFitted(
    text,
    plans[0]!.plan.plan,
    found.settings,
    fittedValues(found, words),
  );
  readScenario(written, out); // what is written is a scenario
  await io.writeWhole(out, written);
  io.err(`wrote ${out}: ${scenario.title} with fitted values\n`);
}

/** As many as there are processors, however many that is. */
const MOST_THREADS = 64;
const EXPECTED_RUNS = 550;
