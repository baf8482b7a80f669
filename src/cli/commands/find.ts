import { Argument, Command, InvalidArgumentError } from 'commander';
import type { FindOptions, Searched } from '../actions/find.ts';
import type { Io } from '../io.ts';
import { jsonOption, setOption, weatherOption } from '../options.ts';

/** `find <what> <scenario>`: the value of one thing that does what is asked. */
export function findCommand(io: Io): Command {
  return new Command('find')
    .summary('find the setting, device or routine that just does it')
    .description(
      'Run a plan again and again until the value that just does what is asked is enclosed; ' +
        'that there is none is an answer too.\n\n' +
        WHAT.map(([name, does]) => `${name.padEnd(14)}${does}`).join('\n'),
    )
    .addArgument(new Argument('<what>', 'what to find').choices(WHAT.map(([name]) => name)))
    .argument('<scenario>', 'scenario file (YAML)')
    .option('--plan <name>', 'plan to change; the first of the scenario where not given')
    .option(
      '--room <name>',
      'room that is meant; if none, the dampest, for outdoor air the stuffiest, for setpoint and airing all',
    )
    .option('--hours <number>', 'hours of the period that may be worse', amount, 100)
    .option('--target <percent>', 'humidity that a dehumidifier is to hold', amount, 60)
    .option('--money <number>', 'what outdoor air may cost a year', amount, 50)
    .addOption(setOption())
    .addOption(weatherOption())
    .addOption(jsonOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance find setpoint scenarios/flat.yaml --hours 500\n' +
        '  $ roombalance find dehumidifier scenarios/terrace.yaml --room "main bedroom"\n' +
        '  $ roombalance find outdoor-air scenarios/flat.yaml --hours 50 --money 80',
    )
    .action(async (what: Searched, path: string, options: FindOptions, command: Command) => {
      refuseUnused(what, command);
      const { find } = await import('../actions/find.ts');
      await find(io, what, path, options);
    });
}

/** Ends with a usage error for an option that the search asked for would not look at. */
function refuseUnused(what: Searched, command: Command): void {
  for (const [option, searches] of USED_BY) {
    const given = command.getOptionValueSource(option) === 'cli';
    if (!given || searches.includes(what)) continue;
    const whose = searches.map((search) => `find ${search}`).join(', ');
    command.error(`error: option '--${option}' does nothing for find ${what}; it is for ${whose}`);
  }
}

const USED_BY: readonly (readonly [option: string, searches: readonly Searched[]])[] = [
  ['hours', ['setpoint', 'airing', 'outdoor-air']],
  ['target', ['dehumidifier']],
  ['money', ['outdoor-air']],
];

const WHAT: readonly (readonly [name: Searched, does: string])[] = [
  ['setpoint', 'the lowest that keeps every cold spot under 80 %, but for --hours'],
  ['heat-or-dry', 'which is cheaper at the same risk of mould, and at which prices'],
  ['dehumidifier', 'the smallest that holds --target in the worst week'],
  ['airing', 'the cheapest routine that keeps air fresh, but for --hours'],
  ['outdoor-air', 'how much makes a room neither stuffy (--hours) nor dear (--money)'],
];

function amount(text: string): number {
  const number = Number(text);
  if (text.trim() !== '' && Number.isFinite(number) && number >= 0) return number;
  throw new InvalidArgumentError('Give a number of 0 or more.');
}
