import { expect, test } from 'vitest';
import type { Chart } from '../../../src/report/charts/chart.ts';
import { type Drawable, drawAlone, drawTwice } from '../../../src/report/page/draw-twice.ts';
import { figure } from '../../../src/report/page/figure.ts';

test('a picture that cannot be drawn keeps its figures, and the others are drawn', async () => {
  const drawn = await drawTwice(PICTURES);
  const [lost, whole] = drawn.map((one) => figure(one).markup);
  expect(lost).toContain('This picture could not be drawn. Its figures can be opened below.');
  expect(lost).not.toContain('<svg');
  expect(lost).toContain('Lost</h3>');
  expect(lost).toContain('den');
  expect(whole).not.toContain('could not be drawn');
  expect(whole!.match(/<svg/g)).toHaveLength(2);
});

test('nor does it take the others from a folder', async () => {
  const alone = await drawAlone(PICTURES);
  expect(alone.map(({ name }) => name)).toEqual(['picture-two']);
  expect(alone[0]!.svg).toContain('<svg');
});

const chart = (spec: Chart['spec'], title: string): Chart => ({
  ...{ title, description: title, spec },
  table: { headers: ['room', 'hours [h]'], rows: [['den', '7']] },
});
const BARS = {
  data: { values: [{ v: 1 }] },
  mark: 'bar',
  encoding: { x: { field: 'v', type: 'quantitative' } },
};
const PICTURES: readonly Drawable[] = [
  { id: 'picture-one', at: () => chart({ mark: 'no such mark' }, 'Lost') },
  { id: 'picture-two', at: () => chart(BARS, 'Drawn') },
];
