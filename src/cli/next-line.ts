import type { Readable } from 'node:stream';

/**
 * The next line of a stream that is read as it is typed, without its end; null where there will be none.
 * What comes with it stays in the stream, which is paused meanwhile, so that it does not keep a process
 * waiting. A last line needs no end.
 */
export function nextLine(input: Readable): Promise<string | null> {
  if (input.readableEnded || input.destroyed) return Promise.resolve(null);
  return new Promise((done) => {
    let read = Buffer.alloc(0);
    const finish = (line: string | null): void => {
      input.off('data', take).off('end', end).off('close', end).off('error', end);
      input.pause();
      done(line);
    };
    const end = (): void => finish(read.length === 0 ? null : read.toString('utf8'));
    const take = (piece: Buffer | string): void => {
      read = Buffer.concat([read, Buffer.from(piece)]);
      const at = read.indexOf('\n');
      if (at < 0) return;
      finish(read.subarray(0, at).toString('utf8'));
      if (at + 1 < read.length) input.unshift(read.subarray(at + 1));
    };
    input.on('data', take).on('end', end).on('close', end).on('error', end).resume();
  });
}
