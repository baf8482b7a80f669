import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { keepApart } from '../keep-apart.ts';
import { loadLog } from '../load/load-log.ts';
import type { LoadedPlans } from '../load/load-plans.ts';
import { requireName } from '../load/require-name.ts';
import type { BesideLog } from '../options.ts';
import type { AskedDays } from '../plot/plot-days.ts';
import { ownCheck } from '../runs/own-check.ts';
import { startProgress } from '../runs/progress.ts';
import { withinFormulas } from '../runs/within-formulas.ts';
import { tellOddLog } from '../tell-log.ts';

/** What may be said beside the log files of `--against`. */
interface AgainstOptions extends BesideLog, AskedDays {
  readonly json?: true;
  readonly plot?: string;
  readonly page?: string;
}

/** Simulate the time of a log and print the run beside it, as figures or a picture, and draw it where asked. */
export async function runAgainst(
  io: Io,
  path: string,
  loaded: LoadedPlans,
  files: readonly string[],
  options: AgainstOptions,
): Promise<void> {
  const { page, plot } = options;
  const request = loaded.plans[0]!;
  await keepApart(
    io,
    [{ option: '--page <file.html>', path: page }],
    [...loaded.read, ...files],
    true,
  );
  if (page !== undefined) await io.requireWritable(page);
  const rooms = request.plan.home.rooms.map(({ name }) => name);
  if (plot !== undefined) requireName(plot, rooms, 'room');
  const read = await loadLog(io, loaded, files, options);
  await tellOddLog(io, read, rooms);
  const { againstLog } = await import('../../studies/against/against-log.ts');
  const names = { log: files.join(', '), weather: loaded.weatherFile };
  const progress = await startProgress(io, [request.period.hours], 'plan');
  let found: ReturnType<typeof againstLog>;
  try {
    found = withinFormulas(path, () => againstLog(request, read.log, names, [progress.observe]));
  } finally {
    progress.stop();
  }
  const { against, hours, outcome } = found;
  let text: string;
  if (options.json) text = jsonText(against);
  else if (plot !== undefined) {
    const { plotAgainst } = await import('../plot/plot-against.ts');
    text = `${await plotAgainst(request, against, hours, plot, options, io.width)}\n`;
  } else {
    const { againstText } = await import('../../report/tables/against-text.ts');
    text = `${againstText(against, io.width)}\n`;
  }
  if (page !== undefined) await writePage(io, loaded, found, page);
  io.out(text);
  ownCheck([outcome.measures]);
}

async function writePage(
  io: Io,
  { scenario: { invented }, plans }: LoadedPlans,
  { against, hours }: Pick<ReturnType<AgainstLogOf>, 'against' | 'hours'>,
  path: string,
): Promise<void> {
  const { againstPage } = await import('../../report/page/against-page.ts');
  const own = { invented, version: io.version, sha256: await io.loadSha256() };
  const { clock } = plans[0]!.plan.household;
  await io.writeWhole(path, await againstPage(against, hours, clock, own));
  io.err(`${visibleValue(path)} written\n`);
}

type AgainstLogOf = typeof import('../../studies/against/against-log.ts').againstLog;
