import { airLevel } from '../../measures/air/air-level.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import type { AirFigure } from '../effects/plan-figures.ts';
import type { AskedPlan } from './asked.ts';

/**
 * How much of what a machine adds to the air other plans take away again, where a plan asks what it
 * would be without it: "Of the PM2.5 that the stove adds, purifier takes away 72 %." Empty where
 * nothing does.
 *
 * @param without  the plan that runs without it
 * @param against  what that is measured by
 * @param plans    all that were run
 */
export function whatMends(
  without: AskedPlan,
  against: AskedPlan,
  plans: readonly AskedPlan[],
): string {
  const gone = machinesGone(without, against);
  const species = against.figures.air
    .map((had): Added => ({ had, added: had.value - levelOf(without, had) }))
    .filter(({ had, added }) => added > NOTICED * had.value)
    .toSorted((a, b) => b.added / b.had.value - a.added / a.had.value)[0];
  if (gone.length === 0 || species === undefined) return '';
  const others = plans.filter(
    (plan) => plan !== against && machinesGone(plan, against).length === 0,
  );
  const mends = others
    .map((plan) => ({ plan, share: shareTaken(plan, species) }))
    .filter(({ share }) => share > LEAST_SHARE)
    .toSorted((a, b) => b.share - a.share)
    .slice(0, MOST_PLANS)
    .map(
      ({ plan, share }, k) =>
        `${plan.figures.plan} ${k === 0 ? 'takes away ' : ''}${figureText(100 * share, 0)}\u00a0%`,
    );
  if (mends.length === 0) return `Nothing that was tried takes the ${species.had.label} away.`;
  return `Of the ${species.had.label} that the ${andList(gone)} adds, ${andList(mends)}.`;
}

interface Added {
  readonly had: AirFigure;
  /** What the machine adds to it. */
  readonly added: number;
}

const shareTaken = (plan: AskedPlan, { had, added }: Added): number =>
  (had.value - levelOf(plan, had)) / added;

const levelOf = ({ figures }: AskedPlan, { name, value }: AirFigure): number =>
  airLevel(figures, name) ?? value;

function machinesGone({ prepared }: AskedPlan, { prepared: had }: AskedPlan): string[] {
  const left = new Set(prepared.home.devices.map(({ name }) => name));
  return had.home.devices.map(({ name }) => name).filter((name) => !left.has(name));
}

/** A level must differ by so much of itself. [-] */
const NOTICED = 0.1;
const LEAST_SHARE = 0.1;
const MOST_PLANS = 3;
