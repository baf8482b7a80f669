import type { Options, SingleBar } from 'cli-progress';

/** A bar on a terminal, which its caller begins; `options` are what it has of its own. */
export async function barOn(terminal: NodeJS.WritableStream, options: Options): Promise<SingleBar> {
  const { default: cliProgress } = await import('cli-progress');
  return new cliProgress.SingleBar({
    stream: terminal,
    barCompleteChar: '#',
    barIncompleteChar: '.',
    linewrap: true, // leaves the terminal as it is, should the program be ended meanwhile
    ...options,
  });
}
