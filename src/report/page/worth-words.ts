import type { PurchaseStudy } from '../../studies/purchase-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { type Html, html } from './html.ts';
import { moneyText } from './option-words.ts';

/** Payback and present value where cash is saved, money for each damp hour avoided where it is not. */
export function worthWords({ about, sum }: PurchaseStudy): Html {
  const { measures } = about.option;
  const saved = -(sum.running + sum.heat_credit + sum.other);
  const rate = figureText(100 * about.option.prepared.discountRate, 2);
  if (sum.payback_years !== null) {
    return html`<p><b>Payback.</b> The bill falls by ${moneyText(saved, measures)} a year, so that ${moneyText(sum.price, measures)} ÷ ${figureText(saved, 2)} = ${figureText(sum.payback_years, 1)} years without interest. Over its life, with money a year later worth ${rate} % less, it is ${moneyText(sum.npv ?? 0, measures)} to the good in today's money${
      (sum.npv ?? 0) < 0 ? ': less than nothing, so that the price does not come back' : ''
    }.</p>`;
  }
  const hours = sum.damp_hours_avoided_per_year;
  const each = sum.money_per_damp_hour_avoided;
  return html`<p><b>No payback.</b> The bill does not fall: it rises by ${moneyText(-saved, measures)} a year, so that there is no cash to pay the price back with. What is bought is dryness${
    each === null
      ? `; but it takes away no room-hour above the humidity band (${figureText(hours, 0)} a year), so that no price for one can be given`
      : html`: ${moneyText(sum.net, measures)} ÷ ${figureText(hours, 0)} room-hours above the humidity band avoided = ${figureText(each)} ${measures.money.currency} each`
  }.</p>`;
}
