import { describe, expect, test } from 'vitest';
import { chartsToSvg } from '../../../src/report/charts/to-svg.ts';
import { tradeOffChart } from '../../../src/report/charts/trade-off-chart.ts';
import { drawingsOf, PLAIN, type SampleNames, sampleCharts } from './sample.ts';
import { expectValid, isValid } from './vega-lite-schema.ts';

const MARKUP = '<script>alert("1")</script>&amp;\u0007\u202e';
const NASTY: SampleNames = {
  room: MARKUP,
  plans: [`${MARKUP} a`, `datum['x'] ]]> ${MARKUP}`],
  currency: '<b>£</b>',
  device: '"><img src=x onerror=alert(1)>',
};

const WIDTHS = [340, 720];
const KINDS = Object.keys(sampleCharts(PLAIN, 720));

type Drawn = Awaited<ReturnType<typeof drawAnew>>;
const drawn = new Map<string, Promise<Drawn>>();

/** Everything said while drawing, and the drawings; each document once. */
function draw(names: SampleNames, width: number, standalone = false): Promise<Drawn> {
  const key = JSON.stringify([names, width, standalone]);
  const before = drawn.get(key) ?? drawAnew(names, width, standalone);
  drawn.set(key, before);
  return before;
}

async function drawAnew(names: SampleNames, width: number, standalone = false) {
  const said: string[] = [];
  const warn = (text: string): void => void said.push(text);
  const drawings = drawingsOf(sampleCharts(names, width));
  return { said, svgs: await chartsToSvg(drawings, { standalone, warn }) };
}

describe.each(WIDTHS)('pictures %i px wide', (width) => {
  test.each(KINDS)('%s is valid by the official schema', (kind) => {
    expectValid(sampleCharts(PLAIN, width)[kind]!.spec);
    expectValid(sampleCharts(NASTY, width)[kind]!.spec);
  });

  test.each(KINDS)('%s is plain data', (kind) => {
    const { spec } = sampleCharts(PLAIN, width)[kind]!;
    expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
  });

  test('are drawn without a word of complaint, as wide as asked for', async () => {
    const { said, svgs } = await draw(PLAIN, width);
    expect(said).toEqual([]);
    for (const svg of svgs) {
      const wide = Number(/^<svg [^>]*width="([\d.]+)"/.exec(svg)?.[1]);
      expect(Math.abs(wide - width)).toBeLessThanOrEqual(1);
    }
  });

  test('are drawn with marks, a title and a description', async () => {
    const { svgs } = await draw(PLAIN, width);
    Object.entries(sampleCharts(PLAIN, width)).forEach(([id, chart], k) => {
      const svg = svgs[k]!;
      expect(svg.match(/<(?:path|line) /g)!.length).toBeGreaterThan(8);
      expect(svg).toContain(
        `role="img" aria-labelledby="${id}-title" aria-describedby="${id}-desc"`,
      );
      expect(svg).toContain(`<title id="${id}-title">${chart.title}</title>`);
      expect(svg).toContain(`<desc id="${id}-desc">`);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    });
  });

  test('have the same bytes each time', async () => {
    expect((await drawAnew(PLAIN, width)).svgs).toEqual((await draw(PLAIN, width)).svgs);
  });

  test.each([false, true])('what people typed stays text, as a file: %s', async (standalone) => {
    const { said, svgs } = await draw(NASTY, width, standalone);
    expect(said).toEqual([]);
    for (const svg of svgs) {
      expect(svg).not.toMatch(/<script|<img|<b>/);
      expect(svg).not.toContain('\u0007');
      expect(svg).not.toContain('\u202e');
      expect(tagsOf(svg)).toEqual(PICTURE_TAGS.filter((tag) => tagsOf(svg).includes(tag)));
    }
    expect(svgs[0]).toContain('&lt;script&gt;');
    expect(svgs[0]).toContain('\\u202e');
  });
});

test('names inside pictures are the document’s own', async () => {
  const { svgs } = await draw(PLAIN, 720);
  const ids = svgs.flatMap((svg) => [...svg.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]!));
  expect(new Set(ids).size).toBe(ids.length);
  for (const svg of svgs) {
    const own = [...svg.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]!);
    for (const [, used] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(own).toContain(used);
  }
});

test('coordinates have one decimal at most', async () => {
  for (const svg of (await draw(PLAIN, 720)).svgs) {
    for (const [, d] of svg.matchAll(/ (?:d|transform)="([^"]*)"/g)) {
      expect(d).not.toMatch(/\.\d\d/);
    }
  }
});

test('as a file a picture has its title written on it and stands on white', async () => {
  const [inPage, asFile] = [await draw(PLAIN, 720), await draw(PLAIN, 720, true)];
  expect(inPage.svgs[0]).not.toContain('#ffffff');
  expect(asFile.svgs[0]).toContain('fill="#ffffff"');
  const { title } = Object.values(sampleCharts(PLAIN, 720))[0]!;
  expect(asFile.svgs[0]!.split('</desc>')[1]).toContain(`>${title.slice(0, 30)}`);
});

test('an id that is no name, or used twice, is refused', async () => {
  const { chart } = drawingsOf(sampleCharts(PLAIN, 340))[0]!;
  await expect(chartsToSvg([{ id: 'a b', chart }])).rejects.toThrow(
    'chartsToSvg: an id is letters, digits and hyphens, got "a b"',
  );
  await expect(
    chartsToSvg([
      { id: 'a', chart },
      { id: 'a', chart },
    ]),
  ).rejects.toThrow('chartsToSvg: the id "a" is used twice');
});

test('the checks see what they are for', async () => {
  const { chart } = drawingsOf(sampleCharts(PLAIN, 340))[0]!;
  expect(isValid({ ...chart.spec, layer: [{ mark: 'lines', encoding: {} }] })).toBe(false);
  const said: string[] = [];
  const layer = [
    {
      data: { values: [{ a: 1 }] },
      mark: 'point',
      encoding: { x: { field: 'a', type: 'nominal', scale: { zero: true } } },
    },
  ];
  const odd = { ...chart, spec: { ...chart.spec, layer } };
  await chartsToSvg([{ id: 'odd', chart: odd }], { warn: (text) => said.push(text) });
  expect(said.length).toBeGreaterThan(0);
});

const tagsOf = (svg: string): string[] =>
  [...new Set([...svg.matchAll(/<([a-zA-Z]+)/g)].map((m) => m[1]!))].sort();

const PICTURE_TAGS = [
  ...['clipPath', 'defs', 'desc', 'g', 'line', 'path', 'rect', 'svg', 'text', 'title'],
];

test('no number below a picture of large sums is cut off at its edge', async () => {
  const money = [184_000, 242_000, 333_000];
  const plans = money.map((sum, k) => ({ name: `${k}`, money: sum, hours: 20 - k }));
  const [svg] = await chartsToSvg([
    { id: 'a', chart: tradeOffChart({ currency: 'JPY', plans }, 560) },
  ]);
  const NUMBER = /text-anchor="(\w+)" transform="translate\(([\d.]+),[^>]*>(\d+\s000)</gu;
  const edges = [...svg!.matchAll(NUMBER)].map(([, anchor, x, text]) => {
    const behind = { start: 1, middle: 0.5, end: 0 }[anchor!]!;
    return [text!.replace(/\s/u, ' '), Number(x) + behind * 6 * text!.length];
  });
  expect(edges.map(([text]) => text)).toContain('350 000');
  // 50 px stand before the plot.
  for (const [, edge] of edges) expect(edge).toBeLessThanOrEqual(560 - 50);
});
