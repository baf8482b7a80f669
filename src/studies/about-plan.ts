import type { Purchase } from '../measures/energy/purchase-cost-per-year.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import { inPlaceOf } from './answers/in-place-of.ts';
import { askedPlan, questionBetween } from './answers/plan-questions.ts';
import { newPurchases } from './compare/new-purchases.ts';
import { planFigures } from './effects/plan-figures.ts';
import type { Option } from './options.ts';
import { dampestRoom } from './proposals/dampest-room.ts';
import { bringsDehumidifier, newDevices } from './purchase/new-devices.ts';
import { type Guard, guardsOf, happening } from './verdict/guards.ts';

/** What a study asks about. */
export interface AboutPlan {
  readonly option: Option;
  /** "Is a dehumidifier worth buying here?" */
  readonly question: string;
  /** What the plan is for. */
  readonly guards: readonly Guard[];
  /** Name of the device that is new, a dehumidifier first; null where none is. */
  readonly device: string | null;
  /** The room that it stands in; of a plan for the whole home the dampest one. */
  readonly room: string;
  /** Whether the device is a dehumidifier, so that the question is one of damp. */
  readonly dries: boolean;
  /** What the option buys and the baseline does not. */
  readonly purchases: readonly Purchase[];
  /** What the baseline buys and the option does not, such as the boiler that has to be replaced anyway. */
  readonly spared: readonly Purchase[];
}

/**
 * The option that is asked about: the named one, whatever it changes; else that of `askedPurchase`.
 *
 * @param options  the baseline first
 * @returns null where no option brings a new dehumidifier, or none has the name
 */
export function aboutPlan(options: readonly Option[], named: string | null): AboutPlan | null {
  const [baseline, ...others] = options;
  if (baseline === undefined) return null;
  if (named === null) {
    const option = askedPurchase(options);
    return option === null ? null : about(baseline, option);
  }
  const option = others.find(({ name }) => name === named);
  return option === undefined ? null : about(baseline, option);
}

/**
 * The first plan with a dehumidifier that the baseline has not, else the proposed one; where the baseline is not
 * damp, the first plan of the scenario that buys something comes before what nobody asked for.
 *
 * @param options  the baseline first
 * @returns null where no option brings a new dehumidifier
 */
function askedPurchase([baseline, ...others]: readonly Option[]): Option | null {
  if (baseline === undefined) return null;
  const drying = others.find((option) => bringsDehumidifier(baseline, option)) ?? null;
  if (drying?.origin !== 'proposed' || isDamp(baseline)) return drying;
  return others.find((option) => option.origin !== 'proposed' && buys(baseline, option)) ?? drying;
}

function isDamp({ measures }: Option): boolean {
  const figures = planFigures(measures);
  return happening('damp', figures, figures, measures.period.hours) >= 0;
}

const buys = ({ prepared: had }: Option, { prepared: has }: Option): boolean =>
  newPurchases(had.purchases, has.purchases).length > 0;

function about(baseline: Option, option: Option): AboutPlan {
  const news = newDevices(baseline.prepared, option.prepared);
  const device = news.find(({ does }) => does.kind === 'dehumidifier') ?? news[0] ?? null;
  const { home, purchases } = option.prepared;
  const dampest = dampestRoom(baseline.measures) ?? home.rooms[0]!.name;
  return {
    option,
    question: planQuestion(baseline, option),
    guards: guardsOf(baseline.prepared, option.prepared),
    device: device?.name ?? null,
    room: device === null ? dampest : home.rooms[device.room]!.name,
    dries: device?.does.kind === 'dehumidifier',
    purchases: newPurchases(baseline.prepared.purchases, purchases),
    spared: newPurchases(purchases, baseline.prepared.purchases),
  };
}

/** The question that an option asks, such as "Is a dehumidifier worth buying here?". */
function planQuestion(baseline: Option, option: Option): string {
  const [had, has] = [baseline.prepared, option.prepared];
  const things = newThings(had, has);
  if (things !== null) {
    const verb = buys(baseline, option) ? 'buying' : 'having';
    return `Is ${things} worth ${verb} here${inPlaceOf(has, had)}?`;
  }
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
