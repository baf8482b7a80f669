import { expect, test } from 'vitest';
import { strip } from '../../../src/report/page/strip.ts';

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
