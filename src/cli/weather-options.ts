import { type Command, InvalidArgumentError } from 'commander';

/** What may be said beside an outdoor file on the command line. */
export interface BesideFile {
  readonly map?: string;
  readonly title?: string;
  readonly latitude?: number;
  readonly longitude?: number;
  readonly elevation?: number;
  readonly longestGap?: number;
}

/** The options that say what the file itself does not. */
export function addWeatherOptions(command: Command): Command {
  return command
    .option('--map <map.yaml>', 'which column is what, for a CSV of no known layout')
    .option('--title <text>', 'place or station')
    .option('--latitude <degrees>', 'north positive', within(-90, 90))
    .option('--longitude <degrees>', 'east positive', within(-180, 180))
    .option('--elevation <metres>', 'above the sea', within(-450, 6000))
    .option('--longest-gap <hours>', 'longest gap to fill; 3 where not given', within(0, 48));
}

function within(low: number, high: number): (text: string) => number {
  return (text) => {
    const number = text.trim() === '' ? Number.NaN : Number(text);
    if (number >= low && number <= high) return number;
    throw new InvalidArgumentError(`Give a number from ${low} to ${high}.`);
  };
}
