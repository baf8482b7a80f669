import type { Chart } from '../charts/chart.ts';
import { chartsToSvg, drawCharts } from '../charts/to-svg.ts';
import type { DrawnTwice } from './figure.ts';
import type { PictureId } from './picture-ids.ts';

/** A picture that can be drawn as wide as asked for. */
export interface Drawable {
  readonly id: PictureId;
  readonly at: (width: number) => Chart;
}

/**
 * All pictures of a page, each as wide as a page and as a phone. One that cannot be drawn takes no other
 * with it, nor the runs behind them: its figures stay.
 */
export async function drawTwice(pictures: readonly Drawable[]): Promise<DrawnTwice[]> {
  const charts = pictures.map(({ at }) => [at(WIDE), at(NARROW)] as const);
  const drawn = await drawCharts(
    pictures.flatMap(({ id }, k) => [
      { id: `${id}-wide`, chart: charts[k]![0] },
      { id: `${id}-narrow`, chart: charts[k]![1] },
    ]),
    { without: () => {} },
  );
  return pictures.map(({ id }, k) => ({
    ...{ id, chart: charts[k]![0], wide: drawn[2 * k]!, narrow: drawn[2 * k + 1]! },
  }));
}

/** Each picture as a file of its own, its title in it. */
export async function drawAlone(
  pictures: readonly Drawable[],
): Promise<{ readonly name: string; readonly svg: string }[]> {
  const svgs = await chartsToSvg(
    pictures.map(({ id, at }) => ({ id, chart: at(WIDE) })),
    { standalone: true, without: () => {} },
  );
  return pictures.map(({ id }, k) => ({ name: id, svg: svgs[k]! })).filter(({ svg }) => svg !== '');
}

/** [px] */
const WIDE = 576;
const NARROW = 328;
