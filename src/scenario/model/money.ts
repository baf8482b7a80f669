import { hours, spellShape } from './clock-fields.ts';
import { either, list, plainNumber, quantity, section, text } from './fields.ts';

const { days, from, to } = spellShape;
const block = section(
  { price: plainNumber({}, 'Price of a kWh in these hours'), days, from, to },
  'Hours with a price of their own',
);

/** A price alone, or with what else the bill says: flat, day and night, or a half-hourly file. */
const fuel = (says: string) =>
  either(
    [
      plainNumber({}, 'Price of a kWh'),
      section(
        {
          price: plainNumber({}, 'Price of a kWh at all times').optional(),
          day: plainNumber({}, 'Price of a kWh outside the night hours').optional(),
          night: plainNumber({}, 'Price of a kWh in the night hours').optional(),
          'night hours': hours('When the night price holds, by the local clock').optional(),
          blocks: list(
            block,
            'a list of { price, days, from, to }',
            'Hours with prices of their own, by the local clock; at all others price holds',
          ).optional(),
          prices: text(
            'CSV file, relative to this one: time (UTC, ISO 8601) and price of a kWh, evenly spaced',
          ).optional(),
          standing: plainNumber({ min: 0 }, 'Charge for being connected, a day').optional(),
          carbon: quantity('kg/kWh', { min: 0, max: 5 }, 'CO2 equivalent of a kWh').optional(),
        },
        'Exactly one of: price, with blocks or without; day, night and night hours; prices',
      ),
    ],
    'a price a kWh, or a mapping with price, or day, night and night hours, or prices',
    says,
  );

export const moneyModel = section(
  {
    currency: text('Written behind every sum, such as GBP').optional(),
    gas: fuel('Mains gas').optional(),
    oil: fuel('Heating oil').optional(),
    lpg: fuel('Bottled or tank gas').optional(),
    wood: fuel('Logs or pellets').optional(),
    electricity: fuel('Electricity').optional(),
    'district heat': fuel('Heat from a network').optional(),
    'discount rate': quantity(
      '-',
      { min: 0, max: 0.5 },
      'Discount rate: what money a year later is worth less',
    ).optional(),
  },
  'What energy costs, a kWh',
);

export const FUELS = ['gas', 'oil', 'lpg', 'wood', 'electricity', 'district heat'] as const;
