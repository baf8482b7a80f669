import { highKey } from '../../measures/band-hours.ts';
import { coldSpotHours, roomHours } from '../../measures/comfort/room-hours.ts';
import { countedSpecies } from '../../measures/counted-species.ts';
import { boughtForCooling } from '../../measures/energy/cooling-measures.ts';
import { devicesKwh, waterTaken } from '../../measures/energy/device-totals.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { Option } from '../../studies/options.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import { optionName } from './option-words.ts';
import type { ReportInput } from './report-input.ts';
import { list, type Section } from './section.ts';

/** Everything that could be done, doing nothing first, with what each costs and does. */
export function optionsSection({ study }: ReportInput): Section {
  const { options, purchase, asked } = study;
  const columns = columnsOf(options, purchase !== null && !purchase.about.dries);
  const best = columns.map(({ of, best: want }) =>
    want === undefined
      ? null
      : (want === 'most' ? Math.max : Math.min)(...options.map((o) => of(o.measures))),
  );
  const days = Math.round(options[0]!.measures.period.hours / 24);
  return {
    id: 'options',
    title: 'Options side by side',
    body: html`
${purchase === null ? null : askedMarkup(asked)}
${figureTable({
  caption: `Whole home, ${days} days; bold: the best of its column`,
  heads: ['option', ...columns.map(({ head }) => head)],
  rows: options.map((option) => [
    optionName(option),
    ...columns.map((column, k) => cell(column, option.measures, best[k]!)),
  ]),
})}
<div class="only-narrow">${list(options.filter(({ description }) => description !== '').map(({ name, description }) => html`<b>${name}</b>: ${description}`))}</div>
<p><b>room h</b>: hours, added up over the rooms. <b>Too damp</b> and <b>too dry</b> are ${bandWords(options[0]!)}; they count whoever is there, because damp does its work in empty rooms too. A <b>cold spot</b> is the coldest place of a room's outer walls, where the air is most humid; mould can begin where it stays over 80 % there. <b>Money a day</b> is all money a year over 365; the purchase cost a year is the price of what is bought, spread over its life. <b>Proposed</b> options are the program's own, not the scenario's.</p>
${safetyNote(study.purchase)}`,
  };
}

/** What the scenario's own plans ask, and its answers. */
function askedMarkup({ questions, surprise }: ReportStudy['asked']): Html | null {
  if (questions.length === 0) return null;
  const told = questions.map(
    ({ title, sentences }) => html`<b>${title}</b> ${sentences.join(' ')}`,
  );
  const beyond = surprise === '' ? [] : [html`<b>Surprising:</b> ${surprise}`];
  return html`<p>What the scenario's own plans ask:</p>${list([...told, ...beyond])}`;
}

interface Column {
  readonly head: string;
  readonly of: (measures: PlanMeasures) => number;
  readonly decimals?: number;
  readonly best?: 'least' | 'most';
}

/** @param air  whether the air's pollutants are in question */
function columnsOf(options: readonly Option[], air: boolean): Column[] {
  const { prepared, measures } = options[0]!;
  const { currency } = measures.money;
  const cools = options.some((option) => option.measures.cooling.removed_kwh > 0);
  const winter = prepared.home.site.latitude < 0 ? 'April to September' : 'October to March';
  return [
    { head: 'heat to rooms [kWh]', of: ({ heating }) => heating.useful_kwh },
    ...(cools ? COOLED : []),
    { head: 'devices [kWh]', of: devicesKwh },
    {
      ...{ head: `money a day [${currency}]`, decimals: 2, best: 'least' },
      of: ({ money }) => money.total_per_year / 365,
    },
    { head: `energy, ${winter} [${currency}]`, of: ({ money }) => money.winter_energy },
    { head: `purchase cost a year [${currency}]`, of: ({ money }) => money.purchase_cost_per_year },
    {
      ...{ head: `all money a year [${currency}]`, best: 'least' },
      of: ({ money }) => money.total_per_year,
    },
    {
      ...{ head: `too damp${limitOf(options[0]!, 'high')} [room h]`, best: 'least' },
      of: (m) => roomHours(m, 'outside_band_hours', 'humidity_high'),
    },
    { head: 'cold spots over 80 % [room h]', of: coldSpotHours, best: 'least' },
    {
      ...{ head: `too dry${limitOf(options[0]!, 'low')} [room h]`, best: 'least' },
      of: (m) => roomHours(m, 'outside_band_hours', 'humidity_low'),
    },
    {
      ...{ head: 'too cold, somebody in [room h]', best: 'least' },
      of: (m) => roomHours(m, 'outside_band_occupied_hours', 'temperature_low'),
    },
    ...(cools ? TOO_WARM : []),
    { head: 'water taken out [L]', of: waterTaken },
    ...(air ? polluted(options) : []),
  ];
}

const COOLED: readonly Column[] = [
  { head: 'removed by cooling [kWh]', of: ({ cooling }) => cooling.removed_kwh },
  { head: 'electricity for cooling [kWh]', of: boughtForCooling },
];

const TOO_WARM: readonly Column[] = [
  {
    ...{ head: 'too warm, somebody in [room h]', best: 'least' },
    of: (m) => roomHours(m, 'outside_band_occupied_hours', 'temperature_high'),
  },
];

/** What harms most comes first. */
const polluted = (options: readonly Option[]): readonly Column[] =>
  countedSpecies(options.map(({ measures }) => measures))
    .toReversed()
    .filter(({ role }) => role === 'pollutant')
    .map(({ name, symbol }) => ({
      ...{ head: `${symbol} high [room h]`, best: 'least' },
      of: (m) => roomHours(m, 'outside_band_hours', highKey(name)),
    }));

function cell(column: Column, measures: PlanMeasures, best: number | null): Html {
  const text = figureText(column.of(measures), column.decimals ?? 0);
  return best !== null && Number(text) === Number(figureText(best, column.decimals ?? 0))
    ? html`<b>${text}</b>`
    : html`${text}`;
}

/** " (over 60 %)" where all rooms have the same edge. */
function limitOf({ prepared }: Option, side: 'low' | 'high'): string {
  const edges = new Set(prepared.bands.map(({ humidity }) => humidity[side]));
  const [edge] = edges;
  return edges.size === 1 ? ` (${side === 'high' ? 'over' : 'under'} ${edge} %)` : '';
}

function bandWords({ prepared }: Option): string {
  const { home, bands } = prepared;
  const texts = bands.map(({ humidity: { low, high } }) => `${low} to ${high} %`);
  if (new Set(texts).size === 1) return `relative humidity outside ${texts[0]}`;
  const rooms = home.rooms.map(({ name }, k) => `${name} ${texts[k]}`).join(', ');
  return `relative humidity outside each room's band (${rooms})`;
}

function safetyNote(purchase: ReportInput['study']['purchase']): Html | null {
  const safe = purchase?.equalSafety ?? null;
  if (safe === null || purchase === null || purchase.warmer !== null) return null;
  const words =
    safe.warmer_by_k === 0
      ? `the device takes no hour above 80 % from the cold spot of the ${safe.room}, so that it need not be any warmer for as low a mould risk`
      : `no warmth was found that makes the mould risk of the ${safe.room} as low as with the device: ${safe.note}`;
  return html`<p><b>As low a mould risk by heat alone:</b> ${words}.</p>`;
}
