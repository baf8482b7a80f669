/**
 * Everything a command may do to the world. Handed in, so that tests run without process or disk.
 *
 * Whatever goes wrong with a path is thrown as InputProblems, in words.
 */
export interface Io {
  /** Of this package. */
  readonly version: string;
  /** The whole text of a file of at most `limit` bytes, UTF-8, without byte order mark. */
  readText(path: string, limit: number): Promise<string>;
  /** Write a file whole or not at all. */
  writeWhole(path: string, text: string): Promise<void>;
  /** Figures: standard output. */
  out(text: string): void;
  /** Everything else: standard error. */
  err(text: string): void;
  /** Characters of a line of standard output. */
  readonly width: number;
  /** Standard error where that is a terminal, to draw progress on; null where it is not. */
  readonly terminal: NodeJS.WriteStream | null;
}
