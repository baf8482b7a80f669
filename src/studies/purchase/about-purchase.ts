import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Option } from '../options.ts';

/**
 * The first plan with a dehumidifier that the baseline has not, else the proposed one.
 *
 * @param options  the baseline first
 * @returns null where no option brings a new dehumidifier
 */
export function aboutPurchase([baseline, ...others]: readonly Option[]): Option | null {
  if (baseline === undefined) return null;
  return others.find((option) => bringsDehumidifier(baseline, option)) ?? null;
}

/** Whether an option dries air with a machine, as the baseline does not. */
export const bringsDehumidifier = (baseline: Option, option: Option): boolean =>
  newDevices(baseline.prepared, option.prepared).some(({ does }) => does.kind === 'dehumidifier');

type Device = PreparedPlan['home']['devices'][number];

export const newDevices = (had: PreparedPlan, { home }: PreparedPlan): Device[] =>
  home.devices.filter(({ name }) => had.home.devices.every((device) => device.name !== name));
