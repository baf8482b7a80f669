import { mapping } from '../../scenario/checks/tolerant-readers.ts';
import { COMMON } from '../../scenario/presets/preset.ts';
import type { AssumedBuy, BuiltIn, BuiltInContext } from './built-in.ts';

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
  const room = roomUsedAs('bathroom', context) ?? roomUsedAs('kitchen', context) ?? dampest;
  const devices = devicesOf(context);
  const drawsRoomAir = devices.some(({ kind, air }) => kind === 'stove' && air !== 'outdoors');
  if (room === null || drawsRoomAir || devices.some(({ kind }) => EXTRACTS.has(kind))) return null;
  return {
    name: 'fan',
    says: `an extract fan in the ${room} that runs while it is humid there`,
    change: {
      devices: {
        [unused('proposed fan', context)]: { kind: 'extract fan', room, runs: 'by humidity' },
      },
    },
    buys: pricedIn(currency, FAN),
  };
}

/** A compressor dehumidifier of 12 L/day by its label. Not proposed where there is one of any kind. */
export function builtInDehumidifier(
  context: BuiltInContext,
  room: string,
  currency: string,
): BuiltIn | null {
  if (devicesOf(context).some(({ kind }) => kind === 'dehumidifier')) return null;
  return {
    name: 'drier',
    says: `a dehumidifier in the ${room}, 12 L/day by its label`,
    change: {
      devices: {
        [unused('proposed dehumidifier', context)]: {
          kind: 'dehumidifier',
          room,
          type: 'compressor',
          label: 12,
          'tested at': '30 °C/80 %',
        },
      },
    },
    buys: pricedIn(currency, DEHUMIDIFIER),
  };
}

interface LooseDevice {
  readonly kind: unknown;
  readonly air: unknown;
}

/** All devices of the baseline and of any plan. */
function devicesOf({ raw, plans }: BuiltInContext): LooseDevice[] {
  return [raw, ...plans.map((plan) => plan.raw)].flatMap((scenario) =>
    Object.values(mapping(mapping(scenario)['devices'])).map((device) => {
      const { kind, air } = mapping(device);
      return { kind, air };
    }),
  );
}

function roomUsedAs(use: string, { raw }: BuiltInContext): string | null {
  const rooms = Object.entries(mapping(mapping(mapping(raw)['home'])['rooms']));
  return rooms.find(([, room]) => mapping(room)['use'] === use)?.[0] ?? null;
}

/** A name that no device of the baseline has. */
function unused(name: string, { raw }: BuiltInContext): string {
  const devices = mapping(mapping(raw)['devices']);
  return Object.hasOwn(devices, name) ? unused(`${name} too`, { raw, plans: [] }) : name;
}

const pricedIn = (currency: string, buy: AssumedBuy): AssumedBuy[] =>
  PRICED_IN.has(currency) ? [buy] : [];

/** Currencies near enough to one another for the same number of them to stand for a shop's price. */
const PRICED_IN: ReadonlySet<string> = new Set(['GBP', 'EUR', 'USD', 'CHF']);
const EXTRACTS: ReadonlySet<unknown> = new Set(['extract fan', 'balanced ventilation']);
const FAN: AssumedBuy = {
  ...{ what: 'extract fan, fitted', price: 250, price_low: 120, price_high: 450, lastsYears: 12 },
  source: COMMON,
};
const DEHUMIDIFIER: AssumedBuy = {
  ...{ what: 'dehumidifier', price: 180, price_low: 120, price_high: 260, lastsYears: 8 },
  source: COMMON,
};
