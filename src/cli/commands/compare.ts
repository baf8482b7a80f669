import { Command } from 'commander';
import type { CompareOptions } from '../actions/compare.ts';
import type { Io } from '../io.ts';
import { csvOption, jsonOption, names, setOption, weatherOption } from '../options.ts';

/** `compare <scenario>`: simulate plans and set them beside the first. */
export function compareCommand(io: Io): Command {
  return new Command('compare')
    .summary('set the plans of a scenario side by side')
    .description(
      'Simulate the plans of a scenario and set them beside the first of them: money, energy, ' +
        'hours outside the bands, damp and mould, room by room.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .option('--plans <a,b>', 'plans to compare, the baseline first; all where not given', names)
    .addOption(setOption())
    .addOption(weatherOption())
    .addOption(jsonOption())
    .addOption(csvOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance compare scenarios/terrace.yaml\n' +
        '  $ roombalance compare scenarios/terrace.yaml --plans as-lived,nineteen --json\n' +
        '  $ roombalance compare scenarios/terrace.yaml --csv > terrace.csv',
    )
    .action(async (path: string, options: CompareOptions) => {
      const { compare } = await import('../actions/compare.ts');
      await compare(io, path, options);
    });
}
