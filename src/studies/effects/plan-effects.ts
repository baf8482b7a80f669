import { figureText } from '../../units/figure-text.ts';
import { relativeChange } from '../../units/relative-change.ts';
import { coldEffects } from './cold-effects.ts';
import { dampEffect } from './damp-effects.ts';
import type { Effect } from './effect.ts';
import { BY_EYE, GROWTH } from './mould-marks.ts';
import { pct } from './percent.ts';
import type { PlanFigures } from './plan-figures.ts';
import { warmEffect } from './warm-effects.ts';
import { wasInRoom } from './was-in-room.ts';

/** What changes from one plan to another but money, what matters most first; what nobody would notice is left out. */
export function effectsOf(from: PlanFigures, to: PlanFigures): Effect[] {
  const effects = [
    ...coldEffects(from, to),
    mouldEffect(from, to),
    dampEffect('spots', from, to),
    dampEffect('damp', from, to),
    shareEffect(DRY, from, to),
    warmEffect(shareEffect(WARM, from, to), from, to),
    ...airEffects(from, to),
  ]
    .filter((effect) => effect !== null)
    .filter(({ weight }) => weight >= NOTICED)
    .sort((a, b) => urgency(b) - urgency(a));
  return airOnce(effects);
}

/**
 * Once stale air is told by one species, what else is clear to anybody comes before the next: the same lack
 * of fresh air told twice must not hide the mould that it brings. Better and worse each have their own turn,
 * because they are told apart.
 */
function airOnce(effects: readonly Effect[]): Effect[] {
  const isAgain = (effect: Effect, k: number): boolean =>
    effect.of === 'air' &&
    effects.slice(0, k).some((other) => other.of === 'air' && other.better === effect.better);
  const rank = (effect: Effect, k: number): number =>
    isAgain(effect, k) ? Math.min(urgency(effect), CLEAR_AIR_AGAIN) : urgency(effect);
  return effects
    .map((effect, k) => ({ effect, rank: rank(effect, k) }))
    .sort((a, b) => b.rank - a.rank)
    .map(({ effect }) => effect);
}

/** An index that stays under 1, where nothing grows, is not worth a word. */
function mouldEffect({ mould: was }: PlanFigures, { mould: is }: PlanFigures): Effect | null {
  const more = is.value - was.value;
  if (Math.abs(more) < 0.3 || Math.max(is.value, was.value) < GROWTH) return null;
  const better = more < 0;
  const figures = `index ${index(is.value)}, ${wasInRoom(was, is, index(was.value))}`;
  return {
    ...{ of: 'mould', better, weight: Math.abs(more) / 0.5 },
    ...(Math.max(is.value, was.value) >= BY_EYE && Math.min(is.value, was.value) < GROWTH
      ? { seen: true }
      : {}),
    word: better ? 'less mould' : 'more mould',
    words: `mould is ${better ? 'less likely' : 'likelier'} (${figures})`,
  };
}

function shareEffect(
  { of, figure, points, worse, better, fine, wrong }: Share,
  from: PlanFigures,
  to: PlanFigures,
): Effect | null {
  const [was, is] = [figure(from), figure(to)];
  const more = Math.abs(is - was);
  if (more < 1) return null;
  const words = is < was ? fine(is, was) : `${wrong} ${pct(is)} of the time (was ${pct(was)})`;
  const weight = more / points;
  return { of, better: is < was, weight, word: is < was ? better : worse, words };
}

/**
 * Levels that differ by a tenth of the larger of both of what is beyond its limit now and then; and of what somebody minds
 * below its limit already, such as pollen, those that fall to less than half or more than double.
 */
function airEffects({ air: had }: PlanFigures, { air }: PlanFigures): Effect[] {
  return air.flatMap(({ name, label, unit, kind, value, over, minded }) => {
    const before = had.find((other) => other.name === name);
    if (before === undefined || !(before.value > 0)) return [];
    const change = relativeChange(before.value, value);
    const most = Math.max(over, before.over);
    const halved = Math.abs(Math.log2(value / before.value)) > 1;
    const told = (minded || before.minded) && halved;
    const noted = most >= 0.5 || told;
    if (Math.abs(change) < 0.1 || !noted) return [];
    const better = change < 0;
    const where = kind === 'mean' ? '' : ' at night';
    const decimals = decimalsOf(Math.max(value, before.value));
    const [now, then] = [value, before.value].map((level) => figureText(level, decimals));
    const figures = `${now}${NO_BREAK}${unit}${where}, was ${then}`;
    const word = `${better ? 'less' : 'more'} ${label}`;
    const weight = Math.abs(change) / 0.2;
    const words = `there is ${word} (${figures})`;
    return [{ of: 'air', better, weight, word, words, nearness: nearness(most, told) }];
  });
}

/** Both levels of a pair are told as finely as the larger needs: 1367, 12.5, 0.78. @param largest  above 0 */
const decimalsOf = (largest: number): number =>
  largest >= 20 ? 0 : Math.max(1, 1 - Math.floor(Math.log10(largest)));

/** Weight of an effect beside others, by how near its limit it is, and held to the most it may be. [-] */
export const urgency = (effect: Effect): number =>
  effect.seen
    ? Math.max(effect.weight, MOST + 1)
    : (effect.nearness ?? 1) * Math.min(effect.weight, mostOf(effect));

/** @param over  time above the limit [%] @param minded  whether somebody notices it anyway */
const nearness = (over: number, minded: boolean): number =>
  Math.min(1, Math.max(over / OFTEN, minded ? 1 : 0.1));

interface Share {
  /** So many percentage points are clear to anybody. */
  readonly points: number;
  readonly of: 'dry' | 'warm';
  readonly figure: (figures: PlanFigures) => number;
  readonly worse: string;
  readonly better: string;
  /** That it is less than it was, both in %. */
  readonly fine: (is: number, was: number) => string;
  readonly wrong: string;
}

/** "air is moist enough 90 % of the time (was 70 %)" */
const enough =
  (words: string) =>
  (is: number, was: number): string =>
    `${words} ${pct(100 - is)} of the time (was ${pct(100 - was)})`;
/** Not as the rest of the time, because "people are not too warm 99 % of the time" may mean its opposite. */
const seldomTooWarm = (is: number, was: number): string =>
  is < 0.5
    ? `hardly anybody is too warm any more (was ${pct(was)} of the time)`
    : `people are too warm only ${pct(is)} of the time (was ${pct(was)})`;

const DRY: Share = {
  ...{ of: 'dry', figure: ({ dry }) => dry, points: 15 },
  ...{ worse: 'too dry more often', better: 'too dry less often' },
  ...{ fine: enough('air is moist enough'), wrong: 'air is too dry' },
};
const WARM: Share = {
  ...{ of: 'warm', figure: ({ warm }) => warm, points: 5 },
  ...{ worse: 'hotter', better: 'cooler when hot' },
  ...{ fine: seldomTooWarm, wrong: 'people are too warm' },
};

/** Most that an effect may weigh beside others: air twenty times as bad must not stand before mould all over. [-] */
const mostOf = ({ of }: Effect): number =>
  of === 'mould' || of === 'cold' ? Number.POSITIVE_INFINITY : MOST;
/** Ten times what is clear to anybody; mould whose index grows by 5 weighs as much. [-] */
const MOST = 10;
/** Urgency from which an effect that is no air stands before a second that is. [-] */
const CLEAR_AIR_AGAIN = 1;
/** So much of the time above its limit is often. [%] */
const OFTEN = 10;
const index = (value: number): string => figureText(value, 1);
/** Keeps a figure and its unit on one line. */
const NO_BREAK = '\u00a0';
/** A quarter of what is clear to anybody. [-] */
export const NOTICED = 0.25;
