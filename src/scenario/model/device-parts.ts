import * as z from 'zod';
import { readQuantity } from '../../units/quantity.ts';
import { hours } from './clock-fields.ts';
import { choice, quantity } from './fields.ts';
import { gate } from './gate.ts';

/* Fields that devices of several kinds have. */

export const room = z
  .string({ error: () => 'the name of the room it stands in' })
  .min(1, { error: 'the name of the room it stands in' })
  .describe('Name of the room it stands in');
export const minutes = (says: string) => quantity('min', { min: 0, max: 1440 }, says);
export const watts = (says: string, max = 10_000) => quantity('W', { min: 0, max }, says);
export const flow = (says: string) => quantity('m3/h', { above: 0, max: 5000 }, says);
export const share = (says: string) => quantity('-', { min: 0, max: 1 }, says);
export const drierBy = quantity(
  'g/m3',
  { min: 0, max: 30 },
  'Only where outdoor air is drier than the room by this absolute humidity',
).optional();

/** What any device may have. */
export const control = {
  gate: gate('When it may run').optional(),
  hours: hours('When it may run, by the clock').optional(),
  'least run': minutes('Least time it runs once started').optional(),
  'least rest': minutes('Least time it rests once stopped').optional(),
  'longest run': minutes('Longest time it runs without a rest').optional(),
};

export const target = (says: string) => quantity('%', { min: 10, max: 95 }, says).optional();
export const deadband = (unit: string, max: number) =>
  quantity(
    unit,
    { min: 0, max },
    'Deadband: distance between the levels of switching on and off',
  ).optional();
export const runs = <const T extends readonly [string, ...string[]]>(words: T) =>
  choice(words, 'What makes it run').optional();

const CONDITION_WORDS = 'a test condition such as "27 °C/60 %"';

/** "27 °C/60 %": temperature [°C] and relative humidity [%]. */
export const testCondition = z
  .string({ error: () => CONDITION_WORDS })
  .transform((written, context) => {
    const parts = written.split('/');
    const t = readQuantity(parts[0] ?? '', '°C');
    const rh = readQuantity(parts[1] ?? '', '%');
    const fits = parts.length === 2 && 'value' in t && 'value' in rh;
    if (fits && t.value >= 15 && t.value <= 40 && rh.value >= 40 && rh.value <= 100) {
      return { temperature: t.value, humidity: rh.value };
    }
    const message = `${CONDITION_WORDS}, of 15 to 40 °C and 40 to 100 %`;
    context.addIssue({ code: 'custom', message });
    return z.NEVER;
  })
  .describe('Temperature and humidity at which the label holds');
