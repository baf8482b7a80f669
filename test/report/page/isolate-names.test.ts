import { expect, test } from 'vitest';
import { html, raw } from '../../../src/report/page/html.ts';
import { isolateNames } from '../../../src/report/page/isolate-names.ts';

const HOUSE = 'بيت قديم في المدينة'; // an old house in the town
const STUDY = 'חדר עבודה'; // study

test.each([
  [HOUSE, `<bdi>${HOUSE}</bdi>`],
  [`<b>${HOUSE}.</b> 42 days`, `<b><bdi>${HOUSE}</bdi>.</b> 42 days`],
  [`too cold (${STUDY} 9.7 h)`, `too cold (<bdi>${STUDY}</bdi> 9.7 h)`],
  [`${STUDY}, ${HOUSE}`, `<bdi>${STUDY}</bdi>, <bdi>${HOUSE}</bdi>`],
  ['Küche, 居間, Δωμάτιο: 9.7 h', 'Küche, 居間, Δωμάτιο: 9.7 h'],
])('%s', (markup, isolated) => {
  expect(isolateNames(raw(markup)).markup).toBe(isolated);
});

test('names in attributes, drawings and lists to choose from stay as they are', () => {
  const page = html`<p title="${HOUSE}">a</p><svg><text>${HOUSE}</text></svg><select><option>${HOUSE}</option></select><script>"${HOUSE}"</script>`;
  expect(isolateNames(page).markup).toBe(page.markup);
});
