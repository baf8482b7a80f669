import { expect, test } from 'vitest';
import { fewAtOnce } from '../../../src/cli/runs/few-at-once.ts';

test('no more than so many go on at once, in order, and a failure gives its place up', async () => {
  const begun: number[] = [];
  let going = 0;
  let most = 0;
  const work = fewAtOnce(3, async (k: number) => {
    begun.push(k);
    most = Math.max(most, ++going);
    await new Promise((done) => setTimeout(done, 1));
    going--;
    if (k % 4 === 0) throw new Error(`${k}`);
    return 2 * k;
  });
  const all = await Promise.allSettled(Array.from({ length: 10 }, (_, k) => work(k)));
  expect(begun).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
  expect(most).toBe(3);
  expect(all.map((one) => (one.status === 'fulfilled' ? one.value : 'failed'))).toEqual([
    ...['failed', 2, 4, 6, 'failed', 10, 12, 14, 'failed', 18],
  ]);
});
