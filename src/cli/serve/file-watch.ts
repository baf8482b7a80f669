import type { Io } from '../io.ts';

/** Sees which files are read, and waits until one of them is another. */
export interface FileWatch {
  /** A world whose reading is seen. */
  readonly io: Io;
  /** Forget what was read; what is read from now on is watched. */
  restart(): void;
  /** Names and texts of all that was read, as one text. */
  seen(): string;
  /** Whether a file that was read is another by now. */
  changed(): Promise<boolean>;
  /** Waits until one is, and whoever writes has finished, or until nobody looks any more. */
  next(): Promise<void>;
  /** Look no more. */
  stop(): void;
}

/**
 * Looks at files again and again, because that works on every disk, and whatever an editor does: it
 * may write a file in place, put another in its place, or take it away for a moment. A file counts
 * even where it could not be read, so that it is seen when it comes.
 */
export function createFileWatch(io: Io): FileWatch {
  const marks = new Map<string, Promise<string>>();
  const texts = new Map<string, string>();
  let stopped = false;
  const mark = (path: string): void => {
    if (!marks.has(path)) marks.set(path, io.fileMark(path));
  };
  const seeing: Pick<Io, 'readText'> = {
    readText: async (path, limit) => {
      mark(path);
      await marks.get(path); // of before reading, so that what is written meanwhile is a change
      const text = await io.readText(path, limit);
      texts.set(path, text);
      return text;
    },
  };
  const now = (paths: Iterable<string>): Promise<string[]> =>
    Promise.all([...paths].map((path) => io.fileMark(path)));
  const changed = async (): Promise<boolean> => {
    const read = [...marks]; // more may be read meanwhile
    const before = await Promise.all(read.map(([, own]) => own));
    const after = await now(read.map(([path]) => path));
    return after.some((own, k) => own !== before[k]);
  };
  const settled = async (): Promise<void> => {
    const paths = [...marks.keys()];
    const before = await now(paths);
    await io.pause(BETWEEN);
    const after = await now(paths);
    if (!stopped && after.some((own, k) => own !== before[k])) await settled();
  };
  return {
    io: Object.assign(Object.create(io) as Io, seeing),
    restart: () => {
      marks.clear();
      texts.clear();
    },
    seen: () => JSON.stringify([...texts].sort(([a], [b]) => (a < b ? -1 : 1))),
    changed,
    next: async () => {
      while (!stopped && !(await changed())) await io.pause(BETWEEN);
      await settled();
    },
    stop: () => {
      stopped = true;
    },
  };
}

/** Nobody sees so short a wait, and a dozen files are looked at in a hundredth of it. [ms] */
const BETWEEN = 120;
