import { parentPort, Worker, workerData } from 'node:worker_threads';
import { busyHomes } from './bench-homes.ts';
import { type Build, importSimulate } from './builds.ts';

/**
 * Bytes that a build puts on the heap in a year of the busy home with rules, least first. [bytes a step]
 *
 * Measured in several threads, each after years in which everything is compiled: what is put on the
 * heap depends on what the compiler inlines, and it does not always choose alike. What typed arrays
 * hold lies outside the heap.
 */
export async function bytesPerStep({ file }: Build): Promise<number[]> {
  const measured: number[] = [];
  for (let thread = 0; thread < THREADS; thread++) measured.push(await inThread(file));
  return measured.sort((a, b) => a - b);
}

function inThread(file: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL(import.meta.url), { workerData: file });
    worker.once('message', resolve).once('error', reject);
  });
}

/** Mean growth of the heap over the days of a year in which nothing was collected. [bytes] */
function meanDailyGrowth(simulate: Build['simulate']): number {
  const growth: number[] = [];
  let before = Number.POSITIVE_INFINITY;
  simulate(busyHomes().rules.input, [
    () => {
      growth.push(process.memoryUsage().heapUsed - before);
      before = process.memoryUsage().heapUsed;
    },
  ]);
  // A collection frees the garbage of several days, so that the heap is smaller after such a day.
  const uncollected = growth.filter((bytes) => bytes >= 0);
  if (uncollected.length < growth.length / 2) throw new Error('garbage was collected most days');
  return uncollected.reduce((sum, bytes) => sum + bytes, 0) / uncollected.length;
}

const THREADS = 3;
const WARM_YEARS = 4;
const STEPS_A_DAY = 144;

if (parentPort !== null) {
  const simulate = await importSimulate(workerData);
  for (let year = 0; year < WARM_YEARS; year++) meanDailyGrowth(simulate);
  parentPort.postMessage(meanDailyGrowth(simulate) / STEPS_A_DAY);
}
