import type { Argument, Command, Option } from 'commander';

/** A word that may stand in a line, and what it is. */
export interface Candidate {
  readonly word: string;
  readonly about: string;
}

/**
 * What may stand in place of the last word of a line: words, or names of the scenario in it. No words
 * where a file or something of the person's own is meant.
 *
 * Everything follows from the commands as commander knows them, so nothing has to be kept in step.
 */
export function candidatesOf(
  program: Command,
  words: readonly string[],
): readonly Candidate[] | 'plans' | 'rooms' {
  const { command, waiting, places, optionsOver } = placeOf(program, words.slice(0, -1));
  if (waiting !== null) return valuesOf(waiting);
  const typed = words.at(-1) ?? '';
  const help = command.createHelp();
  if (typed.startsWith('-') && !optionsOver) {
    return help.visibleOptions(command).map((option) => ({
      word: option.long ?? option.short ?? '',
      about: plain(option.description),
    }));
  }
  if (places === 0 && command.commands.length > 0) {
    return help.visibleCommands(command).map((each) => ({
      word: each.name(),
      about: plain(help.subcommandDescription(each)),
    }));
  }
  return choicesOf(argumentAt(command.registeredArguments, places));
}

/** Where a line has got to: in which command, behind how many arguments, or an option that waits for its value. */
function placeOf(program: Command, words: readonly string[]) {
  let command = program;
  let waiting: Option | null = null;
  let places = 0;
  let optionsOver = false;
  for (const word of words) {
    if (waiting !== null) waiting = null;
    else if (word === '--') optionsOver = true;
    else if (word.startsWith('-') && !optionsOver) waiting = waitingOption(command, word);
    else if (word !== 'help' || places > 0 || command.commands.length === 0) {
      // "help" is followed by the words of a command, as if it were not there.
      const next = places === 0 ? commandOf(command, word) : undefined;
      if (next === undefined) places++;
      else command = next;
    }
  }
  return { command, waiting, places, optionsOver };
}

const commandOf = (command: Command, word: string): Command | undefined =>
  command.commands.find((each) => each.name() === word || each.aliases().includes(word));

/** The option of a word, if the next word is its value. */
function waitingOption(command: Command, word: string): Option | null {
  const option = command.options.find(({ long, short }) => word === long || word === short);
  return option?.required === true || option?.optional === true ? option : null;
}

function valuesOf(option: Option): readonly Candidate[] | 'plans' | 'rooms' {
  if (PLAN.test(option.flags)) return 'plans';
  return ROOM.test(option.flags) ? 'rooms' : choicesOf(option);
}

/** Options whose value is a name, or names, out of the scenario. */
const PLAN = /--(?:plans?|about) |[<[]plan[>\]]/;
const ROOM = /--room |[<[]room[>\]]/;

const argumentAt = (all: readonly Argument[], place: number): Argument | undefined =>
  all[place] ?? (all.at(-1)?.variadic === true ? all.at(-1) : undefined);

const choicesOf = (of: Option | Argument | undefined): Candidate[] =>
  (of?.argChoices ?? []).map((word) => ({ word, about: '' }));

/** Words on one line. */
const plain = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();
