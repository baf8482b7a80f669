import { sumText } from '../../units/sum-text.ts';
import type { Effect } from '../effects/effect.ts';
import { effectsOf, urgency } from '../effects/plan-effects.ts';
import { type PlanFigures, spanWords, toldMoney } from '../effects/plan-figures.ts';
import { guardsOf } from '../verdict/guards.ts';
import { smokeFirst } from '../verdict/smoke-first.ts';
import { CLEAR } from '../verdict/weigh-plan.ts';
import type { AskedPlan, Topic } from './asked.ts';
import { type Question, questionsOf } from './plan-questions.ts';
import { purchaseAnswer } from './purchase-answer.ts';
import { busiestRule, ringing } from './rule-words.ts';
import { whatMends } from './what-mends.ts';

/** A question with its answer in a few sentences, the first of which answers it by itself. */
export interface QuestionAnswer {
  readonly title: string;
  /** The answer without the figures that carry it: "nineteen saves 62 GBP a year, but colder." */
  readonly inShort: string;
  /** What is never told without the answer, and before it: that a stove lets out smoke; empty for nothing. */
  readonly first: string;
  readonly sentences: readonly string[];
  /** The plan that answers first; empty where it is measured by another one than the baseline. */
  readonly plan: string;
}

/** An answer with the plans whose money, and what it is for, it tells. */
export interface PlansAnswer extends QuestionAnswer {
  readonly told: readonly AskedPlan[];
}

/**
 * Every question that the plans ask, answered by money and by what matters most besides. Of many
 * plans that ask the same, two answer: the one that costs least, and the one that does best for what
 * it costs.
 *
 * @param plans      the baseline first
 * @param proposals  what might be done instead of a purchase besides
 */
export function questionAnswers(
  plans: readonly AskedPlan[],
  proposals: readonly AskedPlan[] = [],
): PlansAnswer[] {
  const questions = inOrder(questionsOf(plans));
  const smoke = plans[0] === undefined ? '' : smokeFirst(plans[0].prepared);
  const first = smoke === '' ? undefined : questions.find(isOfAir);
  return questions.map((question) => {
    const most = question.about === 'purchase' ? MOST_OF_PURCHASE : MOST_SENTENCES;
    const { inShort, sentences: all } = answerTo(question, plans, proposals);
    const sentences = all.slice(0, most);
    return {
      title: question.title,
      inShort,
      first: question === first ? smoke : '',
      sentences: question === first ? withFirst(smoke, sentences) : sentences,
      plan: toldBy(question)[0].against === plans[0] ? toldBy(question)[0].plan.figures.plan : '',
      told: toldBy(question).map(({ plan }) => plan),
    };
  });
}

/** Whether a question may be answered by what it does to the air. */
const isOfAir = ({ about, asked }: Question): boolean =>
  about === 'airing' ||
  asked.some(({ plan, against }) => guardsOf(against.prepared, plan.prepared).includes('air')) ||
  (about === 'devices' && asked.some(({ against }) => smokeFirst(against.prepared) !== ''));

/** In one sentence with the answer, so that neither is ever told without the other. */
const withFirst = (first: string, [lead = '', ...rest]: readonly string[]): readonly string[] => [
  `${first} ${lead}`,
  ...rest,
];

function answerTo(
  question: Question,
  plans: readonly AskedPlan[],
  proposals: readonly AskedPlan[],
): Pick<QuestionAnswer, 'inShort' | 'sentences'> {
  const { about, asked } = question;
  const [{ plan, against }] = toldBy(question);
  // Whether a purchase pays is a matter of years.
  if (about === 'purchase' && plan.figures.part === null) {
    return purchaseAnswer(plan, against, [...plans, ...proposals]);
  }
  const sentences = [
    ...toldBy(question).map((each, k) =>
      sentenceOf(each, plans[0]!, question, k === 0 ? MOST_EFFECTS : 1),
    ),
    ...(about === 'rules' ? busiestRule(asked.map((each) => each.plan)) : []),
    ...(about === 'devices' ? [whatMends(asked[0]!.plan, asked[0]!.against, plans)] : []),
  ];
  return {
    inShort: shortOf({ plan, against }, plans[0]!, about),
    sentences: sentences.filter((sentence) => sentence !== ''),
  };
}

type Asked = Question['asked'][number];

/** Of several purchases the one that does most stands in its place, the others after all else but what is no one thing. */
function inOrder(questions: readonly Question[]): Question[] {
  const felt = ({ asked }: Question): number =>
    Math.max(
      ...asked.map(({ plan, against }) =>
        effectsOf(against.figures, plan.figures).reduce((sum, effect) => sum + urgency(effect), 0),
      ),
    );
  const others = questions
    .filter(({ about }) => about === 'purchase')
    .sort((a, b) => felt(b) - felt(a))
    .slice(1);
  const last = [...others, ...questions.filter(({ about }) => about === 'the rest')];
  return [...questions.filter((question) => !last.includes(question)), ...last];
}

/** Of those that ask, the ones that answer. */
function toldBy({ about, asked }: Question): readonly [Asked, ...Asked[]] {
  const best = bestOf(asked);
  if (about === 'purchase') return [best];
  const byMoney = asked.toSorted((a, b) => moneyMore(a) - moneyMore(b));
  const cheapest = byMoney[0]!;
  return cheapest === best ? [best] : [cheapest, best];
}

/** The one that does best for what it costs. */
const bestOf = (asked: readonly Asked[]): Asked =>
  asked.toSorted((a, b) => balance(b) - balance(a))[0]!;

/** "nineteen saves 156 GBP a year: nobody is in a room that is too cold any more, but rooms are too damp ..." */
function sentenceOf(
  { plan, against }: Asked,
  baseline: AskedPlan,
  { about }: Question,
  most: number,
): string {
  const more = moneyMore({ plan, against });
  const saves = Math.round(more) <= 0;
  const effects = asEffects(plan, against, about);
  // Of a saving people ask what they give up for it, of a cost what they get.
  const gains = wordsOf(
    effects.filter(({ better }) => better),
    saves ? 1 : most,
  );
  const losses = wordsOf(
    effects.filter(({ better }) => !better),
    saves ? most : 1,
  );
  if (gains === '' && losses === '') return nothingElse({ plan, against }, baseline, about);
  const opening = openingOf({ plan, against }, baseline, about);
  if (gains === '') return `${opening}, ${saves ? 'but' : 'and'} ${losses}.`;
  return `${opening}: ${gains}${losses === '' ? '' : `; but ${losses}`}.`;
}

/** "nineteen saves 156 GBP a year, but colder." */
function shortOf(asked: Asked, baseline: AskedPlan, about: Topic): string {
  const effects = asEffects(asked.plan, asked.against, about);
  const gain = effects.find(({ better }) => better)?.word ?? '';
  const loss = effects.find(({ better }) => !better)?.word ?? '';
  const saves = Math.round(moneyMore(asked)) <= 0;
  if (gain === '' && loss === '') return nothingElse(asked, baseline, about);
  const opening = openingOf(asked, baseline, about);
  if (gain === '') return `${opening}, ${saves ? 'but' : 'and'} ${loss}.`;
  return `${opening}: ${gain}${loss === '' ? '' : `, but ${loss}`}.`;
}

/**
 * "nineteen saves 156 GBP a year", " against cooler" where it is measured by another plan.
 *
 * @param and  before how often rules ring
 */
function openingOf(asked: Asked, baseline: AskedPlan, about: Topic, and = ' and '): string {
  const { plan, against } = asked;
  const beside = against === baseline ? '' : ` against ${against.figures.plan}`;
  const rings = about === 'rules' ? ringing(plan, against) : '';
  const unpaid = about === 'purchase' ? ' (its price not counted)' : '';
  const told = rings === '' ? '' : and + rings;
  return `${plan.figures.plan} ${moneyWords(moneyMore(asked), plan)}${beside}${told}${unpaid}`;
}

function nothingElse(asked: Asked, baseline: AskedPlan, about: Topic): string {
  const saves = Math.round(moneyMore(asked)) <= 0;
  const opening = openingOf(asked, baseline, about, ', ');
  return `${opening} and ${saves ? 'changes little else' : 'makes nothing clearly better'}.`;
}

/** What matters most first; of a stove that is what is clearly otherwise in the air, and for those who cool or shade how often they are too warm. */
function asEffects(plan: AskedPlan, against: AskedPlan, about: Topic): Effect[] {
  const effects = effectsOf(against.figures, plan.figures);
  const removed = ({ measures }: AskedPlan): number => measures.cooling.removed_kwh;
  if (about === 'devices' && smokeFirst(against.prepared) !== '') {
    const isOfSmoke = ({ of, weight }: Effect): number => Number(of === 'air' && weight >= CLEAR);
    return effects.toSorted((a, b) => isOfSmoke(b) - isOfSmoke(a));
  }
  if (about !== 'blinds' && !(removed(plan) > removed(against))) return effects;
  return effects.toSorted((a, b) => Number(b.of === 'warm') - Number(a.of === 'warm'));
}

const wordsOf = (effects: readonly Effect[], most: number): string =>
  effects
    .slice(0, most)
    .map(({ words }) => words)
    .join(' and ');

function moneyWords(more: number, { prepared: { prices }, figures }: AskedPlan): string {
  const figure = sumText(Math.abs(more), 0);
  if (Number(figure) === 0) return 'costs the same';
  const sum = `${figure}\u00a0${prices.currency}`;
  const span = spanWords(figures);
  if (more < 0) return `saves ${sum} ${span}`;
  return figures.part === null ? `costs ${sum} ${span} more` : `costs ${sum} more ${span}`;
}

const moneyMore = ({ plan, against }: Asked): number =>
  toldMoney(plan.figures) - toldMoney(against.figures);

/** What a plan gains less what it loses, money among it as a share of all money. */
function balance({ plan, against }: Asked): number {
  const effects = effectsOf(against.figures, plan.figures);
  const felt = effects.reduce(
    (sum, effect) => sum + (effect.better ? urgency(effect) : -urgency(effect)),
    0,
  );
  return felt - moneyMore({ plan, against }) / Math.max(1, shareOfMoney(against.figures));
}

/** Money that weighs as much as a clear effect. [currency] */
const shareOfMoney = (figures: PlanFigures): number => 0.05 * Math.abs(toldMoney(figures));

const MOST_SENTENCES = 3;
/** A verdict, what carries it, what else there is, and the money at which it turns. */
const MOST_OF_PURCHASE = 5;
const MOST_EFFECTS = 2;
