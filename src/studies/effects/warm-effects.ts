import { figureText } from '../../units/figure-text.ts';
import type { Effect } from './effect.ts';
import type { PlanFigures } from './plan-figures.ts';

/**
 * The effect that tells more of two plans under which people are often too warm: how often, or how much.
 * Where it is always too warm already a share of the time says nothing of heat that is added.
 *
 * @param often  by the share of the time; null where that stays
 */
export function warmEffect(
  often: Effect | null,
  from: PlanFigures,
  to: PlanFigures,
): Effect | null {
  const much = excessEffect(from, to);
  if (often === null || much === null) return often ?? much;
  return much.better === often.better && much.weight > often.weight ? much : often;
}

function excessEffect(from: PlanFigures, to: PlanFigures): Effect | null {
  const more = to.warmBy - from.warmBy;
  if (Math.min(from.warm, to.warm) < OFTEN || Math.abs(more) < LEAST) return null;
  const better = more < 0;
  const [was, is] = [from, to].map(({ warmBy }) => figureText(warmBy, 1));
  return {
    ...{ of: 'warm', figure: 'warmBy', better, weight: Math.abs(more) / CLEAR },
    word: better ? 'cooler when hot' : 'hotter',
    short: better ? 'cooler hot rooms' : 'hotter rooms',
    words: `hot rooms are ${better ? 'only ' : ''}${is}\u00a0°C too warm on average (was ${was})`,
  };
}

/** Too warm for so much of the time under both plans that it counts how much. [%] */
const OFTEN = 25;
/** So much is clear to anybody, half of it is told, and less is no news: classes of EN 16798-1 are 1 to 2 K apart. [K] */
const CLEAR = 1;
const LEAST = 0.5;
