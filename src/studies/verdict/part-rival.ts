import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { sumText } from '../../units/sum-text.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import type { Effect } from '../effects/effect.ts';
import { GROWTH } from '../effects/mould-marks.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { type Judged, judged, planFigures } from '../effects/plan-figures.ts';
import { asMuch } from './as-good.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { guardOf, HARM } from './guards.ts';
import { CLEAR, type Weighing } from './weigh-plan.ts';

/**
 * Where nothing does all that a plan does for less, but something does as much against what it helps
 * against most: the cheapest of that, with its money and what it makes worse. Empty where nothing
 * does.
 */
export function partRivalWords(setup: DecisionSetup, weighed: Weighing): string[] {
  const { extra } = weighed;
  const main = mainHelp(weighed);
  if (main === undefined) return [];
  const guard = guardOf(main);
  const [baseline, plan] = [judged(setup.baseline), judged(setup.plan)];
  const [cheapest] = setup.rivals
    .map(judged)
    .filter(asMuch({ baseline, plan, room: setup.room, helped: [guard] }))
    .filter(({ figures }) => !(startsMould(figures) && !startsMould(baseline.figures)))
    .sort((a, b) => extraPerYear(b.measures, a.measures));
  if (cheapest === undefined) return [];
  if (extraPerYear(setup.plan, cheapest.measures) > -LEAST_SAVED * extra) return [];
  const cost = extraPerYear(setup.baseline, cheapest.measures);
  const [worse] = effectsOf(baseline.figures, cheapest.figures).filter(({ better }) => !better);
  const but = worse === undefined ? '' : `, but ${worse.words}`;
  const money = moneyWords(cost, setup.plan);
  return [
    `Against ${HARM[guard]} alone, ${cheapest.figures.plan} does as much and ${money}${but}.`,
  ];
}

/**
 * Where nothing does as much as a plan that is worth it, but something goes at least half of the way
 * against what it helps against most, for half of its money or less and without making anything clearly
 * worse: that which goes farthest, with its money. Empty where nothing does.
 */
export function partWayWords(setup: DecisionSetup, weighed: Weighing): string[] {
  const { extra } = weighed;
  const main = mainHelp(weighed);
  if (main === undefined) return [];
  const before = planFigures(setup.baseline);
  const [farthest] = setup.rivals
    .flatMap((rival) => {
      const figures = planFigures(rival);
      const its = effectsOf(before, figures);
      if (its.some(({ better, weight }) => !better && weight >= CLEAR)) return [];
      // The word tells what the air carries less of, too.
      const same = its.find(({ better, word }) => better && word === main.word);
      const cost = extraPerYear(setup.baseline, rival);
      const goesFar = same !== undefined && same.weight >= main.weight / 2;
      return goesFar && cost <= extra / 2 ? [{ name: figures.plan, cost, same }] : [];
    })
    .sort((a, b) => b.same.weight - a.same.weight || a.cost - b.cost);
  if (farthest === undefined) return [];
  const { name, cost, same } = farthest;
  const far = same.weight < main.weight ? 'goes part of the way' : 'does one part of this as well';
  return [`${name} ${far} and ${moneyWords(cost, setup.plan)}: ${same.words}.`];
}

/** What a plan helps most against, where it is worth it for money. */
const mainHelp = ({ verdict, extra, effects, helped }: Weighing): Effect | undefined =>
  verdict === 'worth it' && extra > 0
    ? effects.find((effect) => effect.better && helped.includes(guardOf(effect)))
    : undefined;

const moneyWords = (cost: number, { money }: PlanMeasures): string =>
  `${cost < 0 ? 'saves' : 'costs'} ${sumText(Math.abs(cost), 0)} ${money.currency} a year`;

/** What makes mould grow where none did is no way to anything. */
const startsMould = ({ mould }: Judged['figures']): boolean => mould.value >= GROWTH;

/** Share of a plan's money that another must save to be worth a word. [-] */
const LEAST_SAVED = 0.1;
