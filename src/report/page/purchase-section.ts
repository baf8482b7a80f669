import type { PurchaseStudy } from '../../studies/plan-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { grouped, signedSum, sumText } from '../../units/sum-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import { moneyText } from './option-words.ts';
import { list, type Section } from './section.ts';
import { worthWords } from './worth-words.ts';

/** The purchase as a sum that can be done again by hand, and what else would buy the same safety. */
export function purchaseSection(purchase: PurchaseStudy, pictures: Html): Section {
  const { about, sum } = purchase;
  return {
    id: 'purchase',
    title: 'The sum',
    body: html`
<div class="pair"><div>
<p>${about.option.description === '' ? about.option.name : `${about.option.name}: ${about.option.description}`}. All sums are for a year.</p>
${figureTable({
  named: 'receipt',
  caption: 'The sum; lines with a sign are added up',
  heads: ['line', 'figure', 'unit', 'added'],
  words: [2],
  rows: sum.lines.map(({ text, value, unit, adds }, k) => [
    k === sum.lines.length - 1 ? html`<b>${text}</b>` : text,
    k === sum.lines.length - 1 ? html`<b>${grouped(`${value}`)}</b>` : grouped(`${value}`),
    unit,
    adds ? signedSum(value, 2) : '',
  ]),
})}
${worthWords(purchase)}
${list(facts(purchase))}
</div><div>
${pictures}
${equalSafety(purchase)}
<p><b>By hand:</b> price over the years it is divided by is the purchase cost a year; kWh times the price below them is the line after it, with a minus where they are kWh less; the column “added” gives the net. Every kWh is paid at the price of its own hours. Every figure is rounded as printed before it is used, so that a pocket calculator comes to the same.</p>
${about.dries ? HEAT_CREDIT : null}
</div></div>`,
  };
}

function facts(purchase: PurchaseStudy): string[] {
  const { option, purchases, spared } = purchase.about;
  const price = purchases.reduce((sum, buy) => sum + buy.price, 0);
  const { measures } = option;
  return [
    ...(purchases.length === 0
      ? [
          `No price is known in ${measures.money.currency}, so that the purchase cost is counted as nothing. Give the plan a price under “purchases”.`,
        ]
      : purchases.map(
          ({ what, price: each, lastsYears }) =>
            `${what}: ${moneyText(each, measures)}, lasts ${lastsYears} ${lastsYears === 1 ? 'year' : 'years'}`,
        )),
    ...spared.map(
      ({ what, price: each }) =>
        `${what}, for ${moneyText(each, measures)}, is not bought then: it is taken off the price.`,
    ),
    ...option.assumedPurchases.map(
      ({ what, price_low, price_high, source }) =>
        `The price of the ${what} is assumed; it may be ${sumText(price_low, 0)} to ${sumText(price_high, 0)} ${measures.money.currency} (${source}).`,
    ),
    ...(purchases.length > 1 ? [`All that is bought: ${moneyText(price, measures)}`] : []),
    ...dryingWords(purchase),
  ];
}

function dryingWords({ about: { device, room }, sum: { drying } }: PurchaseStudy): string[] {
  if (drying === null) return [];
  const { label_litres_a_day: label, litres_a_day_running: here, litres_per_kwh } = drying;
  return [
    `The ${device} (${room}) runs ${figureText(drying.run_hours_per_year, 0)} h and draws ${figureText(drying.kwh_per_year, 1)} kWh a year.`,
    ...(here === null || drying.litres_per_year <= 0
      ? []
      : [
          `It takes ${figureText(drying.litres_per_year, 1)} L a year: ${figureText(here, 1)} L/day while it runs, at the room's own temperature and humidity` +
            (label === null
              ? '.'
              : `; its label says ${figureText(label, 1)} L/day in a warmer, damper test room, so that ${figureText(100 * (drying.share_of_label ?? 0), 0)} % of it is left.`),
          `${figureText(litres_per_kwh, 2)} L for each kWh. ${
            drying.tank_empties_per_year > 0
              ? `The tank is emptied ${figureText(drying.tank_empties_per_year, 0)} times a year.`
              : 'No tank has to be emptied, or it has none.'
          }`,
        ]),
  ];
}

function equalSafety({ equalSafety: safe, about, sum }: PurchaseStudy): Html | null {
  if (safe === null) return null;
  const { measures } = about.option;
  const aYear = (value: number | null) => (value === null ? '-' : sumText(value, 2));
  const warm =
    safe.warmer_by_k === null
      ? `kept warmer: ${safe.note}`
      : `kept ${figureText(safe.warmer_by_k, 1)} °C warmer`;
  return html`
<h3>The same mould risk by heat alone</h3>
<p>How much warmer ${theRoom(safe.room)} would have to be kept, by its own thermostat, for its cold spot to be above 80 % for no more hours than with the device; found by running the home again and again.</p>
${figureTable({
  caption: `Cold spot of ${theRoom(safe.room)}`,
  heads: ['option', 'over 80 % [h]', `beyond doing nothing [${measures.money.currency} a year]`],
  rows: [
    ['as it is', figureText(safe.hours_as_is, 0), '0.00'],
    [`with ${about.option.name}`, figureText(safe.hours_with_device, 0), aYear(sum.net)],
    [warm, figureText(safe.hours_warmer, 0), aYear(safe.extra_per_year)],
  ],
})}`;
}

const HEAT_CREDIT = html`<p><b>Heat credit.</b> What the device gives to the room as heat is credited once: as the fuel that heating burns less, from two runs of the whole home. Vapour that came from the same room's laundry or walls took its heat from that room when it evaporated; both runs know that, and it is no gain when the device sets it free again.</p>`;
