import { expect, test } from 'vitest';
import { emptyStrip, strip } from '../../../src/report/page/strip.ts';

test('baseline and plan stand where their figures are on the scale, five pixels from its ends', () => {
  const at = (baseline: number, plan: number, look: 'better' | 'worse' | 'same') =>
    strip({ from: 20, to: 60, baseline, plan, look }, 110).markup;
  // 100 px from 20 to 60: 30 is a quarter, 60 the end.
  expect(at(30, 60, 'better')).toContain('class="base" d="M30.0 2V14"');
  expect(at(30, 60, 'better')).toContain('<circle cx="105.0"');
  expect(at(30, 40, 'worse')).toContain('<rect x="51.5"');
  expect(at(20, 20, 'same')).toContain('class="base" d="M5.0 2V14"');
});

test('a scale without a length draws all at its beginning', () => {
  expect(strip({ from: 3, to: 3, baseline: 3, plan: 3, look: 'same' }, 110).markup).toContain(
    'cx="5.0"',
  );
});

test('where else a plan may lie is a bar on the same scale', () => {
  const drawn = { from: 0, to: 100, baseline: 50, plan: 20, look: 'better' } as const;
  expect(strip(drawn, 110).markup).not.toContain('reach');
  expect(strip({ ...drawn, reach: [10, 40] }, 110).markup).toContain(
    '<path class="reach" d="M15.0 8H45.0"/>', // 5 px, and 100 px for 100
  );
});

test('a scale on which nothing is known yet takes the place of one', () => {
  const size = / width="110" height="16"/;
  expect(emptyStrip(110).markup).toMatch(size);
  expect(strip({ from: 0, to: 1, baseline: 0, plan: 1, look: 'same' }, 110).markup).toMatch(size);
  expect(emptyStrip(110).markup).not.toMatch(/circle|rect|base/);
});
