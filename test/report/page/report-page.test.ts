import { afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { airPairs } from '../../../src/report/air-pairs.ts';
import { answerSection } from '../../../src/report/page/answer-section.ts';
import { assumptionsSection } from '../../../src/report/page/assumptions-section.ts';
import { doubtsSection } from '../../../src/report/page/doubts-section.ts';
import { html } from '../../../src/report/page/html.ts';
import { methodSection } from '../../../src/report/page/method-section.ts';
import { unpackPictures } from '../../../src/report/page/packed-pictures.ts';
import { pageFrame } from '../../../src/report/page/page-frame.ts';
import { pictureDataOf } from '../../../src/report/page/picture-data-of.ts';
import { plansSection } from '../../../src/report/page/plans-section.ts';
import { reportPage } from '../../../src/report/page/report-page.ts';
import { turningPoints } from '../../../src/report/page/turning-points.ts';
import type { Flip } from '../../../src/studies/doubts/flip.ts';
import type { ReportStudy } from '../../../src/studies/report-study.ts';
import { signedWithMinus } from '../../../src/units/minus-sign.ts';
import { COTTAGE, DRY_PLAN, inputOf, sha256, studyOf } from './cottage.ts';
import { all, byId, type Element, readMarkup, tableOf, textOf } from './read-markup.ts';

const TEXT = COTTAGE + DRY_PLAN;
let study: ReportStudy;
let page = '';
let read: Element;

beforeAll(async () => {
  study = await studyOf(TEXT, { samples: 5 });
  ({ page } = await reportPage(inputOf(study, TEXT)));
  read = readMarkup(page);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllEnvs();
});

const section = (id: string): string => textOf(byId(read, id));
const sectionsOf = (markup: Element): string[] =>
  all(markup, 'section').map(({ attributes }) => attributes['id']!);

describe('the page', () => {
  test('has its sections in order, each with a heading that names it and a way to it', () => {
    expect(sectionsOf(read)).toEqual([
      ...['answer', 'plans', 'purchase', 'pictures', 'air', 'doubts'],
      ...['cautions', 'assumptions', 'method'],
    ]);
    const links = all(all(read, 'nav')[0]!, 'a');
    expect(links.map(({ attributes }) => attributes['href'])).toEqual(
      sectionsOf(read).map((id) => `#${id}`),
    );
    for (const { attributes, children } of all(read, 'section')) {
      expect(attributes['aria-labelledby']).toBe(`${attributes['id']}-title`);
      const [heading] = all({ name: '', attributes: {}, children }, 'h2');
      expect(heading!.attributes['id']).toBe(`${attributes['id']}-title`);
      const link = links.find((one) => one.attributes['href'] === `#${attributes['id']}`);
      expect(textOf(link!)).toBe(textOf(heading!));
    }
  });

  test('tells where fresh air comes in, in words and by every pair of rooms worth a line', () => {
    const { measures } = study.options[0]!;
    const sentences = measures.notices.filter(({ id }) => id.startsWith('fresh-air-'));
    expect(sentences.length).toBeGreaterThan(0);
    for (const { text } of sentences) {
      expect(section('air')).toContain(text);
      expect(section('cautions')).not.toContain(text);
    }
    const told = airPairs(measures).told.map(({ ends, forth, back }) => [
      ...[...ends, forth.toFixed(1), back.toFixed(1)],
    ]);
    expect(told.length).toBeGreaterThan(0);
    const rows = tableOf(byId(read, 'air'), /Air from room to room/);
    expect(rows.slice(1)).toEqual(told);
  });

  test('leads nowhere but into itself', () => {
    for (const { attributes } of all(read)) {
      for (const [name, value] of Object.entries(attributes)) {
        if (name === 'src' || name === 'href' || name === 'xlink:href') {
          expect(value).toMatch(/^#/);
          expect(() => byId(read, value.slice(1))).not.toThrow();
        }
        expect(name).not.toMatch(/^on|^style$|^srcset$|^action$/);
        if (!name.startsWith('xmlns')) expect(value).not.toMatch(/https?:|url\((?!#)/);
      }
    }
  });

  test('lets in its one style and its one script, by their hashes', () => {
    const [policy] = all(read, 'meta').filter(
      ({ attributes }) => attributes['http-equiv'] === 'Content-Security-Policy',
    );
    const [style, ...styles] = all(read, 'style');
    const [data, script, ...scripts] = all(read, 'script');
    expect([...styles, ...scripts]).toEqual([]);
    expect(data!.attributes).toEqual({ type: 'application/json', id: 'picture-data' });
    expect(script!.attributes).toEqual({});
    expect(textOf(script!)).toBe(inputOf(study, TEXT).script);
    expect(policy!.attributes['content']).toBe(
      `default-src 'none'; style-src 'sha256-${sha256(textOf(style!))}'; ` +
        `script-src 'sha256-${sha256(textOf(script!))}'; base-uri 'none'; form-action 'none'`,
    );
  });

  test('with the engine in it, lets in a worker of its own and WebAssembly besides', async () => {
    const offer = {
      ...{ heats: true, setpoint: 18, night: null, presence: true, airing: true, room: 'nook <b>' },
      electricity: 0.27,
    };
    const living = { engine: 'ZW5naW5l', setup: 'c2V0dXA=', offer, file: 'a <b>.yaml', set: [] };
    const made = readMarkup((await reportPage({ ...inputOf(study, TEXT), living })).page);
    const policy = all(made, 'meta').find(
      ({ attributes }) => attributes['http-equiv'] === 'Content-Security-Policy',
    )!;
    expect(policy.attributes['content']).toMatch(
      /; script-src 'sha256-[^']+' 'wasm-unsafe-eval'; worker-src blob:; base-uri 'none'; form-action 'none'$/,
    );
    const knobs = byId(made, 'try');
    expect('hidden' in knobs.attributes).toBe(true);
    expect(textOf(knobs)).toContain('A dehumidifier in the nook <b>, 12 L/day by its label');
    expect(all(knobs, 'input').map(({ attributes }) => attributes['id'])).toEqual([
      ...['try-warmer', 'try-airing', 'try-electricity', 'try-presence'],
      ...['try-dehumidifier', 'try-target'],
    ]);
    const { trial } = JSON.parse(textOf(byId(made, 'picture-data')));
    expect(trial).toMatchObject({ engine: 'ZW5naW5l', currency: 'GBP', spans: [] });
    expect(JSON.parse(textOf(byId(read, 'picture-data'))).trial).toBeNull();
    expect(page).not.toContain('id="try"');
  });

  test('asks its question over a title that is text', () => {
    expect(textOf(all(read, 'h1')[0]!)).toBe('Is a dehumidifier worth buying here?');
    expect(textOf(all(read, 'title')[0]!)).toBe(
      'Is a dehumidifier worth buying here? A cottage </script><b>& "more"',
    );
    const meta = all(read, 'p').find(({ attributes }) => attributes['class'] === 'meta');
    expect(textOf(meta!)).toBe(
      'A cottage </script><b>& "more". 10 days from 2023-01-05, simulated hour by hour; weather: Made-up <winter>.',
    );
  });

  test('names the first day by the wall clock', () => {
    const [first, ...others] = study.options;
    const { period } = first!.measures;
    const measures = { ...first!.measures, period: { ...period, from: '2023-05-31T23:00:00Z' } };
    const household = { ...first!.prepared.household, clock: { from: [0], offset: [3600] } };
    const prepared = { ...first!.prepared, household };
    const options = [{ ...first!, measures, prepared }, ...others];
    const made = pageFrame(inputOf({ ...study, options }, TEXT), [], html``);
    const meta = all(readMarkup(made.page), 'p').find(
      ({ attributes }) => attributes['class'] === 'meta',
    );
    expect(textOf(meta!)).toContain('10 days from 2023-06-01, simulated');
  });

  test('says with what and when it was made', () => {
    expect(textOf(all(read, 'footer')[0]!)).toContain('Made with roombalance 1.2.3 on 2030-01-02.');
    expect(section('method')).toContain(
      `${study.runs} runs of 10 days, from 2023-01-05 00:00 to 2023-01-15 00:00 UTC.`,
    );
  });

  test('holds the hours for its script, with every "<" of a name broken up', () => {
    const text = textOf(byId(read, 'picture-data'));
    expect(text).not.toContain('<');
    const { packed, choice } = JSON.parse(text);
    const data = unpackPictures(packed);
    expect(data.rooms.map(({ name }) => name)).toEqual(['den </script>', 'nook']);
    expect(data.plans.map(({ name }) => name)).toEqual(
      study.pictured.map(({ option }) => option.name),
    );
    const dampest = data.weeks.find(({ word }) => word === 'dampest')!.hour;
    const lines = data.plans.map((_, k) => k).slice(0, 4);
    expect(choice).toEqual({ room: 1, plan: 0, lines, week: dampest });
  });

  test('is the same bytes whatever the clock and the place of the machine', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2041, 6, 1) });
    vi.stubEnv('TZ', 'Asia/Kathmandu');
    vi.stubEnv('LANG', 'de_DE');
    const again = await reportPage(inputOf(study, TEXT));
    expect(again.page).toBe(page);
  });
});

describe('what a section tells', () => {
  test('the answer: verdict, what becomes of the room, what turns it round, how sure it is', () => {
    const lead = all(byId(read, 'answer'), 'p')[0]!;
    expect(lead.attributes['class']).toBe('lead');
    const { sentences, because } = study.purchase!.decision;
    expect(textOf(lead)).toBe(sentences[0]);
    expect(textOf(lead).split(' ').length).toBeLessThanOrEqual(25);
    const [carries] = all(byId(read, 'answer'), 'ul');
    expect(all(carries!, 'li').map(textOf)).toEqual(because);
    for (const sentence of study.purchase!.decision!.sentences) {
      expect(section('answer')).toContain(sentence);
    }
    // Of ten days there is no answer that could turn round.
    expect(section('answer')).not.toMatch(/turns? it round/);
    const [first, ...others] = study.options;
    const period = { ...first!.measures.period, hours: 8760 };
    const year = [{ ...first!, measures: { ...first!.measures, period } }, ...others] as const;
    const { body } = answerSection(inputOf({ ...study, options: year }, TEXT));
    expect(study.purchase!.flips.length).toBeGreaterThan(1);
    for (const { input } of study.purchase!.flips) {
      expect(textOf(readMarkup(body.markup))).toContain(input);
    }
    expect(section('answer')).toContain('This is not robust: only 10 days were simulated.');
    // Where one draw in five comes out otherwise and no input does it alone, it is all of them together.
    const bought = study.purchase!;
    const decision = { ...bought.decision, sure: false };
    const unsteady = { ...bought, decision, flips: [], steady: 0.8 };
    const doubted = answerSection(inputOf({ ...study, options: year, purchase: unsteady }, TEXT));
    expect(textOf(readMarkup(doubted.body.markup))).toContain(
      'it comes out the same in 4 of 5 trials in which all that is doubtful was varied; together, what is not known may turn it round.',
    );
    expect(page).not.toContain('id="picture-money"');
    const { inputs } = study.purchase!.draws!.doubt;
    expect(inputs.length).toBeGreaterThan(20);
    expect(section('answer')).toContain(
      `${inputs.length} values that nobody knows exactly, all of them varied at once, 5 times, with and without the plan.`,
    );
  });

  test('plans: of a whole year a picture of the money over years, beside that of the trade-off', async () => {
    const { option } = study.purchase!.about;
    const period = { ...option.measures.period, hours: 8760 };
    const about = {
      ...study.purchase!.about,
      option: { ...option, measures: { ...option.measures, period } },
    };
    const year = { ...study, purchase: { ...study.purchase!, about } };
    const made = readMarkup((await reportPage(inputOf(year, TEXT))).page);
    const ids = all(made, 'figure').map(({ attributes }) => attributes['id']);
    expect(ids.slice(0, 2)).toEqual(['picture-trade-off', 'picture-money']);
    expect(all(byId(made, 'picture-money'), 'svg')).toHaveLength(2);
  });

  test.each([
    [0.94, 'goes up to 0.9 of 6 as it is and to ', true],
    [1, 'goes up to 1.0 of 6 as it is and to ', false],
  ])('answer: mould of index %d as it is', (peak, words, fine) => {
    const [now, ...others] = study.options;
    const nook = { ...now!.measures.rooms['nook']!, mould_index_peak: peak };
    const measures = { ...now!.measures, rooms: { ...now!.measures.rooms, nook } };
    const options = [{ ...now!, measures }, ...others];
    const { body } = answerSection(inputOf({ ...study, options }, TEXT));
    const told = textOf(readMarkup(body.markup));
    expect(told).toContain(words);
    expect(told.includes('mould would not get going even without it')).toBe(fine);
  });

  test.each([
    ['nook', 'nook', 'The room worst off is nook, unless'],
    ['attic', 'nook', 'The room worst off is attic for cold and nook for mould, unless'],
    ['', 'nook', 'The room worst off is nook, unless'],
    ['attic', '', 'The room worst off is attic, unless'],
    ['', '', null],
  ])('plans: the rooms worst off, of cold "%s" and of mould "%s"', (cold, mould, words) => {
    const [first, ...rest] = study.lines;
    const { figures } = first!;
    const worst = { cold: { value: 3, room: cold }, mould: { value: 2, room: mould } };
    const lines = [{ ...first!, figures: { ...figures, ...worst } }, ...rest];
    const { body } = plansSection(inputOf({ ...study, lines }, TEXT), html``, null);
    const told = textOf(readMarkup(body.markup));
    if (words === null) expect(told).not.toContain('The room worst off');
    else expect(told).toContain(words);
  });

  test('answer: three figures, before and after, as they are printed', () => {
    const cards = all(all(byId(read, 'answer'), 'dl')[0]!, 'dd').map((card) =>
      textOf(card).replaceAll(/\s+/g, ' '),
    );
    expect(cards).toHaveLength(3);
    const share = ({ measures: { rooms, period } }: ReportStudy['options'][number]) =>
      ((100 * rooms['nook']!.outside_band_hours.humidity_high) / period.hours).toFixed(0);
    const { option } = study.purchase!.about;
    expect(cards[0]).toContain(
      `${share(study.options[0]!)} → becomes ${share(option)} % of the timechange `,
    );
    const perDay = ({ measures: { rooms, period } }: ReportStudy['options'][number]) =>
      ((24 * rooms['nook']!.cold_spot_hours_above_80_pct) / period.hours).toFixed(1);
    expect(cards[1]).toContain(`${perDay(study.options[0]!)} → becomes ${perDay(option)} h a day`);
    const [was, is] = [study.options[0]!, option].map(({ measures }) =>
      measures.money.total_per_year.toFixed(0),
    );
    expect(cards[2]).toContain(`${was} → becomes ${is} GBP a year`);
  });

  test('answer: each figure has where the draws lead its change', () => {
    const cards = all(all(byId(read, 'answer'), 'dl')[0]!, 'dd').map(textOf);
    const { pairs } = study.purchase!.draws!;
    const extra = pairs.map(
      ([now, dry]) => dry.measures.money.total_per_year - now.measures.money.total_per_year,
    );
    // Of five values, a tenth of the way from the first to the last is 0.4 of that to the second.
    const [a, b, , d, e] = extra.toSorted((x, y) => x - y) as [number, ...number[]];
    const [low, high] = [a + 0.4 * (b! - a), e! - 0.4 * (e! - d!)];
    const signed = (value: number) =>
      `${value >= 0.5 ? '+' : ''}${value.toFixed(0)}`.replace('-', '−');
    expect(cards[2]).toContain(`change ${signed(low)} to ${signed(high)}`);
    expect(section('answer')).toContain(
      'where it leads with all that is doubtful varied, 5 times; changes are without the lowest and highest tenth',
    );
  });

  test('plans: everything that could be done, doing nothing first, then from cheap to dear', () => {
    const [heads, ...rows] = tableOf(read, /^Each plan against now/);
    expect(rows.map(([name]) => name!.split(/[a-z ]*\(/)[0])).toHaveLength(study.options.length);
    const names = study.lines.map(({ figures }) => figures.plan);
    expect(new Set(names)).toEqual(new Set(study.options.map(({ name }) => name)));
    expect(rows.map(([name], k) => name!.slice(0, names[k]?.length))).toEqual(names);
    const money = heads!.findIndex((head) => head.startsWith('money'));
    const [first, ...others] = rows.map((row) => Number.parseFloat(row[money]!));
    const baseline = study.options[0]!.measures.money.total_per_year;
    expect(first).toBe(Math.round(baseline));
    expect(others).toEqual(others.toSorted((a, b) => a - b));
    const dry = study.options[1]!.measures.money.total_per_year - baseline;
    const row = rows.find(([name]) => name!.startsWith('dry'))!;
    expect(Number.parseFloat(row[money]!)).toBe(Math.round(dry));
    expect(heads![1]).toBe('in a word');
    expect(row[1]).toBe(study.lines.find(({ figures }) => figures.plan === 'dry')!.verdict);
  });

  test('plans: what they ask is answered before the table, and nobody counts room-hours', () => {
    const asked = {
      questions: [
        {
          ...{ title: 'Buy <drier> for 180 GBP?', inShort: 'Too little.', first: '', plan: '' },
          sentences: ['Too little. It costs 9 GBP.', 'Less damp.'],
        },
        {
          ...{
            title: 'Buy it?',
            inShort: study.purchase!.decision.sentences[0]!,
            first: '',
            plan: '',
          },
          sentences: ['What the top of the page says at length.'],
        },
      ],
      ...{ surprise: 'It saves.', caveat: '10 days were run.' },
    };
    const text = plansSection(inputOf({ ...study, asked }, TEXT), html``, null).body.markup;
    expect(text).toContain(
      '<summary><b>Buy &lt;drier&gt; for 180 GBP?</b> <span>Too little.</span></summary> <p>It costs 9 GBP. Less damp.</p>',
    );
    expect(text).toContain('<b>Surprising:</b> <span>It saves.</span>');
    // What leads the page is not told in full again.
    expect(text).toContain('<a href="#answer">More above</a>');
    expect(text).not.toContain('at length');
    expect(text).toContain('<p>10 days were run.</p>');
    expect(study.asked.questions.map(({ title }) => title)).toContainEqual(
      expect.stringContaining('drier'),
    );
    expect(text).not.toMatch(/room-hours|room h\b/);
  });

  test('plans: money against hours over the thermostats, in words and among the figures', () => {
    const { curves, front, tried } = study.bargain!;
    expect(curves.map(({ plan }) => plan)).toEqual(['now', 'dry']);
    expect(section('plans')).toContain(
      `The line joins the ${front.length} of ${tried} plans and settings that no other beats.`,
    );
    const rows = all(byId(read, 'picture-trade-off'), 'tr').slice(1).map(textOf);
    expect(rows).toHaveLength(
      study.options.length + curves[0]!.points.length + curves[1]!.points.length,
    );
    expect(rows.join()).toContain('now, 16 °C');
  });

  test('plans: what they are is told below too, where paper has no room for it in the table', () => {
    const below = all(byId(read, 'plans'), 'div').filter(
      ({ attributes }) => attributes['class'] === 'on-paper',
    );
    expect(below.map(textOf).join()).toContain('dry: a <drier> in the nook');
  });

  test('plans: better and worse are said, not only coloured', () => {
    const [effect] = study.lines.flatMap(({ effects }) => effects);
    expect(effect).toBeDefined();
    const [, ...rows] = tableOf(read, /^Each plan against now/);
    expect(rows[0]!.join()).not.toMatch(/better|worse/);
    expect(rows.slice(1).join()).toMatch(/\((better|worse)\)/);
  });

  test('doubts: what was tried, largest effect first, and what was left aside', () => {
    const { effects } = study.purchase!.doubt;
    const rows = all(byId(read, 'picture-doubt'), 'tr').slice(1).map(textOf);
    expect(rows).toHaveLength(effects.length);
    expect(rows.length).toBeGreaterThan(3);
    const { ranked, difference } = study.purchase!.draws!;
    const drawn = all(byId(read, 'picture-draws'), 'tr').slice(1).map(textOf);
    expect(drawn).toHaveLength(3);
    expect(drawn[1]).toContain(`${Math.round(5 * difference.damp.less)} of 5`);
    const less = Math.round(5 * difference.money.less);
    expect(textOf(byId(read, 'picture-draws'))).toContain(
      `Of 5 draws, dry costs less in ${less}, `,
    );
    // Dots and bar are of one figure, that of the table of plans.
    const colder = study.purchase!.draws!.pairs.map(
      ([before, after]) => after.figures.cold.value - before.figures.cold.value,
    );
    const [, , middle] = colder.toSorted((a, b) => a - b);
    expect(drawn[2]).toMatch(/^too cold, room worst off \[h a day\]/);
    expect(drawn[2]).toContain(`${colder.filter((change) => change < 0).length} of 5`);
    expect(drawn[2]).toContain(signedWithMinus(middle!, 1));
    for (const { path } of ranked.slice(6)) expect(section('doubts')).toContain(path);
    for (const { path } of study.untried) expect(section('doubts')).toContain(path);
  });

  test('cautions: those of every option, and remarks on the weather', () => {
    const texts = study.options.flatMap(({ measures }) => measures.cautions);
    expect(texts.length).toBeGreaterThan(0);
    for (const { text } of texts) expect(section('cautions')).toContain(text);
    expect(section('cautions')).toContain('a gap of 2 h was filled & marked');
  });

  test('cautions: a heading and its list are one block, which columns do not part', () => {
    const blocks = all(byId(read, 'cautions'), 'div').filter(
      (div) => (div.attributes['class'] ?? '') === 'columns',
    );
    const headings = blocks.flatMap((block) => all(block, 'h3'));
    const grouped = blocks.flatMap((block) =>
      all(block, 'div').filter((div) => all(div, 'h3').length === 1 && all(div, 'ul').length === 1),
    );
    expect(headings.length).toBeGreaterThan(1);
    expect(grouped).toHaveLength(headings.length);
  });

  test('one that was not drawn is told as one, two as two', () => {
    expect(study.untried).toHaveLength(1);
    expect(section('doubts')).toContain('1 that was not drawn');
    const two = { ...study, untried: [...study.untried, ...study.untried] };
    const pictures = { draws: html``, doubt: html`` };
    const doubts = doubtsSection(two, study.purchase!, pictures);
    expect(textOf(readMarkup(doubts.body.markup))).toContain('2 that were not drawn');
  });

  test('assumptions: every value that nobody gave, of baseline and purchase, with its source', () => {
    const [, ...rows] = tableOf(read, /^Assumed values/);
    const sources = all(byId(read, 'assumptions'), 'ol').flatMap((list) =>
      all(list, 'li').map(textOf),
    );
    const { options, purchase } = study;
    const assumed = [options[0]!, purchase!.about.option].flatMap((one) => one.prepared.assumed);
    for (const { path, value, unit, source } of assumed) {
      const row = rows.find(([where]) => where === path);
      expect(row, path).toBeDefined();
      const [figure, ...behind] = row![1]!.split(' ');
      if (typeof value === 'string') expect(row![1]).toBe(value);
      // Printed to about three digits.
      else expect(Math.abs(Number(figure) - value)).toBeLessThanOrEqual(0.005 * Math.abs(value));
      if (typeof value === 'number') expect(behind.join(' ')).toBe(unit);
      expect(sources[Number(row![4]) - 1]).toBe(source);
    }
    expect(new Set(assumed.map(({ path }) => path)).size).toBe(rows.length);
    expect(rows.some(([path]) => path!.startsWith('/devices/drier/'))).toBe(true);
  });

  test('assumptions: those that moved the answer most in the draws first', () => {
    const [, ...rows] = tableOf(read, /^Assumed values/);
    const ranked = study.purchase!.draws!.ranked.map(({ path }) => path);
    const places = rows.map(([where]) => ranked.indexOf(where!)).filter((place) => place >= 0);
    expect(places.length).toBeGreaterThan(5);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(ranked).toContain(rows[0]![0]);
  });

  test('method: the scenario as it was written', () => {
    const [pre] = all(byId(read, 'method'), 'pre');
    expect(textOf(pre!)).toBe(TEXT);
    expect(textOf(all(pre!, 'code')[0]!)).toBe(TEXT);
  });

  test('method: the same where its lines end as on another system', () => {
    const windows = inputOf(study, TEXT.replaceAll('\n', '\r\n'));
    const [pre] = all(readMarkup(methodSection(windows).body.markup), 'pre');
    expect(textOf(pre!)).toBe(TEXT);
  });
});

describe('where an input turns the answer round', () => {
  const flip = (over: Partial<Flip>): Flip => ({
    ...{ path: null, becomes: null, low: 0, high: 900 },
    ...{ input: 'the price', unit: 'GBP', today: 180, value: null },
    ...{ likely: false, tried: true, relative: false, note: 'by hand', ...over },
  });
  const told = (over: Partial<Flip>): string =>
    textOf(readMarkup(turningPoints([flip(over)]).markup)).replaceAll(/\s+/g, ' ');

  test('nowhere in what was tried', () => {
    expect(told({})).toContain('No single thing turns it round');
    expect(told({})).toContain('the price: 0 to 900 GBP, today 180');
    expect(told({})).toContain('the price: by hand.');
  });

  test('at a likely value, and at one that is far off, above or below today', () => {
    expect(told({ value: 150.4, likely: true })).toContain('the price below 150 GBP0');
    expect(told({ value: 700 })).toContain('the price above 700 GBP (far off)0');
  });

  test('is not said to be nowhere where it could not be tried', () => {
    const note = 'not tried: heating.setpoint would be 41';
    expect(told({ note, input: 'all', tried: false })).toContain('all: not tried, today 180 GBP');
    expect(told({ note, input: 'all', tried: false })).toContain(`all: ${note}.`);
  });

  test('is drawn for what turns it, and the rest is told in words', () => {
    const turned = flip({ input: 'oil', value: 700 });
    const read = readMarkup(turningPoints([flip({ input: 'gas' }), turned]).markup);
    expect(textOf(all(read, 'h3')[0]!)).toBe('What would turn it round');
    expect(all(read, 'svg')).toHaveLength(1);
    const [lines, words] = all(read, 'ul');
    expect(all(lines!, 'li').map((one) => textOf(one).slice(0, 3))).toEqual(['oil']);
    expect(all(words!, 'li').map(textOf)).toEqual(['gas: 0 to 900 GBP, today 180']);
  });

  test('its scale has no zeros behind the point, and a minus sign', () => {
    const of = { input: 'all thermostats', unit: 'K', today: 0, value: 2, low: -4, high: 4 };
    const ends = (over: Partial<Flip>) =>
      textOf(all(readMarkup(turningPoints([flip(over)]).markup), 'small')[0]!);
    expect(ends(of)).toBe('−4 today 0 K 4');
    const price = { unit: 'GBP/kWh', today: 0.07, value: 0.1, low: 0.0175, high: 0.28 };
    expect(ends(price)).toBe('0.0175 today 0.07 GBP/kWh 0.28');
  });

  test('is drawn broken from there on, on the side where it turns', () => {
    const drawn = (over: Partial<Flip>) => turningPoints([flip(over)]).markup;
    expect(drawn({})).not.toContain('class="lost"');
    expect(drawn({ value: 900 })).toContain('class="lost" d="M356.0 8H356"');
    expect(drawn({ value: 0 })).toContain('class="lost" d="M4 8H4.0"');
    expect(drawn({ value: 540 })).toContain('class="lost" d="M268.0 8H356"');
  });

  test('what is to be said first stands above the verdict', () => {
    const decision = { ...study.purchase!.decision, first: 'Mend the stove.' };
    const purchase = { ...study.purchase!, decision };
    const { body } = answerSection(inputOf({ ...study, purchase }, TEXT));
    const [first, lead] = all(readMarkup(body.markup), 'p');
    expect(textOf(first!)).toBe('First of all: Mend the stove.');
    expect(lead!.attributes['class']).toBe('lead');
  });

  test.each([
    ['Buy it.', 'lead'],
    [`Something else first: ${'x'.repeat(70)} does as much.`, 'lead lengthy'],
  ])('"%s" is set as %s', (verdict, look) => {
    const decision = { ...study.purchase!.decision, sentences: [verdict] };
    const purchase = { ...study.purchase!, decision };
    const { body } = answerSection(inputOf({ ...study, purchase }, TEXT));
    const lead = all(readMarkup(body.markup), 'p').find((one) => textOf(one) === verdict);
    expect(lead!.attributes['class']).toBe(look);
  });

  test('is not said a second time beside the answer', () => {
    const [flip] = study.purchase!.flips;
    const turns = ['It would turn round (not needed) were the thermostat 24.1 °C instead of 21.0.'];
    const decision = {
      ...study.purchase!.decision,
      ...{ sentences: ['Buy it.', 'It costs little.', ...turns], turns },
    };
    const turned = { ...flip!, input: 'the thermostat', unit: '°C', today: 21, value: 24.1 };
    const flips = [{ ...turned, likely: false, tried: true, becomes: 'not needed' as const }];
    const purchase = { ...study.purchase!, decision, flips };
    const [first, ...others] = study.options;
    const period = { ...first!.measures.period, hours: 8760 };
    const options = [{ ...first!, measures: { ...first!.measures, period } }, ...others] as const;
    const told = textOf(
      readMarkup(answerSection(inputOf({ ...study, options, purchase }, TEXT)).body.markup),
    );
    expect(told).toContain('It costs little.');
    expect(told).not.toContain('It would turn round');
    expect(told).toContain('above 24.1 °C: not needed (far off)');
  });

  test('is no list where nothing was asked', () => {
    const purchase = { ...study.purchase!, flips: [] };
    const { body } = answerSection(inputOf({ ...study, purchase }, TEXT));
    expect(body.markup).not.toContain('What would turn it round');
  });

  test.each([
    [17544, false], // 2023 and 2024
    [8759, false],
    [8736 - 24, true],
  ])('of %s hours "only so many days" is %s', (hours, told) => {
    const [first, ...others] = study.options;
    const measures = { ...first!.measures, period: { ...first!.measures.period, hours } };
    const options = [{ ...first!, measures }, ...others] as const;
    const { body } = answerSection(inputOf({ ...study, options }, TEXT));
    expect(body.markup.includes('days were simulated')).toBe(told);
  });
});

test('a value that baseline and purchase assume differently stands for both, by their names', () => {
  const about = study.purchase!.about;
  const [first, ...others] = about.option.prepared.assumed;
  const prepared = { ...about.option.prepared, assumed: [{ ...first!, value: 77 }, ...others] };
  const option = { ...about.option, prepared };
  const purchase = { ...study.purchase!, about: { ...about, option } };
  const { body } = assumptionsSection({ ...study, purchase });
  const rows = tableOf(readMarkup(body.markup), /^Assumed values/).filter(([where]) =>
    where!.startsWith(`${first!.path} (`),
  );
  expect(rows.map(([where]) => where)).toEqual([`${first!.path} (now)`, `${first!.path} (dry)`]);
  expect(rows[1]![1]).toBe('77.0 m');
});

test('what counts as fine is told once for all rooms that share it', () => {
  const told = all(readMarkup(assumptionsSection(study).body.markup), 'li').map(textOf);
  const humidity = told.filter((item) => item.startsWith('Humidity'));
  expect(humidity).toHaveLength(1);
  expect(humidity[0]).toMatch(/^Humidity 40 to 60 %, all rooms \(.+\)$/);
  const [option] = study.options;
  const [band, ...others] = option!.prepared.bands;
  const open = { ...band!, humidity: { ...band!.humidity, low: Number.NEGATIVE_INFINITY } };
  const prepared = { ...option!.prepared, bands: [open, ...others] };
  const apart = assumptionsSection({
    ...study,
    options: [{ ...option!, prepared }, ...study.options.slice(1)],
    purchase: null,
  });
  const words = all(readMarkup(apart.body.markup), 'li').map(textOf);
  const [first, second] = option!.prepared.home.rooms.map(({ name }) => name);
  expect(words).toContainEqual(expect.stringMatching(`^Humidity 60 % or less, ${first} `));
  expect(words).toContainEqual(expect.stringMatching(`^Humidity 40 to 60 %, ${second} `));
  const mild = { from: 12, high: 26, hours: 72 };
  const infant = { ...band!, temperature: { ...band!.temperature, low: 16, high: 20, mild } };
  const option2 = { ...option!, prepared: { ...option!.prepared, bands: [infant, ...others] } };
  const options = [option2, ...study.options.slice(1)];
  const { body } = assumptionsSection({ ...study, options, purchase: null });
  expect(all(readMarkup(body.markup), 'li').map(textOf)).toContainEqual(
    expect.stringMatching(`^Temperature 16 to 20 °C \\(26 °C from 12 °C outdoors on\\), ${first} `),
  );
});

describe('hours for pictures', () => {
  test('are of the rooms that all options have, with the bands and people of the baseline', () => {
    const [now, dry] = study.pictured;
    const less = { ...dry!, series: { ...dry!.series, rooms: dry!.series.rooms.slice(1) } };
    const data = pictureDataOf([now!, less], 'nook');
    expect(data.rooms.map(({ name }) => name)).toEqual(['nook']);
    expect(data.rooms[0]).toMatchObject({ humidity: { low: 40, high: 60 } });
    expect(data.hours).toBe(240);
    expect(data.plans.map(({ name }) => name)).toEqual(['now', 'dry']);
    data.plans.forEach(({ rooms }, k) => {
      const own = study.pictured[k]!.series.rooms[1]!;
      expect(rooms).toHaveLength(1);
      expect(rooms[0]!.temperature).toBe(own.operativeTemperature);
      expect(rooms[0]!.coldSpot).toBe(own.coldSpotHumidity);
      expect(rooms[0]!.coldSpotHours).toBe(own.coldSpotHumidity.filter((v) => v > 80).length);
    });
    expect(new Set(data.rooms[0]!.occupied)).toEqual(new Set([0, 1]));
  });

  test('need an option', () => {
    expect(() => pictureDataOf([], 'nook')).toThrow('pictureDataOf: needs at least one option');
  });
});

describe('a comparison without a purchase', () => {
  const OWNED = `devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day } }
plans: { now: { description: as it is, change: {} }, cooler: { description: less heat, change: { heating: { setpoint: 17 } } } }
`;

  test('asks for the plans, and leaves out what is about a purchase', async () => {
    const text = `invented: true\n${COTTAGE}${OWNED}`;
    const other = await studyOf(text);
    const made = readMarkup((await reportPage(inputOf(other, text))).page);
    expect(textOf(all(made, 'h1')[0]!)).toBe('Which plan costs and does what?');
    expect(sectionsOf(made)).toEqual([
      ...['answer', 'plans', 'pictures', 'air', 'cautions', 'assumptions', 'method'],
    ]);
    expect(textOf(byId(made, 'answer'))).toContain('cooler saves 1\u00a0GBP in these 10\u00a0days');
    const lead = all(byId(made, 'answer'), 'p').find(
      ({ attributes }) => attributes['class'] === 'lead',
    );
    expect(textOf(lead!).replaceAll('\u00a0', ' ')).toMatch(
      /^17 °C or 18 °C\? cooler saves 1 GBP in these 10 days, but [a-z ]+\.$/,
    );
    // What answers the question is told beside what is.
    const [was, is] = other.options.map(({ measures }) => measures.money.total_per_year.toFixed(0));
    const answer = textOf(byId(made, 'answer')).replaceAll(/\s+/g, ' ');
    expect(answer).toContain(`${was} → becomes ${is} GBP a year`);
    expect(answer).toContain('cooler: less heat.');
    expect(answer).toContain('as it is, with cooler');
    expect(textOf(byId(made, 'answer'))).not.toContain('room-hours');
    expect(textOf(all(made, 'header')[0]!)).toContain(INVENTED);
  });

  test('answers every question of the plans, the first of them on top alone', () => {
    const questions = ['First?', 'Then?'].map((title) => ({
      ...{ title, inShort: 'cooler saves.', first: '', plan: 'cooler' },
      sentences: [`${title.length} GBP.`],
    }));
    const asked = { questions, surprise: 'It rings at night.', caveat: '10 days were run.' };
    const told = (over: typeof asked) =>
      textOf(
        readMarkup(
          plansSection(inputOf({ ...study, purchase: null, asked: over }, TEXT), html``, null).body
            .markup,
        ),
      );
    expect(told(asked)).toContain('What else the plans ask');
    expect(told(asked)).toContain('Then? cooler saves. 5 GBP.');
    expect(told(asked)).toContain('Surprising: It rings at night.');
    expect(told(asked)).not.toMatch(/First\?|10 days were run/);
    // What nobody would have guessed is told where there is no other question, too.
    const alone = told({ ...asked, questions: questions.slice(1) });
    expect(alone).not.toMatch(/Then\?|All plans/);
    expect(alone).toContain('Surprising: It rings at night.');
    expect(told({ ...asked, questions: [], surprise: '' })).not.toContain('Surprising');
  });

  test('of plans that ask nothing tells which costs least and which is kindest', async () => {
    const text = `${COTTAGE}${OWNED.replace(/, cooler: .*/, ' }')}`;
    const other = await studyOf(text);
    expect(other.asked.questions).toEqual([]);
    const told = textOf(readMarkup(answerSection(inputOf(other, text)).body.markup));
    const [lead, ...rest] = other.answer.sentences;
    expect(told).toContain(lead);
    expect(told).toContain(rest.join(' '));
    expect(told).toContain(' a day, as it is');
    expect(told).not.toContain('becomes');
  });

  test('is called invented only where the scenario says so', () => {
    expect(page).not.toContain(INVENTED);
  });

  const INVENTED = 'Invented demonstration: this home, its people and its place do not exist.';
});
