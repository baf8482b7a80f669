import type { Option } from '../../studies/options.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { rangeText } from '../../units/range-text.ts';
import { andList } from '../../units/word-list.ts';
import { figureTable } from './figure-table.ts';
import { html } from './html.ts';
import { details, list, type Section } from './section.ts';

/**
 * Every value that nobody gave, of doing nothing and of what is asked about, with its source: those that
 * moved the answer most in the draws first.
 */
export function assumptionsSection({ options, purchase }: ReportStudy): Section {
  const ranks = new Map((purchase?.draws?.ranked ?? []).map(({ path }, rank) => [path, rank]));
  const rankOf = ({ path }: { readonly path: string }) => ranks.get(path) ?? ranks.size;
  const assumed = distinct(options[0]!, purchase?.about.option ?? options[0]!).toSorted(
    (a, b) => rankOf(a) - rankOf(b),
  );
  const sources = [...new Set(assumed.map(({ source }) => source))];
  const number = (value: number | string | null) =>
    value === null ? '' : typeof value === 'number' ? figureText(value) : value;
  return {
    id: 'assumptions',
    title: 'Assumptions',
    body: html`
<p>${assumed.length} values that the scenario does not give. Put in what you know better${ranks.size === 0 ? '' : ', from the top: what moved the answer most stands first'}.</p>
${details(
  `All ${assumed.length} assumed values with their sources`,
  html`${figureTable({
    caption: 'Assumed values',
    heads: ['where', 'value', 'low', 'high', 'source'],
    rows: assumed.map(({ path, value, unit, low, high, source, of }) => [
      html`<code>${path}</code>${of === null ? null : ` (${of})`}`,
      unit === '' ? number(value) : `${number(value)} ${unit}`,
      number(low),
      number(high),
      `${sources.indexOf(source) + 1}`,
    ]),
  })}
<h3>Sources</h3>
<ol>${sources.map((source) => html`<li>${source}</li>`)}</ol>`,
)}
${bands(options[0]!)}`,
  };
}

/** What both assume stands once; a place at which they differ stands twice, with their names. */
function distinct(baseline: Option, plan: Option) {
  const byPath = ({ prepared }: Option) =>
    new Map(prepared.assumed.map((one) => [one.path, JSON.stringify(one)]));
  const [had, has] = [byPath(baseline), byPath(plan)];
  const differs = (path: string) =>
    had.has(path) && has.has(path) && had.get(path) !== has.get(path);
  const named = ({ name, prepared }: Option) =>
    prepared.assumed.map((one) => ({ ...one, of: differs(one.path) ? name : null }));
  const added = named(plan).filter(({ path }) => differs(path) || !had.has(path));
  return [...named(baseline), ...added];
}

function bands({ prepared }: Option) {
  const rooms = prepared.home.rooms.map(({ name }) => name);
  const told = ([what, unit]: readonly ['temperature' | 'humidity', string]) =>
    bandGroups(
      rooms,
      prepared.bands.map((band) => band[what]),
    ).map(
      ({ band, of }) =>
        html`<b>${capital(what)} ${rangeText(band, unit, whenMild(band))}</b>, ${of.length === rooms.length && of.length > 1 ? 'all rooms' : andList(of)} (${band.reason})`,
    );
  return html`
<h3>What counts as fine</h3>
<div class="halves">${list([...told(['temperature', ' °C']), ...told(['humidity', ' %'])])}</div>`;
}

type Band = Option['prepared']['bands'][number]['temperature'];

/** Rooms with the same band for the same reason, in the order of the first of them. */
function bandGroups(rooms: readonly string[], bands: readonly Band[]) {
  const groups = new Map<string, { readonly band: Band; readonly of: string[] }>();
  bands.forEach((band, k) => {
    const key = JSON.stringify([`${band.low}`, `${band.high}`, band.reason]);
    const group = groups.get(key) ?? { band, of: [] };
    group.of.push(rooms[k]!);
    groups.set(key, group);
  });
  return [...groups.values()];
}

/** In which weather another upper edge holds. */
const whenMild = ({ mild }: Pick<Band, 'mild'>): string =>
  mild === undefined ? '' : `from ${mild.from} °C outdoors on`;
