import { type Command, InvalidArgumentError, Option } from 'commander';
import { UsageError } from './usage-error.ts';

/** `--set /pointer=value`, as often as wished, kept as typed. */
export function setOption(): Option {
  return new Option('--set <pointer=value>', 'change one value of the scenario (repeatable)')
    .argParser((words: string, before: readonly string[]) => [...before, setting(words)])
    .default([], 'nothing');
}

/** `--weather FILE`. */
export function weatherOption(): Option {
  return new Option('--weather <file>', "outdoor file to use in place of the scenario's");
}

/** `--weather FILE`, more than once for years that may come. */
export function weathersOption(): Option {
  return new Option(
    '--weather <file>',
    "outdoor file to use in place of the scenario's; repeated, further years for --doubt",
  ).argParser((file: string, before: readonly string[] = []) => [...before, file]);
}

/** `--doubt [N]`. */
export function doubtOption(): Option {
  return new Option(
    '--doubt [number]',
    'also draw all that was assumed or is doubtful so many times (100), and tell what it does',
  )
    .preset('100')
    .argParser((text) => {
      positiveNumber(text);
      return draws(text);
    })
    .conflicts(['csv', 'plot']);
}

/** How often to draw what is doubtful; 0 for never. */
export function draws(text: string): number {
  const number = wholeNumber(text);
  if (number <= MOST_DRAWS) return number;
  throw new InvalidArgumentError(`Give at most ${MOST_DRAWS}.`);
}

/** More tell nothing new. */
const MOST_DRAWS = 10_000;

/** `--seed N`, which decides what is drawn. */
export function seedOption(what: string): Option {
  return new Option('--seed <number>', `decides what ${what} draws`)
    .argParser(wholeNumber)
    .default(1);
}

/** How to go about weather services: without what was kept of them, or at other addresses. */
export function addServiceOptions(command: Command): Command {
  return command
    .option('--no-cache', 'fetch again, and keep nothing')
    .addOption(serviceOption('pvgis', 'ROOMBALANCE_PVGIS'))
    .addOption(serviceOption('archive', 'ROOMBALANCE_ARCHIVE'));
}

/** A whole number of 1 or more. */
export function positiveNumber(text: string): number {
  const number = wholeNumber(text);
  if (number > 0) return number;
  throw new InvalidArgumentError('Give a whole number of 1 or more.');
}

/** `--json`. */
export function jsonOption(): Option {
  return new Option('--json', 'print the figures as JSON');
}

/** `--csv`, which cannot be had together with `--json`. */
export function csvOption(): Option {
  return new Option('--csv', 'print the figures as CSV, a row for each home and room').conflicts(
    'json',
  );
}

/** `--plot ROOM`, a text of its own, so not together with `--json`. */
export function plotOption(): Option {
  return new Option(
    '--plot <room>',
    'print some days of a room as a picture in plain characters instead',
  ).conflicts('json');
}

/** A former name of an option: hidden, and refused with the new name. @param flags  with an optional value */
export function renamedOption(flags: string, now: string): Option {
  const [old = ''] = flags.split(' ');
  return new Option(flags)
    .hideHelp()
    .preset('')
    .argParser(() => {
      throw new UsageError(`error: option '${old}' is now called '${now}'`);
    });
}

/** A comma-separated list of names. */
export function names(text: string): string[] {
  const list = text.split(',').map((name) => name.trim());
  if (list.every((name) => name !== '') && new Set(list).size === list.length) return list;
  throw new InvalidArgumentError('Give different names with commas between, such as a,b.');
}

/** A whole number of 0 or more. */
export function wholeNumber(text: string): number {
  const number = Number(text);
  if (/^\d+$/.test(text) && Number.isSafeInteger(number)) return number;
  throw new InvalidArgumentError('Give a whole number of 0 or more.');
}

/** A day as YYYY-MM-DD that is in the calendar. */
export function date(text: string): string {
  const read = new Date(`${text}T00:00:00Z`);
  const same = !Number.isNaN(read.getTime()) && read.toISOString().slice(0, 10) === text;
  if (same) return text;
  throw new InvalidArgumentError('Give a day of the calendar, such as 2026-03-31.');
}

function setting(words: string): string {
  if (/^(?:\/[^=]+|"\/(?:[^"\\]|\\.)*")=/.test(words)) return words;
  throw new InvalidArgumentError('Give a place and a value, such as /heating/setpoint=19.');
}

/** `--against FILE`, as often as there are files of the log. */
export function againstOption(): Option {
  return new Option(
    '--against <file.csv>',
    'simulate the time of a log of your own sensors and print the run beside it (repeatable)',
  )
    .argParser((file: string, before: readonly string[] = []) => [...before, file])
    .conflicts(['trace', 'doubt', 'replay']);
}

/** `--page FILE`, pictures beside a log as a file. @param what  what is drawn */
export function pageOption(what: string): Option {
  return new Option('--page <file.html>', `also write a page with pictures of ${what}`);
}

/** `--replay FILE`, as often as there are files of the log. */
export function replayOption(): Option {
  return new Option(
    '--replay <file.csv>',
    "feed a log of your own sensors to the plan's rules and tell what they would have said (repeatable)",
  )
    .argParser((file: string, before: readonly string[] = []) => [...before, file])
    .conflicts(['plot', 'trace', 'doubt']);
}

/** What may be said beside log files on the command line. */
export interface BesideLog {
  readonly zone?: string;
  readonly dates?: 'day-first' | 'month-first' | 'year-first';
}

/** The options that say what log files themselves do not. */
export function addLogOptions(command: Command): Command {
  return command
    .option(
      '--zone <name>',
      "the logger's clock: a zone, UTC, or hours ahead such as +01:00",
      zoneName,
    )
    .addOption(
      new Option('--dates <order>', 'order of day and month in dates').choices([
        'day-first',
        'month-first',
        'year-first',
      ]),
    );
}

function zoneName(text: string): string {
  if (/^[A-Za-z_+-]+(\/[A-Za-z_+-]+)*\d{0,2}$|^[+-]\d\d(:?\d\d)?$/.test(text)) return text;
  throw new InvalidArgumentError('Give a zone such as Europe/London, UTC, or +01:00.');
}

const serviceOption = (name: string, variable: string): Option =>
  new Option(`--${name} <address>`, 'another address of that service')
    .env(variable)
    .argParser((text: string) => {
      if (URL.canParse(text)) return text.replace(/\/+$/, '');
      throw new InvalidArgumentError('Give an address such as https://example.org/api.');
    });
