import { Command, Option } from 'commander';
import type { CompareOptions } from '../actions/compare.ts';
import type { Io } from '../io.ts';
import {
  csvOption,
  doubtOption,
  jsonOption,
  names,
  seedOption,
  setOption,
  weathersOption,
} from '../options.ts';

/** `compare <scenario>`: simulate plans and set them beside the first. */
export function compareCommand(io: Io): Command {
  return new Command('compare')
    .summary('set the plans of a scenario side by side')
    .description(
      'Simulate the plans of a scenario and set them beside the first of them: what they answer, ' +
        'then a line for each with money, energy, cold, damp, mould, air and alerts.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .option('--plans <a,b>', 'plans to compare, the baseline first; all where not given', names)
    .addOption(setOption())
    .addOption(weathersOption())
    .addOption(moreOption('--rooms', 'print what plans do to each room instead'))
    .addOption(moreOption('--rules', 'print what each rule does, and at which hours, instead'))
    .addOption(
      moreOption('--all', 'print every figure of home, rooms and rules, and cautions in full'),
    )
    .addOption(doubtOption())
    .addOption(seedOption('--doubt'))
    .addOption(jsonOption())
    .addOption(csvOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance compare scenarios/terrace.yaml\n' +
        '  $ roombalance compare scenarios/terrace.yaml --rooms\n' +
        '  $ roombalance compare scenarios/terrace.yaml --plans as-lived,nineteen --json\n' +
        '  $ roombalance compare scenarios/terrace.yaml --csv > terrace.csv',
    )
    .action(async (path: string, options: CompareOptions) => {
      const { compare } = await import('../actions/compare.ts');
      await compare(io, path, options);
    });
}

/** One of the texts besides the usual one; only one of them is printed. */
function moreOption(flag: string, description: string): Option {
  const others = ['rooms', 'rules', 'all', 'json', 'csv'].filter((name) => `--${name}` !== flag);
  return new Option(flag, description).conflicts(others);
}
