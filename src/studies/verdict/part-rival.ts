import { figureText } from '../../units/figure-text.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { planFigures } from '../effects/plan-figures.ts';
import { asGood, type Judged } from './as-good.ts';
import type { DecisionSetup } from './decision.ts';
import { guardOf, HARM } from './guards.ts';
import type { Weighing } from './weigh-plan.ts';

/**
 * Where nothing does all that a plan does for less, but something does as much against what it helps
 * against most: that, with its money. Empty where nothing does.
 */
export function partRivalWords(setup: DecisionSetup, weighed: Weighing): string[] {
  const { verdict, extra, effects, helped } = weighed;
  const main = effects.find((effect) => effect.better && helped.includes(guardOf(effect)));
  if (verdict !== 'worth it' || main === undefined || !(extra > 0)) return [];
  const guard = guardOf(main);
  const [cheapest] = asGood({
    ...{ baseline: judged(setup.baseline), plan: judged(setup.plan) },
    ...{ rivals: setup.rivals.map(judged), room: setup.room, helped: [guard] },
  });
  if (cheapest === undefined || extraPerYear(setup.plan, cheapest) > -LEAST_SAVED * extra)
    return [];
  const cost = extraPerYear(setup.baseline, cheapest);
  const { currency } = setup.plan.money;
  const money = `${figureText(Math.abs(cost), 0)} ${currency} a year`;
  return [
    `Against ${HARM[guard]} alone, ${cheapest.plan} does as much and ${cost < 0 ? `saves ${money}` : `costs ${money}`}.`,
  ];
}

const judged = (measures: DecisionSetup['plan']): Judged => ({
  measures,
  figures: planFigures(measures),
});

/** Share of a plan's money that another must save to be worth a word. [-] */
const LEAST_SAVED = 0.1;
