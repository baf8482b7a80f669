import { figureText } from '../../units/figure-text.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { GROWTH } from '../effects/mould-marks.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { type Judged, judged } from '../effects/plan-figures.ts';
import { asMuch } from './as-good.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { guardOf, HARM } from './guards.ts';
import type { Weighing } from './weigh-plan.ts';

/**
 * Where nothing does all that a plan does for less, but something does as much against what it helps
 * against most: the cheapest of that, with its money and what it makes worse. Empty where nothing
 * does.
 */
export function partRivalWords(setup: DecisionSetup, weighed: Weighing): string[] {
  const { verdict, extra, effects, helped } = weighed;
  const main = effects.find((effect) => effect.better && helped.includes(guardOf(effect)));
  if (verdict !== 'worth it' || main === undefined || !(extra > 0)) return [];
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
  const { currency } = setup.plan.money;
  const money = `${figureText(Math.abs(cost), 0)} ${currency} a year`;
  return [
    `Against ${HARM[guard]} alone, ${cheapest.figures.plan} does as much and ${cost < 0 ? 'saves' : 'costs'} ${money}${but}.`,
  ];
}

/** What makes mould grow where none did is no way to anything. */
const startsMould = ({ mould }: Judged['figures']): boolean => mould.value >= GROWTH;

/** Share of a plan's money that another must save to be worth a word. [-] */
const LEAST_SAVED = 0.1;
