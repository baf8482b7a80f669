import { InputProblems } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { loadLog } from '../load/load-log.ts';
import type { LoadedPlans } from '../load/load-plans.ts';
import type { BesideLog } from '../options.ts';
import { tellOddLog } from '../tell-log.ts';

/** What may be said beside the log files of `--replay`. */
interface ReplayOptions extends BesideLog {
  readonly json?: true;
}

/** Feed a log to the rules of a plan and print what they would have said. */
export async function runReplay(
  io: Io,
  loaded: LoadedPlans,
  files: readonly string[],
  options: ReplayOptions,
): Promise<void> {
  const { plan } = loaded.plans[0]!;
  if (plan.automation.rules.length === 0) throw noRules(loaded, plan.plan);
  const read = await loadLog(io, loaded, files, options);
  await tellOddLog(io, read, []);
  const { replayLog } = await import('../../studies/replay/replay-log.ts');
  const replay = replayLog(plan, read.log, loaded.weather);
  if (options.json) {
    io.out(jsonText(replay));
    return;
  }
  const { replayText } = await import('../../report/tables/replay-text.ts');
  io.out(`${replayText(replay, io.width)}\n`);
}

function noRules({ scenario }: LoadedPlans, plan: string): InputProblems {
  const others = scenario.plans.map(({ name }) => name).filter((name) => name !== plan);
  const hint = others.length === 0 ? '' : `--plan names another: ${others.join(', ')}`;
  const place = { file: scenario.file, line: 0, column: 0, where: 'rules' };
  const expected = 'rules that a log can be fed to';
  return new InputProblems([{ ...place, expected, got: `none in plan ${plan}`, hint }]);
}
