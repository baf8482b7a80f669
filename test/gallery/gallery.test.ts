import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { chartsToSvg } from '../../src/report/charts/to-svg.ts';
import { expectShown } from '../reference/shown.ts';
import { GALLERY } from './gallery.ts';
import { runGallery } from './run-gallery.ts';

const PAGE = 'docs/gallery.md';
const page = readFileSync(PAGE, 'utf8');
/** An answer with the marks around it. */
const shownOf = (home: string): string =>
  new RegExp(`<!-- answer: ${home} -->[\\s\\S]*?<!-- end -->`).exec(page)?.[0] ?? 'no answer';

test('every scenario of the gallery is shown, and every picture there is drawn by it', () => {
  const homes = GALLERY.map(({ home }) => home).sort();
  expect(readdirSync('scenarios/gallery').sort()).toEqual(homes.map((home) => `${home}.yaml`));
  expect(readdirSync('docs/gallery').sort()).toEqual(homes.map((home) => `${home}.svg`));
  for (const home of homes) {
    expect(page).toContain(`(../scenarios/gallery/${home}.yaml)`);
    expect(page).toContain(`(gallery/${home}.svg)`);
    expect(page).toContain(`roombalance compare scenarios/gallery/${home}.yaml`);
  }
});

describe.each(GALLERY)('$home', ({ home, picture, answer, holds }) => {
  const ran = once(() => runGallery(home));

  test('what its words say holds', () => {
    const held = Object.entries(holds(ran()));
    expect(held.filter(([, is]) => !is).map(([words]) => words)).toEqual([]);
    expect(held.length).toBeGreaterThan(2);
  });

  test('its answer stands in the page, three sentences with the figures of the run', () => {
    const sentences = answer(ran());
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].*\d.*\.$/);
    const now = [`<!-- answer: ${home} -->`, ...sentences, '<!-- end -->'].join('\n');
    expectShown(PAGE, shownOf(home), now);
  });

  test('its picture is the one that the program draws', async () => {
    const warnings: string[] = [];
    const [svg = ''] = await chartsToSvg([{ chart: picture(ran()), id: home }], {
      standalone: true,
      warn: (text) => warnings.push(text),
    });
    expect(warnings).toEqual([]);
    const file = `docs/gallery/${home}.svg`;
    if (process.env['UPDATE_VALIDATION'] === '1') writeFileSync(file, `${svg}\n`);
    expect(readFileSync(file, 'utf8'), 'run "npm run validation" to draw it anew').toBe(`${svg}\n`);
  });
});

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
