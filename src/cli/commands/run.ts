import { Command } from 'commander';
import type { RunOptions } from '../actions/run.ts';
import type { Io } from '../io.ts';
import {
  addLogOptions,
  againstOption,
  doubtOption,
  jsonOption,
  pageOption,
  plotOption,
  renamedOption,
  replayOption,
  seedOption,
  setOption,
  weathersOption,
} from '../options.ts';

/** `run <scenario>`: simulate one plan, print its figures, and keep its series where asked. */
export function runCommand(io: Io): Command {
  const command = new Command('run')
    .summary('simulate one plan and print its figures')
    .description(
      'Simulate one plan over the period of the scenario: figures of the home and of each room, ' +
        'where heat and water went, and a handbook cross-check.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .option('--plan <name>', 'plan to run; the first of the scenario where not given')
    .addOption(setOption())
    .addOption(weathersOption())
    .option('--trace <file.csv>', 'also write hourly series here')
    .addOption(againstOption())
    .addOption(pageOption('run and log, with --against').conflicts(['trace', 'doubt', 'replay']))
    .addOption(replayOption())
    .addOption(doubtOption())
    .addOption(seedOption('--doubt'))
    .addOption(jsonOption())
    .addOption(plotOption())
    .addOption(renamedOption('--look [room]', '--plot'))
    .option('--from <MM-DD>', 'first day of the picture; both left out, the coldest week')
    .option('--to <MM-DD>', 'last day of the picture');
  return addLogOptions(command)
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance run scenarios/terrace.yaml --plan nineteen\n' +
        '  $ roombalance run scenarios/flat.yaml --set /heating/setpoint=18 --trace flat.csv\n' +
        '  $ roombalance run my-home.yaml --against bedroom.csv --against bath.csv\n' +
        '  $ roombalance run my-home.yaml --against bedroom.csv --page beside.html\n' +
        '  $ roombalance run scenarios/flat.yaml --plot bedroom --from 01-09 --to 01-22',
    )
    .action(async (path: string, options: RunOptions) => {
      const { run } = await import('../actions/run.ts');
      await run(io, path, options);
    });
}
