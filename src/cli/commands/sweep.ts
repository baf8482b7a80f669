import { Command, InvalidArgumentError, Option } from 'commander';
import type { SweepOptions } from '../actions/sweep.ts';
import type { Io } from '../io.ts';
import { names, positiveNumber, seedOption, setOption, weatherOption } from '../options.ts';

/** `sweep <scenario>`: many values of many inputs, or many homes. */
export function sweepCommand(io: Io): Command {
  return new Command('sweep')
    .summary('run a scenario at many values, or many homes, into one file')
    .description(
      'Simulate a scenario at many values of its numbers, for some of its plans and for as many ' +
        'homes as a file lists, on all processors, and write the figures of every run. Prints ' +
        'which runs no other beats in money and hours outside the bands, and where that bends; of ' +
        'homes of a file, what each plan comes to over all of them.',
    )
    .argument('<scenario...>', 'scenario file (YAML); with --merge the files of all shards')
    .requiredOption('-o, --output <file>', 'file to write: .csv or .ndjson')
    .addOption(
      new Option(
        '--vary <pointer=values>',
        'a number and its values: a range, or a list (repeatable)',
      )
        .argParser((words: string, before: readonly string[]) => [...before, words])
        .default([], 'nothing'),
    )
    .option('--plans <a,b>', 'plans to run; the first where not given', names)
    .option('--sample <number>', 'so many settings spread evenly in place of all', positiveNumber)
    .addOption(seedOption('--sample'))
    .option('--homes <file.csv>', 'homes to run: a column "name", others headed by pointers')
    .option('--threads <number>', 'at most so many at once; as many as processors', positiveNumber)
    .option('--shard <i/n>', 'run only part i of n', shard)
    .addOption(
      new Option('--merge', 'put the files of all shards together instead').conflicts([
        ...['vary', 'homes', 'plans', 'sample', 'shard', 'resume', 'weather', 'set'],
      ]),
    )
    .option('--plot <file.svg>', 'also draw money against hours outside the bands')
    .option('--resume', 'go on with what an interrupted call has left')
    .addOption(setOption())
    .addOption(weatherOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance sweep scenarios/terrace.yaml -o warmth.csv \\\n' +
        '      --vary "/heating/setpoint=17 to 21 by 0.5" --plans as-lived,airing\n' +
        '  $ roombalance sweep scenarios/terrace.yaml -o spread.ndjson --sample 200 \\\n' +
        '      --vary "/heating/setpoint=16 to 22" --vary "/home/leakage/ach50=5 to 20"\n' +
        '  $ roombalance sweep scenarios/terrace.yaml --homes stock.csv -o all.csv --resume\n' +
        '  $ roombalance sweep --merge part-1.csv part-2.csv -o all.csv',
    )
    .action(async (files: string[], options: SweepOptions) => {
      const { sweep } = await import('../actions/sweep.ts');
      await sweep(io, files, options);
    });
}

function shard(text: string): readonly [number, number] {
  const [, part, parts] = /^(\d{1,9})\/(\d{1,9})$/.exec(text) ?? [];
  const [i, n] = [Number(part), Number(parts)];
  if (i >= 1 && i <= n) return [i, n];
  throw new InvalidArgumentError('Give a part and their number, such as 2/8.');
}
