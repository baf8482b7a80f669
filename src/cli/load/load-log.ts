import type { LogOptions, ReadLog } from '../../log/read/log-options.ts';
import type { LogText } from '../../log/read/read-log.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import type { BesideLog } from '../options.ts';
import type { LoadedPlans } from './load-plans.ts';
import { logClock } from './log-clock.ts';

/** Read log files with nothing but what was said beside them. @throws InputProblems */
export async function loadLogAlone(
  io: Io,
  paths: readonly string[],
  beside: BesideLog,
): Promise<ReadLog> {
  const { NOTHING_SAID } = await import('../../log/read/log-options.ts');
  return readLogFiles(io, paths, { ...NOTHING_SAID, ...(await said(beside)) });
}

/**
 * Read log files as a scenario wants it, overruled by what was said beside them.
 *
 * @throws InputProblems
 */
export async function loadLog(
  io: Io,
  { scenario, plans }: LoadedPlans,
  paths: readonly string[],
  beside: BesideLog,
): Promise<ReadLog> {
  const { logOptionsOf } = await import('../../scenario/log-options-of.ts');
  const { plan } = plans[0]!;
  const data = scenario.checked.get(plan.plan)!;
  const options = { ...logOptionsOf(data, plan.household.clock), ...(await said(beside)) };
  return readLogFiles(io, paths, options);
}

/** What the command line says of a log. */
async function said({ zone, dates }: BesideLog): Promise<Partial<LogOptions>> {
  return {
    ...(zone !== undefined && { clock: await logClock(zone), zone, zoneIsLoggers: true }),
    ...(dates !== undefined && { dates: DATES[dates] }),
  };
}

/** Read log files, all that is wrong with any of them told at once. @throws InputProblems */
async function readLogFiles(
  io: Io,
  paths: readonly string[],
  options: LogOptions,
): Promise<ReadLog> {
  const texts: LogText[] = [];
  const problems: Problem[] = [];
  for (const file of paths) {
    try {
      texts.push({ file, text: await io.readText(file, MOST_LOG) });
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      problems.push(...error.problems);
    }
  }
  const { readLog } = await import('../../log/read/read-log.ts');
  try {
    const read = texts.length === 0 ? null : readLog(texts, options);
    if (read !== null && problems.length === 0) return read;
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    problems.push(...error.problems);
  }
  throw new InputProblems(problems);
}

const DATES = {
  'day-first': 'day first',
  'month-first': 'month first',
  'year-first': 'year first',
} as const;
/** Two million rows of a long file have some 120 MB. [byte] */
const MOST_LOG = 150e6;
