import { Command } from 'commander';
import type { CheckOptions } from '../actions/check.ts';
import type { Io } from '../io.ts';
import { jsonOption, setOption, weatherOption } from '../options.ts';

/** `check <scenario>`: read everything, run nothing. */
export function checkCommand(io: Io): Command {
  return new Command('check')
    .summary('read a scenario and its weather, run nothing')
    .description(
      'Read a scenario, its weather and every plan, and list what is wrong, what is assumed ' +
        'and what to be careful about. Runs nothing.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .addOption(setOption())
    .addOption(weatherOption())
    .addOption(jsonOption())
    .addHelpText('after', '\nExample:\n  $ roombalance check scenarios/terrace.yaml')
    .action(async (path: string, options: CheckOptions) => {
      const { check } = await import('../actions/check.ts');
      await check(io, path, options);
    });
}
