import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Option } from '../options.ts';
import { newPurchases } from './new-purchases.ts';

/** The purchase that a study is about. */
export interface AboutPurchase {
  readonly option: Option;
  /** Name of the device, and of the room it stands in. */
  readonly device: string;
  readonly room: string;
  /** Whether it is a dehumidifier, so that the question is one of damp. */
  readonly dries: boolean;
  /** What the option buys and the baseline does not. */
  readonly purchases: readonly Purchase[];
}

/**
 * The option that is asked about: the named one, else the first plan with a dehumidifier that the
 * baseline has not, else the proposed one; and in it the device that is new, a dehumidifier first.
 *
 * @param options  the baseline first
 * @returns null where no option brings a new dehumidifier, or the named one no new device at all
 */
export function aboutPurchase(
  options: readonly Option[],
  named: string | null,
): AboutPurchase | null {
  const [baseline, ...others] = options;
  if (baseline === undefined) return null;
  const about = (option: Option): AboutPurchase | null => {
    const news = newDevices(baseline.prepared, option.prepared);
    const device = news.find(isDehumidifier) ?? news[0];
    if (device === undefined) return null;
    const { home, purchases } = option.prepared;
    return {
      option,
      device: device.name,
      room: home.rooms[device.room]!.name,
      dries: isDehumidifier(device),
      purchases: newPurchases(baseline.prepared.purchases, purchases),
    };
  };
  const candidates = named === null ? others : others.filter(({ name }) => name === named);
  const found = candidates.map(about).filter((one) => one !== null);
  return found.find(({ dries }) => named !== null || dries) ?? null;
}

/** Whether an option dries air with a machine, as the baseline does not. */
export const bringsDehumidifier = (baseline: Option, option: Option): boolean =>
  newDevices(baseline.prepared, option.prepared).some(isDehumidifier);

type Device = PreparedPlan['home']['devices'][number];

const isDehumidifier = ({ does }: Device): boolean => does.kind === 'dehumidifier';

const newDevices = (had: PreparedPlan, { home }: PreparedPlan): Device[] =>
  home.devices.filter(({ name }) => had.home.devices.every((device) => device.name !== name));
