import { Command } from 'commander';
import type { ReportOptions } from '../actions/report.ts';
import type { Io } from '../io.ts';
import {
  date,
  draws,
  names,
  renamedOption,
  seedOption,
  setOption,
  weathersOption,
} from '../options.ts';

/** `report <scenario>`: the comparison as one HTML file that can be sent on. */
export function reportCommand(io: Io): Command {
  return new Command('report')
    .summary('write the comparison as one HTML page')
    .description(
      'Compare the plans of a scenario and what the program proposes beside them, ask whether one of ' +
        'them is worth its money, draw all that is doubtful on that, and write it all as one ' +
        'page that needs no network.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .option('-o, --output <file.html>', 'page to write; reports/NAME.html where not given')
    .option('--plans <a,b>', 'plans to compare, the baseline first; all where not given', names)
    .option(
      '--about <name>',
      'plan or proposal to ask about; if not given, the first with a dehumidifier, or of a home that is not damp the first that buys something',
    )
    .option(
      '--doubt <number>',
      'how often to draw all that was assumed or is doubtful; 0 leaves it as it is taken to be',
      draws,
      100,
    )
    .addOption(renamedOption('--doubts [number]', '--doubt'))
    .addOption(seedOption('--doubt'))
    .option('--charts <folder>', 'also write every picture as an SVG file into this folder')
    .option('--date <YYYY-MM-DD>', 'date on the page; today where not given', date)
    .option('--open', 'show the page when it is written')
    .addOption(setOption())
    .addOption(weathersOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance report scenarios/terrace.yaml\n' +
        '  $ roombalance report scenarios/flat.yaml -o flat.html --open',
    )
    .action(async (path: string, options: ReportOptions) => {
      const { report } = await import('../actions/report.ts');
      await report(io, path, options);
    });
}
