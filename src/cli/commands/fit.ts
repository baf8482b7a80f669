import { Command } from 'commander';
import type { FitOptions } from '../actions/fit.ts';
import type { Io } from '../io.ts';
import {
  addLogOptions,
  jsonOption,
  pageOption,
  setOption,
  weatherOption,
  wholeNumber,
} from '../options.ts';

/** `fit <scenario> --log <file>`: find what a log tells of a home. */
export function fitCommand(io: Io): Command {
  const command = new Command('fit')
    .summary('find out what the log of a home tells about it')
    .description(
      'Fit what the scenario assumes to what sensors logged in the home: air change, moisture, heat ' +
        'loss, capacity, sun, thermostats, as far as the log tells them. The last fortnight is withheld, ' +
        'foreseen and judged against guessing.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .requiredOption(
      '--log <file>',
      'file with readings (repeatable)',
      (path: string, before: readonly string[] = []) => [...before, path],
    );
  return addLogOptions(command)
    .option('--plan <name>', 'plan that was lived in meanwhile; the first where not given')
    .addOption(setOption())
    .addOption(weatherOption())
    .option('--out <file.yaml>', 'also write the scenario with fitted values here')
    .addOption(pageOption('the withheld days: logged, foreseen, guessed'))
    .option('--write-anyway', 'write it even where the fit foresees no better than guessing')
    .option(
      '--threads <number>',
      'threads to run in; as many as processors where not given',
      wholeNumber,
    )
    .addOption(jsonOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance fit scenarios/logged-flat.yaml --log scenarios/logged-flat.csv\n' +
        '  $ roombalance fit home.yaml --log sensors.csv --log meter.csv --out fitted.yaml',
    )
    .action(async (path: string, options: FitOptions) => {
      const { fitLog } = await import('../actions/fit.ts');
      await fitLog(io, path, options);
    });
}
