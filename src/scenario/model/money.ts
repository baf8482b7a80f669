import { CARBON, DISCOUNT, PRICE } from '../presets/prices.ts';
import { clock, hours, spellShape } from './clock-fields.ts';
import { either, list, plainNumber, quantity, section, text } from './fields.ts';

/** Unit of a price. */
const EACH = { unit: 'currency/kWh' };

const { days, months } = spellShape;
const block = section(
  {
    price: plainNumber({}, 'Price of a kWh in these hours', { ...EACH, eg: 0.35 }),
    days,
    months,
    from: clock('Time of day at which they start', { eg: '17:00', otherwise: '00:00' }).optional(),
    to: clock(
      'Time of day at which they end, on the next day where that is at or before the start',
      {
        eg: '20:00',
        otherwise: '24:00',
      },
    ).optional(),
  },
  'Hours with a price of their own',
  { eg: { price: 0.35, days: 'weekdays', months: 'Nov-Mar', from: '17:00', to: '20:00' } },
);

/** A price alone, or with what else the bill says: flat, day and night, or a half-hourly file. */
const fuel = (says: string, name: (typeof FUELS)[number]) =>
  either(
    [
      plainNumber({}, 'Price of a kWh', { ...EACH, eg: PRICE[name].value }),
      section(
        {
          price: plainNumber({}, 'Price of a kWh at all times', {
            ...EACH,
            usual: PRICE[name],
          }).optional(),
          day: plainNumber({}, 'Price of a kWh outside the night hours', {
            ...EACH,
            eg: 0.3,
          }).optional(),
          night: plainNumber({}, 'Price of a kWh in the night hours', {
            ...EACH,
            eg: 0.15,
          }).optional(),
          'night hours': hours('When the night price holds, by the local clock', {
            eg: '00:30-07:30',
          }).optional(),
          blocks: list(
            block,
            'a list of { price, days, months, from, to }',
            'Hours with prices of their own, by the local clock, while price holds at all others',
            { otherwise: 'none' },
          ).optional(),
          prices: text(
            'Path of a CSV file of times (UTC, ISO 8601) and prices of a kWh, evenly spaced, from the folder of this file',
            { eg: 'tariff.csv' },
          ).optional(),
          standing: plainNumber({ min: 0 }, 'Charge for being connected', {
            unit: 'currency/day',
            eg: 0.5,
            usual: 0,
          }).optional(),
          carbon: quantity('kg/kWh', { min: 0, max: 5 }, 'CO2 equivalent of a kWh', {
            usual: CARBON[name],
          }).optional(),
        },
        'Exactly one of: price, with blocks or without; day, night and night hours; prices',
        { eg: { price: PRICE[name].value, standing: 0.5 } },
      ),
    ],
    'a price a kWh, or a mapping with price, or day, night and night hours, or prices',
    says,
    { eg: PRICE[name].value, usual: PRICE[name] },
  );

export const moneyModel = section(
  {
    currency: text('Currency of all prices, which is written behind every sum', {
      eg: 'GBP',
      usual: 'money',
    }).optional(),
    gas: fuel('What mains gas costs', 'gas').optional(),
    oil: fuel('What heating oil costs', 'oil').optional(),
    lpg: fuel('What bottled or tank gas costs', 'lpg').optional(),
    wood: fuel('What logs or pellets cost', 'wood').optional(),
    electricity: fuel(
      'What electricity costs, at all times or by the clock',
      'electricity',
    ).optional(),
    'district heat': fuel('What heat from a network costs', 'district heat').optional(),
    'discount rate': quantity(
      '-',
      { min: 0, max: 0.5 },
      'Discount rate: what money a year later is worth less',
      { usual: DISCOUNT },
    ).optional(),
  },
  'What energy costs, and in which currency',
  { eg: { currency: 'GBP', gas: 0.07, electricity: 0.27 }, otherwise: 'invented prices' },
);

export const FUELS = ['gas', 'oil', 'lpg', 'wood', 'electricity', 'district heat'] as const;
