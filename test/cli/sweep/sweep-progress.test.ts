import { Writable } from 'node:stream';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { startSweepProgress } from '../../../src/cli/sweep/sweep-progress.ts';
import { fakeIo } from '../fake-io.ts';

beforeEach(() => void vi.useFakeTimers({ now: 0 }));
afterEach(() => void vi.useRealTimers());

/** A terminal that keeps what is written to it. */
function terminal() {
  const shown = { text: '' };
  const stream = new Writable({
    write: (piece, _, done) => {
      shown.text += String(piece);
      done();
    },
  });
  const nothing = () => true;
  const own = {
    isTTY: true,
    columns: 100,
    clearLine: nothing,
    cursorTo: nothing,
    moveCursor: nothing,
  };
  return { shown, stream: Object.assign(stream, own) as unknown as NodeJS.WriteStream };
}

test('the time left goes by the runs of this call alone', async () => {
  const { shown, stream } = terminal();
  // Forty of a hundred were made before; each further one takes two seconds.
  const progress = await startSweepProgress({ ...fakeIo().io, terminal: stream }, 100, 40);
  for (let run = 0; run < 10; run++) {
    vi.advanceTimersByTime(2000);
    progress.done();
  }
  vi.advanceTimersByTime(200);
  progress.stop();
  const last = shown.text.split('#').at(-1)!;
  expect(last).toContain('50 of 100 runs done');
  const [, minutes = '0', seconds = '0'] = /(?:(\d+)m)?(\d+)s left/.exec(last) ?? [];
  // Fifty left at two seconds each; six runs' worth either way for what is rounded and not yet counted.
  expect(Math.abs(60 * Number(minutes) + Number(seconds) - 100)).toBeLessThanOrEqual(12);
});

test('where nobody looks nothing is shown', async () => {
  const progress = await startSweepProgress(fakeIo().io, 100, 0);
  progress.done();
  progress.stop();
});
