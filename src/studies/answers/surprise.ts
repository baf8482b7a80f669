import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { billOf } from '../compare/plan-money.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { spanWords, toldEnergy } from '../effects/plan-figures.ts';
import { priceOfBoughtHeat } from '../effects/price-of-bought-heat.ts';
import type { AskedPlan } from './asked.ts';
import { heardAlerts } from './heard-alerts.ts';

/**
 * The result that most people would not have guessed, in a sentence; empty where everything is as
 * expected. Tried in this order: more energy for less money, or less for more; money spent that
 * makes nothing clearly better; rules that ring where nobody can act; a plan that saves and loses nothing.
 *
 * @param plans  the baseline first
 * @param told   plans that questions were answered by: what they say of money or rings is no news
 */
export function surpriseOf(plans: readonly AskedPlan[], told: readonly AskedPlan[] = []): string {
  const [base, ...others] = plans;
  if (base === undefined) return '';
  for (const find of [energyAgainstMoney, moneyForNothing, unheardRules, savedForNothing]) {
    const found = others
      .filter((plan) => find === energyAgainstMoney || !told.includes(plan))
      .map((plan) => find(base, plan))
      .filter((surprise) => surprise !== null)
      .sort((a, b) => b.size - a.size);
    if (found[0] !== undefined) return found[0].words;
  }
  return '';
}

interface Surprise {
  readonly size: number;
  readonly words: string;
}

/** Energy and its money that part: cheap hours, or another fuel. */
function energyAgainstMoney(base: AskedPlan, plan: AskedPlan): Surprise | null {
  const used = toldEnergy(base.figures);
  const energy = toldEnergy(plan.figures) - used;
  const had = energyMoney(base);
  const money = energyMoney(plan) - had;
  const clear = Math.abs(energy) > 0.01 * used && Math.abs(money) > 0.005 * had;
  if (!clear || energy > 0 === money > 0) return null;
  const [kwh, sum] = [figureText(Math.abs(energy), 0), sumText(Math.abs(money), 0)];
  const { currency } = plan.measures.money;
  const span = spanWords(plan.figures).replace('\u00a0', ' ');
  const taken = (than: string): string =>
    plan.figures.part === null ? `${kwh} kWh ${span} ${than}` : `${kwh} kWh ${than} ${span}`;
  const words =
    energy > 0
      ? `${plan.figures.plan} takes ${taken('more')} and still costs ${sum} ${currency} less`
      : `${plan.figures.plan} takes ${taken('less')} and still costs ${sum} ${currency} more`;
  return { size: Math.abs(money), words: `${words}${why(base, plan, energy > 0)}.` };
}

/**
 * Why energy and money part: other hours of the one fuel that both heat with, heat from another fuel, or,
 * where no price goes by the clock, another mix of fuels. Empty where none of these tells.
 *
 * @param more  whether the plan takes more energy for less money
 */
function why(base: AskedPlan, plan: AskedPlan, more: boolean): string {
  const [had, has] = [fuelsOfHeat(base), fuelsOfHeat(plan)];
  const same = had.join() === has.join();
  const [was, is] = [priceOfBoughtHeat(base.measures), priceOfBoughtHeat(plan.measures)];
  const { currency } = plan.measures.money;
  if (more ? is < (1 - CLEAR) * was : is > (1 + CLEAR) * was) {
    if (!same)
      return `, because a kWh of what it heats with costs ${figureText(is, 3)} ${currency}, was ${figureText(was, 3)}`;
    if (had.length === 1) return `, because it heats in ${more ? 'cheap' : 'dear'} hours`;
  }
  if ([base, plan].some(pricedByClock)) return '';
  return `, because it takes more of a ${more ? 'cheaper' : 'dearer'} fuel`;
}

/** Fuels that emitters are heated with, by name. */
const fuelsOfHeat = ({ measures: { heating } }: AskedPlan): string[] =>
  Object.keys(heating.delivered_kwh)
    .filter((fuel) => heating.delivered_kwh[fuel]! > 0)
    .sort();

const pricedByClock = ({ prepared }: AskedPlan): boolean =>
  Object.values(prepared.prices.fuels).some(({ tariff }) => tariff.by !== 'flat');

function moneyForNothing(base: AskedPlan, plan: AskedPlan): Surprise | null {
  const more = plan.figures.money - base.figures.money;
  // What is of use in another season only looks useless in a part of a year.
  if (!(more > 0.01 * base.figures.money) || plan.figures.part !== null) return null;
  if (effectsOf(base.figures, plan.figures).some(({ better }) => better)) return null;
  const sum = `${sumText(more, 0)} ${plan.measures.money.currency}`;
  return {
    size: more,
    words: `${plan.figures.plan} costs ${sum} a year more and makes nothing clearly better.`,
  };
}

function unheardRules(_base: AskedPlan, plan: AskedPlan): Surprise | null {
  const { fired, per_week } = plan.measures.alerts;
  const heard = heardAlerts(plan.measures);
  if (per_week < 1 || heard > 0.6 * fired) return null;
  const share = figureText(100 * (1 - heard / fired), 0);
  return {
    size: fired - heard,
    words: `${plan.figures.plan} rings ${figureText(per_week, 0)} times a week, ${share} % of them with nobody awake at home within the hour.`,
  };
}

function savedForNothing(base: AskedPlan, plan: AskedPlan): Surprise | null {
  const saved = base.figures.money - plan.figures.money;
  // What is saved in one season may be lost in another.
  if (!(saved > 0.02 * base.figures.money) || plan.figures.part !== null) return null;
  if (effectsOf(base.figures, plan.figures).some(({ better }) => !better)) return null;
  const sum = `${sumText(saved, 0)} ${plan.measures.money.currency}`;
  return {
    size: saved,
    words: `${plan.figures.plan} saves ${sum} a year and makes nothing worse.`,
  };
}

/** [currency, of a year or of the part of one that was run] */
const energyMoney = ({ figures, measures }: AskedPlan): number =>
  figures.part?.money ?? billOf(measures);

/** Prices nearer to each other than this are told apart by rounding alone. [-] */
const CLEAR = 0.001;
