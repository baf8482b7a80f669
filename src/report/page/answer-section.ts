import { coldSpotHours } from '../../measures/comfort/room-hours.ts';
import { isWholeYears } from '../../measures/years-in.ts';
import type { Option } from '../../studies/options.ts';
import type { PlanStudy } from '../../studies/plan-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { carriedBy } from './asked-questions.ts';
import { beforeAfter, leadingPlan } from './before-after.ts';
import { howSure } from './how-sure.ts';
import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { answerMarkup, list, type Section } from './section.ts';
import { turningPoints } from './turning-points.ts';

/**
 * The answer with its three figures: of the plan asked about, else of the first question that plans
 * ask, else of all plans; and beside it what would turn it round and how
 * sure it is.
 */
export function answerSection(input: ReportInput): Section {
  const { study } = input;
  const { purchase } = study;
  const { first, lead, because, reasons } = told(study);
  // Of a part of a year there is no answer that could turn.
  const flips = isWholeYears(study.options[0]!.measures.period.hours)
    ? (purchase?.flips ?? [])
    : [];
  return {
    id: 'answer',
    title: 'The answer',
    body: html`
<div class="hero">
<div>
${first === '' ? null : html`<p class="first"><b>First of all:</b> ${first}</p>`}
<p class="${lead.length > LENGTHY ? 'lead lengthy' : 'lead'}">${lead}</p>
${meaning(askedAbout(study))}
${because.length === 0 ? null : html`<div class="because">${list(because)}</div>`}
${beforeAfter(study)}
${robustness(study)}
${reasonsMarkup(study, reasons)}
${meaning(study.options.slice(0, 1))}
</div>
<div class="beside">
${flips.length === 0 ? null : turningPoints(flips)}
${howSure(input)}
</div>
</div>`,
  };
}

interface Told {
  /** What is to be done before all else; empty for nothing. */
  readonly first: string;
  /** The answer in a sentence. */
  readonly lead: string;
  /** What carries it. */
  readonly because: readonly string[];
  /** What else is to be said; null where the plans themselves are the answer. */
  readonly reasons: readonly string[] | null;
}

/** The answer of the plan asked about, else of the first question that plans ask, else of all plans. */
function told({ purchase, asked, answer }: ReportInput['study']): Told {
  if (purchase !== null) {
    const { first, sentences, because, turns } = purchase.decision;
    const [lead = '', ...rest] = sentences;
    // Where an input turns it round is drawn beside the answer.
    const reasons = rest.filter((each) => !because.includes(each) && !turns.includes(each));
    return { first, lead, because, reasons };
  }
  const [question] = asked.questions;
  if (question === undefined) {
    return { first: '', lead: answer.sentences[0] ?? '', because: [], reasons: null };
  }
  const { title, first, inShort } = question;
  return { first, lead: `${title} ${inShort}`, because: carriedBy(question), reasons: [] };
}

/** What stands behind the answer. */
function reasonsMarkup(study: ReportInput['study'], reasons: Told['reasons']): Html | null {
  if (reasons === null) return answerMarkup(study.answer);
  const said = [...inTheRoom(study), ...reasons];
  return said.length === 0 ? null : list(said);
}

/** Whether the answer stands, and against what that was tried. */
function robustness({ asked, options, purchase }: ReportInput['study']): Html | null {
  if (purchase === null) return asked.caveat === '' ? null : html`<p>${asked.caveat}</p>`;
  const { decision, steady, flips } = purchase;
  const { hours } = options[0]!.measures.period;
  if (!isWholeYears(hours)) {
    return html`<p><b>This is not robust:</b> only ${Math.round(hours / 24)} days were simulated. Money and hours “a year” are these days scaled up, whatever their season; do not decide by them.</p>`;
  }
  const drawn = steadyWords(purchase);
  if (decision.sure) {
    const inputs = steady === null ? '' : ' and none of the doubtful inputs that matter most';
    return html`<p><b>This is robust as far as was tried:</b> ${drawn}no price, no habit${inputs} turns it round by itself at a likely value.</p>`;
  }
  const likely = flips.some((flip) => flip.likely);
  const why = likely
    ? 'one input alone may well be such that it turns round: see “What would turn it round”'
    : steady !== null && steady < STEADY
      ? 'together, what is not known may turn it round'
      : 'the next best option is nearer in money than doubtful inputs move it';
  return html`<p><b>This is not robust:</b> ${drawn}${why}.</p>`;
}

/** In how many draws the plan comes out alike beside doing nothing. */
function steadyWords({ draws, steady }: PlanStudy): string {
  if (draws === null || steady === null) return '';
  const { samples } = draws.doubt;
  return `compared with doing nothing it comes out the same in ${Math.round(steady * samples)} of ${samples} trials in which all that is doubtful was varied; `;
}

/** What names in the answer stand for. */
function meaning(named: readonly Option[]): Html | null {
  const words = named.filter(({ description }) => description !== '');
  if (words.length === 0) return null;
  return html`<p class="note">${words.map(({ name, description }) => html`<b>${name}</b>: ${description}. `)}</p>`;
}

/** The plan that leads the page, and what is better in its place. */
function askedAbout(study: ReportInput['study']): readonly Option[] {
  const instead = study.purchase?.decision.instead;
  return [leadingPlan(study), study.options.find(({ name }) => name === instead)].filter(
    (option) => option !== null && option !== undefined,
  );
}

/** What becomes of the room that the purchase is for. */
function inTheRoom({ options, purchase }: ReportInput['study']): string[] {
  const safe = purchase?.equalSafety ?? null;
  if (purchase === null || safe === null) return [];
  const { option, room } = purchase.about;
  const before = options[0]!.measures.rooms[room]!;
  const after = option.measures.rooms[room]!;
  const index = (value: number) => figureText(value, 1);
  return [
    `In ${theRoom(room)} the mould index goes up to ${index(before.mould_index_peak)} of 6 as it is and to ${index(after.mould_index_peak)} with it (1 is seen under a microscope, 3 by eye)${before.mould_index_peak < 1 ? ': mould would not get going even without it' : ''}.`,
    ...passedOver(purchase),
    ...(purchase.warmer === null
      ? []
      : [
          `For as low a mould risk by heat alone, ${theRoom(room)} would have to be ${figureText(safe.warmer_by_k, 1)} °C warmer, for ${sumText(safe.extra_per_year, 0)} ${option.measures.money.currency} a year.`,
        ]),
  ];
}

/** Options that cost less and leave fewer cold spots in the whole home, though more in this room. */
function passedOver({ about: { option, room }, decision, rivals }: PlanStudy): string[] {
  const spots = coldSpotHours(option.measures);
  const money = option.measures.money.total_per_year;
  const fewer = rivals.filter(
    ({ name, measures }) =>
      name !== decision.instead &&
      coldSpotHours(measures) < spots &&
      measures.money.total_per_year < money,
  );
  return fewer.map(
    ({ name, measures }) =>
      `${name} leaves fewer cold spots in the whole home (${figureText(coldSpotHours(measures), 0)} against ${figureText(spots, 0)} room-hours) for ${sumText(money - measures.money.total_per_year, 0)} ${measures.money.currency} a year less, but does not bring the mould risk of ${theRoom(room)} as low.`,
  );
}

/** More than a phone has room for in large type. [characters] */
const LENGTHY = 90;
/** Share of draws below which an answer does not stand. */
const STEADY = 0.9;
