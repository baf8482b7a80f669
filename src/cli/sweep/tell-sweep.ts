import { stockText } from '../../report/sweep/stock-text.ts';
import { sweepText } from '../../report/sweep/sweep-text.ts';
import { frontier, knee } from '../../studies/sweep/frontier.ts';
import type { Io } from '../io.ts';
import { UsageError } from '../usage-error.ts';
import type { SweepPart } from './sweep-book.ts';
import type { NamedBargain } from './sweep-part-file.ts';

/** What a file that was written holds. */
interface Written {
  readonly file: string;
  readonly shard: SweepPart['shard'];
  readonly runs: number;
  readonly failed: number;
  readonly currency: string;
  /** Runs to set against each other; none where they are of a part. */
  readonly bargains: readonly NamedBargain[];
}

/** Say what came of a sweep: the frontier of one home, or what plans come to over a stock. */
export async function tellSweep(
  io: Io,
  { bargains, ...written }: Written,
  plot: string | undefined,
): Promise<void> {
  const stock = bargains.some(({ home }) => home !== '');
  const front = stock ? [] : frontier(bargains);
  const bend = knee(front);
  if (plot !== undefined) {
    if (stock) throw new UsageError('error: --plot sets all runs of one home against each other');
    const { frontierPicture } = await import('../../report/sweep/frontier-picture.ts');
    const { currency } = written;
    const at = bend?.at ?? null;
    await io.writeWhole(plot, await frontierPicture({ currency, bargains, front, bend: at }));
  }
  const text = sweepText({ ...written, frontier: front, knee: bend }, io.width);
  const plans = stock ? `\n\n${stockText(bargains, written.currency, io.width)}` : '';
  io.out(`${text}${plans}\n`);
}
