import type { PurchaseStudy } from '../../studies/purchase-study.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import { pathInWords } from './path-in-words.ts';
import { details, list, type Section } from './section.ts';

/** Each doubtful input low and high, and what it does to the decision's money. */
export function doubtsSection(
  { untried, unusableDoubts }: ReportStudy,
  purchase: PurchaseStudy,
  picture: Html,
): Section {
  const { about, doubt } = purchase;
  const { currency } = about.option.measures.money;
  const words = (path: string) => pathInWords(path, about.option.raw);
  return {
    id: 'doubts',
    title: 'What could be different',
    body: html`
<p>Each input that nobody knows exactly, once low and once high, all else as it is, with and without ${about.option.name}. The figure is the extra money a year beyond doing nothing, purchase cost included: ${figureText(doubt.figure, 2)} ${currency} as it is; below 0 is saved.</p>
${picture}
${figureTable({
  caption: 'Inputs low and high, largest effect first',
  heads: [
    'input',
    'value',
    'low',
    'high',
    `extra at low [${currency}]`,
    `extra at high [${currency}]`,
    'turns the sign',
  ],
  words: [6],
  rows: doubt.effects.map(({ path, value, low, high, at_low, at_high, flips }) => [
    html`${words(path)}<br><code>${path}</code>`,
    ...[value, low, high].map((x) => figureText(x)),
    ...[at_low, at_high].map((x) => figureText(x, 2)),
    flips ? 'yes' : 'no',
  ]),
})}
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
${
  untried.length === 0
    ? null
    : details(
        `${untried.length} that were left aside (--doubts tries more)`,
        list(
          untried.map(
            ({ path, low, high }) =>
              html`<code>${path}</code> ${figureText(low)} to ${figureText(high)}`,
          ),
        ),
      )
}
${unusableDoubts.length === 0 ? null : html`<p>Stated as doubtful, but of no number of these options or out of their range: ${unusableDoubts.join(', ')}.</p>`}`,
  };
}
