import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { Option } from '../../studies/options.ts';
import { sumText } from '../../units/sum-text.ts';
import { type Html, html } from './html.ts';

/** Name of an option, where it comes from, and what it is. */
export const optionName = ({ name, description, origin }: Option): Html =>
  html`<b>${name}</b>${ORIGIN[origin] === '' ? null : html` <i>${ORIGIN[origin]}</i>`}${
    description === '' ? null : html`<br><small>${description}</small>`
  }`;

/** "12.34 GBP". */
export const moneyText = (value: number, { money }: PlanMeasures): string =>
  `${sumText(value, 2)} ${money.currency}`;

const ORIGIN: Readonly<Record<Option['origin'], string>> = {
  baseline: '(nothing done)',
  plan: '',
  proposed: '(proposed)',
  'as safe': '(mould risk as low as with the device)',
};
