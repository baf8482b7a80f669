import type { DoubtfulInput } from '../../studies/doubts/doubtful-inputs.ts';
import type { PlanStudy } from '../../studies/plan-study.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { sumText } from '../../units/sum-text.ts';
import { type Html, html } from './html.ts';
import { inputInWords } from './input-in-words.ts';
import { pathInWords } from './path-in-words.ts';
import { details, list, type Section } from './section.ts';

/**
 * What is not known exactly: all of it drawn at once, then the inputs that matter most low and high by
 * themselves, and what each does to the decision's money.
 */
export function doubtsSection(
  { untried, unusableDoubts }: ReportStudy,
  purchase: PlanStudy,
  pictures: { readonly draws: Html; readonly doubt: Html },
): Section {
  const { about, doubt } = purchase;
  const words = (path: string) => pathInWords(path, about.option.raw);
  return {
    id: 'doubts',
    title: 'What could be different',
    body: html`
<div class="pair"><div>
${pictures.draws}
${drawnWords(purchase)}
</div><div>
${pictures.doubt}
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
${otherDrawn(purchase)}
${leftAside(untried)}
${unusableDoubts.length === 0 ? null : html`<p>Stated as doubtful, but of no number of these plans or out of their range: ${unusableDoubts.join(', ')}.</p>`}
</div></div>`,
  };
}

/** How what is not known was tried. */
function drawnWords({ about, doubt, draws }: PlanStudy): Html {
  if (draws === null) return html`<p>Nothing that nobody knows exactly was drawn.</p>`;
  const { name, measures } = about.option;
  return html`<p>Every value that nobody knows exactly is drawn between its low and its high, all of them at once, and the same with and without ${name}: a dot is a draw, the bar the middle without the lowest and highest tenth, the upright line doing nothing. The other picture takes those that the figures follow most, once low and once high, all else as it is. Money is what is spent a year beyond doing nothing, purchase cost included: ${sumText(doubt.figure, 2)} ${measures.money.currency} as it is; below 0 is saved.${stepWords(draws.doubt.step_minutes, about.option.prepared.dt / 60)}</p>`;
}

/** Draws in longer steps than those of the scenario. [min] */
const stepWords = (drawn: number, own: number): string | null =>
  drawn > own
    ? ` Draws are run in steps of ${figureText(drawn, 0)} minutes; one in twenty, and at least three, in those of ${figureText(own, 0)} too, to correct the others.`
    : null;

function leftAside(inputs: readonly DoubtfulInput[]): Html | null {
  if (inputs.length === 0) return null;
  const items = inputs.map(
    ({ path, low, high }) => html`<code>${path}</code> ${figureText(low)} to ${figureText(high)}`,
  );
  return details(`${inputs.length} that ${were(inputs.length)} not drawn`, list(items));
}

const were = (count: number): string => (count === 1 ? 'was' : 'were');

/** The rest of what was drawn, which the money follows less. */
function otherDrawn({ draws, doubt, about }: PlanStudy): Html | null {
  if (draws === null) return null;
  const alone = new Set([...doubt.effects, ...doubt.impossible].map(({ path }) => path));
  const rest = draws.ranked.filter(({ path }) => !alone.has(path));
  if (rest.length === 0) return null;
  const items = rest.map(({ path }) => {
    const { low, high } = draws.doubt.inputs.find((input) => input.path === path)!;
    return html`<code>${path}</code> ${figureText(low)} to ${figureText(high)}`;
  });
  return details(
    `${rest.length} that ${were(rest.length)} drawn and ${rest.length === 1 ? 'matters' : 'matter'} less to ${about.option.name}`,
    list(items),
  );
}

/** The inputs that move the money most: worth a measurement or a look at a bill before any other. */
function findFirst({ about, doubt }: PlanStudy): Html | null {
  const most = doubt.effects.filter(({ effect }) => effect >= 1).slice(0, FIRST);
  if (most.length === 0) return null;
  const { currency } = about.option.measures.money;
  return html`<h3>Worth finding out first</h3>
<ol>${most.map(({ path, value, low, high, at_low, at_high }) => {
    const { name, unit } = inputInWords(path, about.option.raw);
    const [taken, from, to] = [value, low, high].map((each) => withMinus(figureText(each)));
    return html`<li><b>${name}</b>: taken as ${taken!}; between ${from!} and ${to!}${unit === '' ? null : ` ${unit}`} it makes a difference of ${sumText(Math.abs(at_high - at_low), 0)} ${currency} a year.</li>`;
  })}</ol>`;
}

const FIRST = 3;
