import { expect, test } from 'vitest';
import { html, raw } from '../../../src/report/page/html.ts';
import { keepNames } from '../../../src/report/page/keep-names.ts';

const kept = (markup: string, ...names: string[]): string => keepNames(raw(markup), names).markup;
const NAME = '<span class="name">as-lived</span>';

test('a name with hyphens is one word wherever it stands as text', () => {
  expect(kept('<p>as-lived, or <b>as-lived</b></p>', 'as-lived')).toBe(
    `<p>${NAME}, or <b>${NAME}</b></p>`,
  );
  expect(kept('<p>nineteen</p>', 'nineteen', 'as-lived')).toBe('<p>nineteen</p>');
});

test('neither a part of a longer word, nor a name within a longer one', () => {
  const told = kept('<p>as-lived-in, bas-lived, as-lived-too</p>', 'as-lived', 'as-lived-too');
  expect(told).toBe('<p>as-lived-in, bas-lived, <span class="name">as-lived-too</span></p>');
  const two = kept('as-lived too', 'as-lived', 'as-lived too');
  expect(two).toBe('<span class="name">as-lived too</span>');
});

test.each([
  '<p title="as-lived">x</p>',
  '<svg><text>as-lived</text></svg>',
  '<select><option>as-lived</option></select>',
  '<script>as-lived</script>',
])('not in attributes, drawings and what takes no marks: %s', (markup) => {
  expect(kept(markup, 'as-lived')).toBe(markup);
});

test('what is too long for a phone may break there, what is too long for a column anywhere', () => {
  const lengthy = 'blinds-by-day-and-night'; // 23
  expect(kept(lengthy, lengthy)).toBe(`<span class="name lengthy">${lengthy}</span>`);
  expect(kept(`${lengthy}-long`, `${lengthy}-long`)).toBe(`${lengthy}-long`);
  expect(kept(`${lengthy}s`, `${lengthy}s`)).toContain('name lengthy'); // 24
  expect(kept(`${lengthy}ss`, `${lengthy}ss`)).toBe(`${lengthy}ss`);
  const short = 'dry-bedrooms-gated'; // 18
  expect(kept(short, short)).toBe(`<span class="name">${short}</span>`);
  expect(kept(`${short}s`, `${short}s`)).toContain('name lengthy');
});

test('names like markup or patterns are text', () => {
  const name = '<b>-(.*)&"';
  const { markup } = keepNames(html`<p>${name}</p>`, [name]);
  expect(markup).toBe('<p><span class="name">&lt;b&gt;-(.*)&amp;&quot;</span></p>');
});
