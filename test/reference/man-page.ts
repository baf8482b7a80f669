import type { Argument, Command, Option } from 'commander';
import { programOf } from '../../src/cli/main.ts';
import { fakeIo } from '../cli/fake-io.ts';
import { shownCommands } from './commands-page.ts';

/** The manual page in the macros of man(7), from the commands themselves. */
export function manPage(version: string): string {
  const program = programOf(fakeIo().io);
  const [first = ''] = program.description().split(' (');
  return [
    `.TH ROOMBALANCE 1 "" "roombalance ${version}" "User Commands"`,
    '.SH NAME',
    `roombalance \\- ${escaped(lowered(first))}`,
    '.SH SYNOPSIS',
    '.B roombalance',
    '.I command',
    '.RI [ options ]',
    '.SH DESCRIPTION',
    escaped(program.description().replaceAll('\n', ' ')),
    '.SH COMMANDS',
    'Each command has an option \\-\\-help, which also shows examples.',
    ...shownCommands()
      .filter(({ command }) => command.commands.length === 0)
      .flatMap(({ words, command }) => section(words, command)),
    '.SH EXIT STATUS',
    '0 done, 1 usage error, 2 wrong input, 3 a check of the program\\(aqs own failed.',
    '',
  ].join('\n');
}

function section(words: readonly string[], command: Command): string[] {
  const help = command.createHelp();
  const places = command.registeredArguments.map(placeWords).join(' ');
  return [
    `.SS ${escaped([...words, places, '[options]'].filter((word) => word !== '').join(' '))}`,
    ...paragraphs(command.description()),
    ...help
      .visibleArguments(command)
      .flatMap((each) => [
        '.TP',
        `.I ${escaped(each.name())}`,
        escaped(help.argumentDescription(each)),
      ]),
    ...help
      .visibleOptions(command)
      .filter(({ long }) => long !== '--help')
      .flatMap((each: Option) => [
        '.TP',
        `.B ${escaped(each.flags)}`,
        escaped(help.optionDescription(each)),
      ]),
  ];
}

const placeWords = (each: Argument): string => {
  const name = `${each.name()}${each.variadic ? '...' : ''}`;
  return each.required ? `<${name}>` : `[${name}]`;
};

/** Text with its blank lines as paragraphs, and lines that stand apart kept apart. */
const paragraphs = (text: string): string[] =>
  text
    .split('\n\n')
    .flatMap((part, k) => [
      ...(k === 0 ? [] : ['.PP', '.nf']),
      ...part.split('\n').map(escaped),
      ...(k === 0 ? [] : ['.fi']),
    ]);

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Text that says itself: no backslash, hyphen or quote at the start of a line is a command. */
const escaped = (text: string): string =>
  text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replaceAll("'", '\\(aq')
    .replace(/^\./, '\\&.');
