import { expect, test } from 'vitest';
import type { HomeFit } from '../../../src/fit/fit-home.ts';
import { fitPage } from '../../../src/report/page/fit-page.ts';
import { sha256 } from './cottage.ts';
import { all, readMarkup, textOf } from './read-markup.ts';

const parameter = (name: string, told: 'yes' | 'together' | 'no') => ({
  adjustable: { name, kind: 'heat loss', unit: '', value: 1, before: 1, places: [] },
  ...{ value: 2, low: 1, high: 3, told, mostLike: null, place: 0 },
});

/** The first cells of its tables, and its paragraphs. */
async function pageOf(
  parameters: readonly ReturnType<typeof parameter>[],
  reliable: boolean,
): Promise<{ rows: string[]; said: string }> {
  const fit = {
    stages: [{ group: 'heat', channels: [], fit: { parameters } }],
    ...{ title: 'Home', runs: 9, foreseen: [], cautions: [], logged: [], typicalWeather: false },
    ...{ stated: [{ kind: 'U-value', name: 'wall U-value', words: 'wall U-value (1.5 W/m2K)' }] },
    ...{ skilled: reliable, reliable, division: { start: 0, hours: 1000, withheld: 800 } },
  } as unknown as HomeFit;
  const page = readMarkup(await fitPage(fit, { invented: true, version: '1.2.3', sha256 }));
  const cells = all(page, 'tbody').flatMap((body) => all(body, 'th'));
  return { rows: cells.map(textOf), said: all(page, 'p').map(textOf).join('\n') };
}

test('values that are told by themselves have a table, and what their ranges rest on', async () => {
  const [own, tied, not] = [
    parameter('loss', 'yes'),
    parameter('sun', 'together'),
    parameter('heat', 'no'),
  ];
  const { rows, said } = await pageOf([own, tied, not], true);
  expect(rows).toEqual(['loss']);
  expect(said).toContain('Ranges hold as far as what the scenario states is so: wall U-value');
  // Nothing told by itself has no range that rests on anything.
  expect((await pageOf([tied, not], true)).said).not.toContain('Ranges hold');
  const wrong = await pageOf([own, tied, not], false);
  expect(wrong.rows).toEqual(['loss', 'sun']);
  expect(wrong.said).not.toContain('Ranges hold');
});
