import { expect, test } from 'vitest';
import type { Chart } from '../../../src/report/charts/chart.ts';
import { drawTwice } from '../../../src/report/page/draw-twice.ts';
import { figure } from '../../../src/report/page/figure.ts';

test('a picture that cannot be drawn keeps its figures, and the others are drawn', async () => {
  const chart = (spec: Chart['spec'], title: string): Chart => ({
    ...{ title, description: title, spec },
    table: { headers: ['room', 'hours [h]'], rows: [['den', '7']] },
  });
  const bars = {
    data: { values: [{ v: 1 }] },
    mark: 'bar',
    encoding: { x: { field: 'v', type: 'quantitative' } },
  };
  const drawn = await drawTwice([
    { id: 'picture-one', at: () => chart({ mark: 'no such mark' }, 'Lost') },
    { id: 'picture-two', at: () => chart(bars, 'Drawn') },
  ]);
  const [lost, whole] = drawn.map((one) => figure(one).markup);
  expect(lost).toContain('This picture could not be drawn. Its figures can be opened below.');
  expect(lost).not.toContain('<svg');
  expect(lost).toContain('Lost</h3>');
  expect(lost).toContain('den');
  expect(whole).not.toContain('could not be drawn');
  expect(whole!.match(/<svg/g)).toHaveLength(2);
});
