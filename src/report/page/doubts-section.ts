import type { DoubtfulInput } from '../../studies/doubts/doubtful-inputs.ts';
import type { PlanStudy } from '../../studies/plan-study.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { type Html, html } from './html.ts';
import { inputInWords } from './input-in-words.ts';
import { pathInWords } from './path-in-words.ts';
import { details, list, type Section } from './section.ts';

/** Each doubtful input low and high, and what it does to the decision's money. */
export function doubtsSection(
  { quicklyTried, untried, unusableDoubts }: ReportStudy,
  purchase: PlanStudy,
  picture: Html,
): Section {
  const { about, doubt } = purchase;
  const { currency } = about.option.measures.money;
  const words = (path: string) => pathInWords(path, about.option.raw);
  return {
    id: 'doubts',
    title: 'What could be different',
    body: html`
<div class="pair"><div>
${picture}
</div><div>
<p>Each input that nobody knows exactly, once low and once high, all else as it is, with and without ${about.option.name}. The figure is the extra money a year beyond doing nothing, purchase cost included: ${figureText(doubt.figure, 2)} ${currency} as it is; below 0 is saved.</p>
${findFirst(purchase)}
${
  doubt.impossible.length === 0
    ? null
    : details(
        `${doubt.impossible.length} whose low or high is no home any more`,
        list(
          doubt.impossible.map(
            ({ path, low, high }) => `${words(path)} (${path}): ${low} to ${high}`,
          ),
        ),
      )
}
${leftAside(quicklyTried, 'tried in three weeks only, where they matter less (--doubts tries more)')}
${leftAside(untried, 'that were left aside (--doubts tries more)')}
${unusableDoubts.length === 0 ? null : html`<p>Stated as doubtful, but of no number of these plans or out of their range: ${unusableDoubts.join(', ')}.</p>`}
</div></div>`,
  };
}

function leftAside(inputs: readonly DoubtfulInput[], words: string): Html | null {
  if (inputs.length === 0) return null;
  const items = inputs.map(
    ({ path, low, high }) => html`<code>${path}</code> ${figureText(low)} to ${figureText(high)}`,
  );
  return details(`${inputs.length} ${words}`, list(items));
}

/** The inputs that move the money most: worth a measurement or a look at a bill before any other. */
function findFirst({ about, doubt }: PlanStudy): Html | null {
  const most = doubt.effects.filter(({ effect }) => effect >= 1).slice(0, FIRST);
  if (most.length === 0) return null;
  const { currency } = about.option.measures.money;
  return html`<h3>Worth finding out first</h3>
<ol>${most.map(({ path, value, low, high, at_low, at_high }) => {
    const { name, unit } = inputInWords(path, about.option.raw);
    return html`<li><b>${name}</b>: taken as ${figureText(value)}; between ${figureText(low)} and ${figureText(high)}${unit === '' ? null : ` ${unit}`} it decides ${figureText(Math.abs(at_high - at_low), 0)} ${currency} a year.</li>`;
  })}</ol>`;
}

const FIRST = 3;
