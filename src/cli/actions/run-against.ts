import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { loadLog } from '../load-log.ts';
import type { LoadedPlans } from '../load-plans.ts';
import type { BesideLog } from '../options.ts';
import { ownCheck } from '../own-check.ts';
import { startProgress } from '../progress.ts';
import { withinFormulas } from '../within-formulas.ts';

/** What may be said beside the log files of `--against`. */
interface AgainstOptions extends BesideLog {
  readonly json?: true;
}

/** Simulate the time of a log and print the run beside it. */
export async function runAgainst(
  io: Io,
  path: string,
  loaded: LoadedPlans,
  files: readonly string[],
  options: AgainstOptions,
): Promise<void> {
  const { log } = await loadLog(io, loaded, files, options);
  const { againstLog } = await import('../../studies/against/against-log.ts');
  const request = loaded.plans[0]!;
  const names = { log: files.join(', '), weather: loaded.weatherFile };
  const progress = await startProgress(io, [request.period.hours], 'plan');
  let found: ReturnType<typeof againstLog>;
  try {
    found = withinFormulas(path, () => againstLog(request, log, names, [progress.observe]));
  } finally {
    progress.stop();
  }
  if (options.json) io.out(jsonText(found.against));
  else {
    const { againstText } = await import('../../report/tables/against-text.ts');
    io.out(`${againstText(found.against, io.width)}\n`);
  }
  ownCheck([found.outcome.measures]);
}
