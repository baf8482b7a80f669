import type { PlanLine } from '../../studies/answers/comparison-answers.ts';
import type { Option } from '../../studies/options.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { rangeText } from '../../units/range-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { askedMarkup } from './asked-questions.ts';
import { bandWords } from './band-words.ts';
import { bargainWords } from './bargain-words.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import { optionName } from './option-words.ts';
import { type PlanColumn, planColumns } from './plan-columns.ts';
import type { ReportInput } from './report-input.ts';
import { list, type Section } from './section.ts';
import { strip } from './strip.ts';

/** What the plans ask, with its answers, and everything that could be done, a line each. */
export function plansSection({ study }: ReportInput, pictures: Html, knobs: Html | null): Section {
  const { lines, options } = study;
  const columns = planColumns(study);
  const about = study.purchase?.about.option.name ?? '';
  return {
    id: 'plans',
    title: 'Plans, a line each',
    body: html`
${askedMarkup(study)}
${key(lines[0]!)}
${figureTable({
  caption: `Each plan against ${lines[0]!.figures.plan}, which comes first; then the cheapest`,
  heads: [
    'plan',
    'in a word',
    ...columns.map(({ head, under }) => html`${head}<br><small>${under}</small>`),
  ],
  rows: lines.map((line) => [
    nameOf(options, line),
    line.verdict === '' ? 'where things stand' : line.verdict,
    ...columns.map((column) => cell(column, line, lines[0]!)),
  ]),
  words: [1],
  marked: lines.findIndex(({ figures }) => figures.plan === about),
  named: 'plans',
  briefly: [
    ['', ''],
    ['', ''],
    ...columns.map(({ head, under }) => [head, unitOf(under)] as const),
  ],
})}
${descriptions(lines)}
<div class="pair"><div>
${pictures}
</div><div>
<p class="note">${worstRooms(lines[0]!)}<b>Too damp</b> and <b>too dry</b> are ${bandWords(humidityBands(options[0]!))}; they count whoever is there, because damp does its work in empty rooms too. A <b>wet corner</b> is the coldest place of a room's outer walls while its air is over 80 % there, where mould can grow. The <b>mould index</b> counts from 0 to 6: 1 is seen under a microscope, 3 by eye. <i>Proposed</i> plans are the program's own, not the scenario's.</p>
${bargainWords(study)}
${safetyNote(study.purchase)}
</div></div>
${knobs}`,
  };
}

/** What the marks of the table stand for. */
const key = ({ figures }: PlanLine): Html =>
  html`<p class="key"><span class="ring"></span> ${figures.plan}; <span class="disc"></span> the plan, <b class="better">▾</b> where it is clearly better; <span class="square"></span> <b class="worse">▴</b> where it is clearly worse<span class="on-phone">; what a plan leaves about as it is, is left out</span></p>`;

/** What counts as too cold, and which room is worst off where none is named under a figure. */
function worstRooms({ figures: { cold, mould } }: PlanLine): Html {
  const rooms =
    cold.room === mould.room
      ? cold.room
      : [cold.room, mould.room].every((room) => room !== '')
        ? `${cold.room} for cold and ${mould.room} for mould`
        : cold.room || mould.room;
  return html`<b>Too cold</b> is over 0.5 °C below what is fine with somebody in.${
    rooms === '' ? null : ` The room worst off is ${rooms}, unless another is named under a figure.`
  } `;
}

/** What the plans are, where paper has no room for it in the table. */
const descriptions = (lines: readonly PlanLine[]): Html =>
  html`<div class="on-paper">${list(lines.filter(({ description }) => description !== '').map(({ figures, description }) => html`<b>${figures.plan}</b>: ${description}`))}</div>`;

function nameOf(options: readonly Option[], { figures, description }: PlanLine): Html {
  const option = options.find(({ name }) => name === figures.plan);
  return option === undefined
    ? html`<b>${figures.plan}</b><br><small>${description}</small>`
    : optionName(option);
}

/** Of what stands under the head of a column, such as "h a day of winter, room worst off". */
const unitOf = (under: string): string => under.split(',')[0]!;

function cell(column: PlanColumn, line: PlanLine, baseline: PlanLine): Html {
  const look = line === baseline ? 'same' : column.look(line);
  const mark = look === 'same' ? null : look === 'worse' ? ' ▴' : ' ▾';
  const drawn = {
    ...{ from: column.from, to: column.to, look },
    ...{ baseline: column.of(baseline), plan: column.of(line) },
  };
  const told = look === 'same' && column.tells?.(line, baseline) === true ? ' told' : '';
  return html`<span class="${look}${told}">${withMinus(column.print(line, line === baseline))}${
    mark === null
      ? null
      : html`<span aria-hidden="true">${mark}</span><span class="heard"> (${look})</span>`
  }</span>${column.note?.(line) ?? null}${strip(drawn)}`;
}

const humidityBands = ({ prepared: { home, bands } }: Option) =>
  home.rooms.map(({ name }, k) => ({ name, text: rangeText(bands[k]!.humidity, ' %') }));

function safetyNote(purchase: ReportStudy['purchase']): Html | null {
  const safe = purchase?.equalSafety ?? null;
  if (safe === null || purchase === null || purchase.warmer !== null) return null;
  const words =
    safe.warmer_by_k === 0
      ? `the device takes no hour above 80 % from the cold spot of ${theRoom(safe.room)}, so that it need not be any warmer for as low a mould risk`
      : `no warmth was found that makes the mould risk of ${theRoom(safe.room)} as low as with the device: ${safe.note}`;
  return html`<p><b>As low a mould risk by heat alone:</b> ${words}.</p>`;
}
