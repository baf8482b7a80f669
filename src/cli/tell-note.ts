import type { Io } from './io.ts';

/** Say something beside the figures, on standard error: not wrong, but to be known. */
export async function tellNote(io: Io, words: string): Promise<void> {
  const { wrapText } = await import('../report/tables/wrap-text.ts');
  io.err(`${wrapText(words, 'note: ', io.width)}\n`);
}
