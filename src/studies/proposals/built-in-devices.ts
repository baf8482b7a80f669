import { addDehumidifier, addExtractFan } from '../../scenario/edits/add-device.ts';
import { hasDevice, hasOpenFluedStove, roomUsedAs } from '../../scenario/edits/scenario-facts.ts';
import { usualIn, worthOf } from '../../scenario/presets/currencies.ts';
import { COMMON } from '../../units/preset.ts';
import { theRoom } from '../../units/the-room.ts';
import type { AssumedPurchase, BuiltIn, BuiltInContext } from './built-in.ts';

/**
 * An extract fan by humidity where most steam is made: the bathroom, else the kitchen, else the
 * dampest room. Not proposed where air is extracted already, nor beside a stove that draws its air
 * from the rooms, which a fan can make spill its smoke.
 */
export function builtInFan(
  context: BuiltInContext,
  dampest: string | null,
  currency: string,
): BuiltIn | null {
  const { raw } = context;
  const room = roomUsedAs(raw, 'bathroom') ?? roomUsedAs(raw, 'kitchen') ?? dampest;
  if (room === null || anyPlan(context, hasOpenFluedStove)) return null;
  if (anyPlan(context, (plan) => hasDevice(plan, 'extract fan', 'balanced ventilation')))
    return null;
  return {
    name: 'fan',
    description: `an extract fan in ${theRoom(room)} that runs while it is humid there`,
    change: addExtractFan(raw, 'proposed fan', room),
    purchases: pricedIn(currency, FAN),
  };
}

/** A compressor dehumidifier of 12 L/day by its label. Not proposed where there is one of any kind. */
export function builtInDehumidifier(
  context: BuiltInContext,
  room: string,
  currency: string,
): BuiltIn | null {
  if (anyPlan(context, (plan) => hasDevice(plan, 'dehumidifier'))) return null;
  return {
    name: 'drier',
    description: `a dehumidifier in ${theRoom(room)}, 12 L/day by its label`,
    change: addDehumidifier(context.raw, 'proposed dehumidifier', room, 12),
    purchases: pricedIn(currency, DEHUMIDIFIER),
  };
}

/** Whether something is so in the baseline or in any plan. */
const anyPlan = ({ raw, plans }: BuiltInContext, isSo: (scenario: unknown) => boolean): boolean =>
  [raw, ...plans.map((plan) => plan.raw)].some(isSo);

/** A thing with its price in a currency; none in one of which nobody knows what it is worth. */
function pricedIn(currency: string, buy: AssumedPurchase): AssumedPurchase[] {
  if (worthOf(currency) === null) return [];
  const usual = usualIn(currency);
  const { price, price_low, price_high } = buy;
  return [
    {
      ...{ ...buy, price: usual(price) },
      ...{ price_low: usual(price_low), price_high: usual(price_high) },
    },
  ];
}

const FAN: AssumedPurchase = {
  ...{ what: 'extract fan, fitted', price: 250, price_low: 120, price_high: 450, lastsYears: 12 },
  source: COMMON,
};
const DEHUMIDIFIER: AssumedPurchase = {
  ...{ what: 'dehumidifier', price: 180, price_low: 120, price_high: 260, lastsYears: 8 },
  source: COMMON,
};
