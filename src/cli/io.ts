import type { Asking } from './asking.ts';
import type { LineFile } from './files/line-file.ts';
import type { Writer } from './files/neighbour.ts';
import type { Workers } from './runs/start-workers.ts';
import type { Site, SiteSetup } from './serve/site.ts';

/**
 * Everything a command may do to the world. Handed in, so that tests run without process or disk.
 *
 * Whatever goes wrong with a path is thrown as InputProblems, in words.
 */
export interface Io {
  /** Version of this package. */
  readonly version: string;
  /** The whole text of a file of at most `limit` bytes, UTF-8, without byte order mark. */
  readText(path: string, limit: number): Promise<string>;
  /** Write a file whole or not at all. @param text  in one or in pieces */
  writeWhole(path: string, text: string | AsyncIterable<string>): Promise<void>;
  /** Open a file of lines; see `openLineFile`. */
  openLines(path: string, how: 'read' | 'new' | 'go on'): Promise<LineFile>;
  /** Whether something of that name is there. */
  exists(path: string): Promise<boolean>;
  /** Names of what is in a folder. */
  listFolder(path: string): Promise<readonly string[]>;
  /** Remove a file, if it is there. */
  remove(path: string): Promise<void>;
  /** The folder that this package is in, with its weather and docs. */
  packageFolder(): Promise<string>;
  /** A file that comes with the program, by its name in the folder that the build fills. */
  readAsset(name: string): Promise<string>;
  /** Show a file or address to the person with whatever program their system has for it. */
  show(path: string): Promise<void>;
  /** Open pages to browsers of this machine; see `openSite`. */
  openSite(port: number, setup: SiteSetup): Promise<Site>;
  /** A word that nobody can guess. */
  randomToken(): Promise<string>;
  /** A text that is another whenever a file was written, replaced, removed or made. */
  fileMark(path: string): Promise<string>;
  /** Let some time pass. [ms] */
  pause(duration: number): Promise<void>;
  /** Wait until the person or the system ends the program. */
  untilEnded(): Promise<void>;
  /** This process as others see it. */
  self(): Promise<Writer>;
  /** Start threads for so many runs or more; null where all is to happen in this one. */
  startWorkers(runs: number): Promise<Workers | null>;
  /** The text that a public service answers with; the only way to the network. */
  get(address: string): Promise<string>;
  /** The folder that the system has for what can be fetched again. */
  cacheFolder(): Promise<string>;
  /** A way to ask the person; null where there is no terminal with a keyboard. */
  asking(): Promise<Asking | null>;
  /** Today, "YYYY-MM-DD". */
  today(): string;
  /** The function that gives the SHA-256 of a text in UTF-8, base64. */
  loadSha256(): Promise<(text: string) => string>;
  /** Make a folder, and those it stands in, where there is none. */
  makeFolder(path: string): Promise<void>;
  /** A text that two paths share exactly when they lead to the same file, through links too. */
  sharedName(path: string): Promise<string>;
  /** `sharedName` of standard output; null where nothing is kept of it. */
  outName(): Promise<string | null>;
  /** Whether `writeWhole` could write there now; it throws as that would. */
  requireWritable(path: string): Promise<void>;
  /** Figures: standard output. */
  out(text: string): void;
  /** Everything else: standard error. */
  err(text: string): void;
  /** Characters of a line of standard output. */
  readonly width: number;
  /** Standard error where that is a terminal, to draw progress on; null where it is not. */
  readonly terminal: NodeJS.WriteStream | null;
}
