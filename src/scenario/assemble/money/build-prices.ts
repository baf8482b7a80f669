import type { Spell } from '../../../control/household.ts';
import type { Fuel } from '../../../home/home.ts';
import type { FuelPrice, Prices, Tariff } from '../../../home/prices.ts';
import type { LocalClock } from '../../../units/local-clock.ts';
import { COMMON, scaled } from '../../../units/preset.ts';
import { MINUTES_PER_DAY } from '../../../units/time-units.ts';
import { EVERY_DAY, spellOf } from '../../clock-words.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { worthOf } from '../../presets/currencies.ts';
import { CARBON, PRICE } from '../../presets/prices.ts';
import type { Finding } from '../../unplaced-problem.ts';
import type { Defaults } from '../defaults.ts';
import { priceSeries } from './price-series.ts';

/**
 * Prices of the fuels that a home uses, and of those the scenario names.
 *
 * @throws InputProblems for a price file that cannot be read
 */
export function buildPrices(
  data: ScenarioData,
  used: ReadonlySet<Fuel>,
  clock: LocalClock,
  files: ReadonlyMap<string, string>,
  defaults: Defaults,
): Prices {
  const money = data.money ?? {};
  const currency = defaults.word(['money', 'currency'], money.currency, 'money', COMMON);
  const worth = worthOf(currency) ?? 1;
  const fuels: Partial<Record<Fuel, FuelPrice>> = {};
  for (const fuel of Object.keys(PRICE) as Fuel[]) {
    const given = money[fuel];
    if (given === undefined && !used.has(fuel)) continue;
    const parts = typeof given === 'object' ? given : { price: given };
    const carbonPath = ['money', fuel, 'carbon'];
    fuels[fuel] = {
      tariff: tariffOf(fuel, parts, { clock, files, worth }, defaults),
      standing: parts.standing ?? 0,
      carbon: defaults.number(carbonPath, parts.carbon, CARBON[fuel]),
    };
  }
  return { currency, fuels };
}

/** Price files that were not handed in, for example because a setting named them. */
export function priceFileFindings(
  data: ScenarioData,
  files: ReadonlyMap<string, string>,
): Finding[] {
  const money = data.money ?? {};
  return (Object.keys(PRICE) as Fuel[]).flatMap((fuel): Finding[] => {
    const given = money[fuel];
    const path = typeof given === 'object' ? given.prices : undefined;
    if (path === undefined || files.has(path)) return [];
    const expected = 'a price file that the scenario file names';
    return [{ path: ['money', fuel, 'prices'], expected }];
  });
}

type FuelData = Exclude<NonNullable<NonNullable<ScenarioData['money']>[Fuel]>, number>;
type FuelParts = { readonly [K in keyof FuelData]?: FuelData[K] | undefined };

interface TariffContext {
  readonly clock: LocalClock;
  readonly files: ReadonlyMap<string, string>;
  /** What the currency is worth, see `worthOf`. [-] */
  readonly worth: number;
}

function tariffOf(
  fuel: Fuel,
  parts: FuelParts,
  { clock, files, worth }: TariffContext,
  defaults: Defaults,
): Tariff {
  const { day, night, prices, price, blocks: priced = [] } = parts;
  if (prices !== undefined) return priceSeries(files.get(prices) ?? '', prices);
  if (day !== undefined && night !== undefined) {
    const blocks = (parts['night hours'] ?? []).map((spell) => blockOf(spell, night));
    return { by: 'blocks', price: day, blocks, clock };
  }
  if (price !== undefined && priced.length > 0) {
    const blocks = priced.map(({ days, months, from = 0, to = MINUTES_PER_DAY, price: own }) =>
      blockOf(spellOf(days, from, to, months), own),
    );
    return { by: 'blocks', price, blocks, clock };
  }
  const usual = scaled(PRICE[fuel], worth);
  return { by: 'flat', price: defaults.number(['money', fuel, 'price'], price, usual) };
}

/** A block of a tariff; one that ends after midnight has its end before its start. */
function blockOf({ days, from, to, ...seldom }: Spell, price: number) {
  const own = days === EVERY_DAY ? seldom : { days, ...seldom };
  return { from, to: to > MINUTES_PER_DAY ? to - MINUTES_PER_DAY : to, ...own, price };
}
