import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { roomHours } from '../../measures/room-hours.ts';
import type { Option } from '../../studies/options.ts';
import { figureText } from '../../units/figure-text.ts';
import { type Html, html } from './html.ts';

/** Name of an option, where it comes from, and what it is. */
export const optionName = ({ name, says, origin }: Option): Html =>
  html`<b>${name}</b>${ORIGIN[origin] === '' ? null : html` <i>${ORIGIN[origin]}</i>`}${
    says === '' ? null : html`<br><small>${says}</small>`
  }`;

/** "12.34 GBP". */
export const moneyText = (value: number, { money }: PlanMeasures, decimals = 2): string =>
  `${figureText(value, decimals)} ${money.currency}`;

export const coldSpotRoomHours = ({ rooms }: PlanMeasures): number =>
  Object.values(rooms).reduce((sum, room) => sum + room.cold_spot_hours_above_80_pct, 0);

/** Outside the bands, added up over the rooms: too cold or warm with somebody in, too damp or dry at any time. */
export const hoursOutsideBands = (measures: PlanMeasures): number =>
  roomHours(measures, 'outside_band_occupied_hours', 'temperature_low') +
  roomHours(measures, 'outside_band_occupied_hours', 'temperature_high') +
  roomHours(measures, 'outside_band_hours', 'humidity_high') +
  roomHours(measures, 'outside_band_hours', 'humidity_low');

/** Water that devices took out of the air. [kg] */
export const waterTaken = ({ devices }: PlanMeasures): number =>
  Object.values(devices.detail).reduce((sum, { water_kg }) => sum + Math.max(0, -water_kg), 0);

const ORIGIN: Readonly<Record<Option['origin'], string>> = {
  baseline: '(nothing done)',
  plan: '',
  proposed: '(proposed)',
  'as safe': '(mould risk as low as with the device)',
};
