import { figureText } from '../../units/figure-text.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { planFigures } from '../effects/plan-figures.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { guardOf } from './guards.ts';
import { CLEAR, type Weighing } from './weigh-plan.ts';

/**
 * Where nothing does as much as a plan that is worth it, but something goes at least half of the way
 * against what it helps against most, for half of its money or less and without making anything clearly
 * worse: that which goes farthest, with its money. Empty where nothing does.
 */
export function partWayWords(setup: DecisionSetup, weighed: Weighing): string[] {
  const { verdict, extra, effects, helped } = weighed;
  const main = effects.find((effect) => effect.better && helped.includes(guardOf(effect)));
  if (verdict !== 'worth it' || main === undefined || !(extra > 0)) return [];
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
  const money = `${figureText(Math.abs(cost), 0)} ${setup.plan.money.currency} a year`;
  const far = same.weight < main.weight ? 'goes part of the way' : 'does as much of one thing';
  return [`${name} ${far} and ${cost < 0 ? 'saves' : 'costs'} ${money}: ${same.words}.`];
}
