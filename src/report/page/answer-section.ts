import type { Flip } from '../../studies/decision-flips.ts';
import { figureText } from '../../units/figure-text.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import { purchaseInWords } from './purchase-in-words.ts';
import type { ReportInput } from './report-input.ts';
import { list, paragraphsAndLists, type Section } from './section.ts';
import { writtenValues } from './written-values.ts';

/** The answer, what would turn it round, and how sure it is. */
export function answerSection(input: ReportInput): Section {
  const { study } = input;
  const decision = study.purchase?.decision ?? null;
  const { purchase } = study;
  const undecided =
    purchase === null
      ? firstSentenceApart(study.answer)
      : purchaseInWords(purchase, study.options[0]!);
  const [lead = '', ...reasons] = decision?.sentences ?? undecided;
  const flips = study.purchase?.flips ?? [];
  return {
    id: 'answer',
    title: 'The answer',
    body: html`
<p class="lead">${lead}</p>
${meaning(study)}
${firmness(study)}
${decision === null ? paragraphsAndLists(reasons) : list([...inTheRoom(study), ...reasons])}
${flips.length === 0 ? null : flipsTable(flips)}
<h3>How sure is this?</h3>
${list(howSure(input))}`,
  };
}

/** The first sentence of the first line is a line of its own. */
function firstSentenceApart([first = '', ...others]: readonly string[]): string[] {
  const end = first.indexOf('. ') + 1;
  return end === 0 ? [first, ...others] : [first.slice(0, end), first.slice(end).trim(), ...others];
}

/** Whether one input alone may turn the answer round. */
function firmness({ purchase }: ReportInput['study']): Html | null {
  const decision = purchase?.decision ?? null;
  if (decision === null) return null;
  return decision.sure
    ? html`<p><b>This is firm:</b> no one input, at a value that is likely, turns it round.</p>`
    : html`<p><b>This is not firm:</b> one input alone may well be such that it turns round; which one stands below.</p>`;
}

/** What the names in the answer stand for. */
function meaning({ options, purchase }: ReportInput['study']): Html {
  const [baseline] = options;
  const named = [
    ...(purchase === null ? [] : [purchase.about.option]),
    baseline!,
    ...options.filter(({ name }) => name === purchase?.decision?.instead),
  ];
  const words = named.filter(({ says }) => says !== '');
  return html`<p>${words.map(({ name, says }) => html`<b>${name}</b>: ${says}. `)}</p>`;
}

/** What becomes of the room that the purchase is for. */
function inTheRoom({ purchase }: ReportInput['study']): string[] {
  const safe = purchase?.equalSafety ?? null;
  if (purchase === null || safe === null) return [];
  const { option, room } = purchase.about;
  const after = option.measures.rooms[room]!;
  const hours = (value: number) => figureText(value, 0);
  return [
    `In the ${room} the coldest spot of the walls is above 80 % for ${hours(safe.hours_as_is)} h of ${hours(option.measures.period.hours)} h as it is, for ${hours(safe.hours_with_device)} h with it; mould index up to ${figureText(after.mould_index_peak, 2)} of 6 with it (1 is seen under a microscope, 3 by eye).`,
    ...(purchase.warmer === null
      ? []
      : [
          `For as low a mould risk by heat alone, the ${room} would have to be ${figureText(safe.warmer_by_k, 1)} K warmer, for ${figureText(safe.extra_per_year, 0)} ${option.measures.money.currency} a year.`,
        ]),
  ];
}

const flipsTable = (flips: readonly Flip[]): Html => html`
<h3>What would turn it round</h3>
${figureTable({
  caption: 'One input at a time, all else as it is',
  heads: ['input', 'today', 'turns round at', 'tried from', 'to', 'unit', 'found'],
  words: [5, 6],
  rows: flips.map(({ input, unit, today, value, low, high, likely, note }) => [
    input.replace(/,$/, ''),
    figureText(today),
    value === null
      ? note.startsWith('not tried')
        ? '-'
        : 'nowhere'
      : `${figureText(value)}${likely ? '' : ' (far off)'}`,
    figureText(low),
    figureText(high),
    unit,
    note,
  ]),
})}`;

function howSure({ study, weather }: ReportInput): string[] {
  const [baseline] = study.options;
  const { purchase, untried } = study;
  const assumed = baseline?.prepared.assumed.length ?? 0;
  const tried = purchase?.doubt.effects.length ?? 0;
  return [
    `Stated: ${writtenValues(study.scenario.yaml.value)} values stand in the scenario file, whose text stands at the end.`,
    `Assumed: ${assumed} values that nobody gave, each with a low, a high and a source.` +
      (tried === 0 ? '' : ` ${tried} were tried low and high; ${untried.length} were not.`),
    `Weather: ${weather.title}${weather.periodic ? ', a typical year and no forecast' : ''}.`,
    'Measured: nothing. No reading of this home has been held against the model. Differences between options are better known than any figure alone.',
    'Unknown: leaks, rising damp and driving rain. If a wall is wet for one of these reasons, nothing on this page helps before that is mended.',
  ];
}
