import type { PreparedPlan } from '../../scenario/prepared.ts';
import { askedPlan, questionBetween } from '../answers/plan-questions.ts';
import type { Option } from '../options.ts';
import { newDevices } from '../purchase/about-purchase.ts';
import { newPurchases } from '../purchase/new-purchases.ts';

/** The question that an option asks, such as "Is a dehumidifier worth buying here?". */
export function planQuestion(baseline: Option, option: Option): string {
  const [had, has] = [baseline.prepared, option.prepared];
  const buys = newPurchases(had.purchases, has.purchases).length > 0;
  const things = newThings(had, has);
  if (things !== null) return `Is ${things} worth ${buys ? 'buying' : 'having'} here?`;
  const [before, after] = [baseline, option].map(({ prepared, measures }) =>
    askedPlan(prepared, measures),
  );
  return questionBetween(before!, after!) ?? `Is ${option.name} worth doing here?`;
}

/** The one new kind of machine; null for none or several. */
function newThings(had: PreparedPlan, has: PreparedPlan): string | null {
  const kinds = new Set(newDevices(had, has).map(({ does }) => MACHINES[does.kind]));
  if (has.home.cooling !== undefined && had.home.cooling === undefined) kinds.add(COOLER);
  const [kind] = kinds;
  return kinds.size === 1 ? kind! : null;
}

const COOLER = 'an air conditioner';
const MACHINES: Readonly<Record<PreparedPlan['home']['devices'][number]['does']['kind'], string>> =
  {
    dehumidifier: 'a dehumidifier',
    humidifier: 'a humidifier',
    'extract fan': 'an extract fan',
    'balanced ventilation': 'a ventilation unit',
    purifier: 'an air purifier',
    heater: 'a heater',
    stove: 'a stove',
  };
