import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Option } from '../options.ts';

type Device = PreparedPlan['home']['devices'][number];

/** Devices of a plan whose names another one has not. */
export const newDevices = (had: PreparedPlan, { home }: PreparedPlan): Device[] =>
  home.devices.filter(({ name }) => had.home.devices.every((device) => device.name !== name));

/** Whether an option dries air with a machine, as the baseline does not. */
export const bringsDehumidifier = (baseline: Option, option: Option): boolean =>
  newDevices(baseline.prepared, option.prepared).some(({ does }) => does.kind === 'dehumidifier');
