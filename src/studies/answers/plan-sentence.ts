import { andList } from '../../units/word-list.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { type PlanFigures, toldMoney } from '../effects/plan-figures.ts';

/** What a plan gains and costs against the baseline in a few words: "cheaper and drier, but colder". */
export function planVerdict(baseline: PlanFigures, plan: PlanFigures): string {
  const had = toldMoney(baseline);
  const saved = had - toldMoney(plan);
  const effects = effectsOf(baseline, plan);
  const felt = (wanted: boolean): string[] =>
    effects.filter(({ better }) => better === wanted).map(({ word }) => word);
  const clear = Math.abs(saved) >= Math.max(1, 0.005 * Math.abs(had));
  const gains = [...(clear && saved > 0 ? ['cheaper'] : []), ...felt(true)].slice(0, MOST);
  const losses = [...(clear && saved < 0 ? ['dearer'] : []), ...felt(false)].slice(0, MOST);
  if (gains.length === 0) return losses.length === 0 ? 'changes little' : andList(losses);
  return losses.length === 0 ? andList(gains) : `${andList(gains)}, but ${andList(losses)}`;
}

/** Besides this many, the figures beside it speak. */
const MOST = 1;
