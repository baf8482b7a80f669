import { Command, InvalidArgumentError, Option } from 'commander';
import type { ServeOptions } from '../actions/serve.ts';
import type { Io } from '../io.ts';
import { addServiceOptions, wholeNumber } from '../options.ts';

/** `serve [scenario]`: a page that follows a scenario while it is written. */
export function serveCommand(io: Io): Command {
  const command = new Command('serve')
    .summary('show a scenario as a page that follows its file while you change it')
    .description(
      'Show the plans of a scenario as a page of this machine alone, which runs the home again in a ' +
        'second or two whenever the scenario, its weather or its prices are saved. Where there is no ' +
        'home.yaml yet, or with --new, the page asks the questions of `start` instead, and writes it. ' +
        'Ctrl-C ends it.',
    )
    .argument('[scenario]', 'scenario file (YAML); home.yaml where not given')
    .addOption(
      new Option('--port <number>', 'port of this machine; any free one where not given').argParser(
        port,
      ),
    )
    .option('--open', 'show the page')
    .option('--new <file.yaml>', 'answer questions in the page, and write this scenario');
  return addServiceOptions(command)
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance serve scenarios/terrace.yaml --open\n' +
        '  $ roombalance serve --new flat.yaml --open',
    )
    .action(async (path: string | undefined, options: ServeOptions) => {
      const { serve } = await import('../actions/serve.ts');
      await serve(io, path, options);
    });
}

function port(text: string): number {
  const number = wholeNumber(text);
  if (number >= 1 && number <= 65_535) return number;
  throw new InvalidArgumentError('Give a whole number from 1 to 65535.');
}
