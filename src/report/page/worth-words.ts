import type { PurchaseStudy } from '../../studies/plan-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { type Html, html } from './html.ts';
import { moneyText } from './option-words.ts';

/**
 * Payback and present value where cash is saved, money for each damp hour avoided where it is not.
 * What is worked out here is worked out from figures as they are printed.
 */
export function worthWords(purchase: PurchaseStudy): Html {
  const { about, sum } = purchase;
  const { measures } = about.option;
  const saved = (Math.round(100 * sum.purchase_cost) - Math.round(100 * sum.net)) / 100;
  if (sum.payback_years !== null) return paybackWords(purchase, saved);
  if (saved >= HALF_CENT) {
    const why =
      about.spared.length > 0
        ? 'and nothing more is paid for it than without it'
        : 'but no price is known that it could pay back';
    return html`<p><b>No payback.</b> The bill falls by ${moneyText(saved, measures)} a year, ${why}.</p>`;
  }
  const rise =
    -saved < HALF_CENT ? 'stays the same' : `rises by ${moneyText(-saved, measures)} a year`;
  return html`<p><b>No payback.</b> The bill does not fall: it ${rise}, so that there is no cash to pay a price back with.${about.dries ? ` What is bought is dryness${drynessWords(purchase)}.` : null}</p>`;
}

function paybackWords({ about, sum }: PurchaseStudy, saved: number): Html {
  const { measures, prepared } = about.option;
  const rate = figureText(100 * prepared.discountRate, 2);
  const back = figureText(sum.payback_years, 1);
  const again = sum.npv_spent === sum.price ? '' : ' (what is bought again included)';
  const today = `${sumText(saved, 2)} × ${sum.npv_years} − ${sumText(sum.npv_spent, 2)}${again}`;
  return html`<p><b>Payback.</b> The bill falls by ${moneyText(saved, measures)} a year: ${moneyText(sum.price, measures)} ÷ ${sumText(saved, 2)} = ${back} years without interest. Over its life, with money a year later worth ${rate} % less, ${today} = ${moneyText(sum.npv ?? 0, measures)} in today's money${
    (sum.npv ?? 0) < 0 ? ': less than nothing, so that the price does not come back' : ''
  }.</p>`;
}

function drynessWords({ about, sum }: PurchaseStudy): string {
  const { currency } = about.option.measures.money;
  const hours = Number(figureText(sum.damp_hours_avoided_per_year, 0));
  if (hours <= 0) {
    return `; but it takes away no room-hour above the humidity band (${hours} a year), so that no price for one can be given`;
  }
  const net = moneyText(sum.net, about.option.measures);
  return `: ${net} ÷ ${hours} room-hours above the humidity band avoided = ${sumText(sum.net / hours)} ${currency} each`;
}

const HALF_CENT = 0.005;
