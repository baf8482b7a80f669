import { Command } from 'commander';
import type { Observer } from '../../engine/trace.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { PlanRequest } from '../../studies/run-plan.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { keepInputs } from '../keep-inputs.ts';
import { loadPlans } from '../load-plans.ts';
import { type AskedDays, refuseDaysAlone } from '../look-days.ts';
import { jsonOption, lookOption, setOption, weatherOption } from '../options.ts';
import { ownCheck } from '../own-check.ts';
import { startProgress } from '../progress.ts';
import { withinFormulas } from '../within-formulas.ts';

interface Options extends AskedDays {
  readonly plan?: string;
  readonly set: readonly string[];
  readonly weather?: string;
  readonly trace?: string;
  readonly json?: true;
  readonly look?: string;
}

/** `run <scenario>`: simulate one plan, print its figures, and keep its series where asked. */
export function runCommand(io: Io): Command {
  return new Command('run')
    .summary('simulate one plan and print its figures')
    .description(
      'Simulate one plan over the period of the scenario: figures of the home and of each room, ' +
        'where heat and water went, and a second opinion by handbook rules.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .option('--plan <name>', 'plan to run; the first of the scenario where not given')
    .addOption(setOption())
    .addOption(weatherOption())
    .option('--trace <file.csv>', 'also write hourly series here')
    .addOption(jsonOption())
    .addOption(lookOption())
    .option('--from <MM-DD>', 'first day of the picture; both left out, the coldest week')
    .option('--to <MM-DD>', 'last day of the picture')
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance run scenarios/terrace.yaml --plan nineteen\n' +
        '  $ roombalance run scenarios/flat.yaml --set /heating/setpoint=18 --trace flat.csv\n' +
        '  $ roombalance run scenarios/flat.yaml --look bedroom --from 01-09 --to 01-22',
    )
    .action((path: string, options: Options) => run(io, path, options));
}

async function run(io: Io, path: string, options: Options): Promise<void> {
  if (options.look === undefined) refuseDaysAlone(options);
  const { plans, read } = await loadPlans(io, path, {
    ...options,
    plans: options.plan === undefined ? 'first' : [options.plan],
  });
  keepInputs('--trace <file.csv>', options.trace, read);
  const { runPlan } = await import('../../studies/run-plan.ts');
  const request = plans[0]!;
  const trace = options.trace === undefined ? null : await startTrace(request.plan);
  const look = options.look === undefined ? null : await startLook(request, options.look, options);
  const progress = await startProgress(io, [request.period.hours], 'plan');
  const watchers: Observer[] = [progress, trace, look].flatMap((each) => each?.observe ?? []);
  let outcome: ReturnType<typeof runPlan>;
  try {
    outcome = withinFormulas(path, () => runPlan(request, watchers));
  } finally {
    progress.stop();
  }
  const { measures, run: ran } = outcome;
  if (trace !== null) await io.writeWhole(options.trace!, trace.text());
  if (options.json) {
    io.out(jsonText(measures));
  } else if (look !== null) {
    io.out(`${look.text(io.width)}\n`);
  } else {
    const { runTables } = await import('../../report/tables/run-tables.ts');
    io.out(`${runTables(measures, ran.ledger, io.width)}\n`);
  }
  ownCheck([measures]);
}

async function startLook(request: PlanRequest, room: string, days: AskedDays) {
  const { lookAtRoom } = await import('../look-at-room.ts');
  return lookAtRoom(request, room, days);
}

async function startTrace({ home, household }: PreparedPlan) {
  const { createTraceCsv } = await import('../../report/trace-csv.ts');
  return createTraceCsv({
    rooms: home.rooms.map((room) => room.name),
    species: home.species,
    sources: home.sources.map((source) => source.name),
    backedUp: home.sources.filter(({ backup = 0 }) => backup > 0).map(({ name }) => name),
    devices: home.devices.map((device) => device.name),
    clock: household.clock,
  });
}
