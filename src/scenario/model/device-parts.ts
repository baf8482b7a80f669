import * as z from 'zod';
import { supplyFilterOf } from '../../species/supply-filter.ts';
import type { Preset } from '../../units/preset.ts';
import { readQuantity } from '../../units/quantity.ts';
import { DEHUMIDIFIER, TESTED_AT } from '../presets/devices.ts';
import { hours } from './clock-fields.ts';
import { choice, quantity, type Shown } from './fields.ts';
import { gate } from './gate.ts';

/* Fields that devices of several kinds have. */

export const room = z
  .string({ error: () => 'the name of the room it stands in' })
  .min(1, { error: 'the name of the room it stands in' })
  .meta({ description: 'Name of the room that the device stands in', eg: 'bedroom' });
export const minutes = (says: string, more: Shown) =>
  quantity('min', { min: 0, max: 1440 }, says, more);
export const watts = (says: string, more: Shown, max = 10_000) =>
  quantity('W', { min: 0, max }, says, more);
export const flow = (says: string, more: Shown) =>
  quantity('m3/h', { above: 0, max: 5000 }, says, more);
export const share = (says: string, more: Shown) => quantity('-', { min: 0, max: 1 }, says, more);
export const drierBy = quantity(
  'g/m3',
  { min: 0, max: 30 },
  'By how much absolute humidity outdoor air has to be drier than the room for it to run',
  { eg: 1, otherwise: 'no matter' },
).optional();

/** What any device may have. */
export const control = {
  gate: gate('Presence or closed windows without which the device does not run').optional(),
  hours: hours('When the device may run, by the clock', { otherwise: 'always' }).optional(),
  'least run': minutes('Least time that the device runs once started', {
    eg: '5 min',
    otherwise: `${DEHUMIDIFIER.leastRun.value} for a dehumidifier, else 0`,
  }).optional(),
  'least rest': minutes('Least time that the device rests once stopped', {
    eg: '5 min',
    otherwise: `${DEHUMIDIFIER.leastRest.compressor.value} for a dehumidifier with a compressor, else 0`,
  }).optional(),
  'longest run': minutes('Longest time that the device runs without a rest', {
    eg: '4 h',
    otherwise: 'no limit',
  }).optional(),
};

export const target = (says: string, usual: Preset) =>
  quantity('%', { min: 10, max: 95 }, says, { usual }).optional();
export const deadband = (unit: string, max: number, more: Shown) =>
  quantity(
    unit,
    { min: 0, max },
    'Distance between the levels of switching on and off, half of it on each side of the target (deadband)',
    more,
  ).optional();
export const runs = <const T extends readonly [string, ...string[]]>(words: T, more: Shown) =>
  choice(words, 'What makes the device run', more).optional();

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
  .meta({
    description:
      'Temperature [°C] and relative humidity [%] at which the label of the dehumidifier holds',
    eg: '27 °C/60 %',
    otherwise: `${TESTED_AT.compressor.words} for a compressor, ${TESTED_AT.desiccant.words} for a desiccant`,
  });

/** A class of ISO 16890, kept as it was written. */
export const filterClass = (says: string, more: Shown) =>
  z
    .string({ error: () => FILTERS })
    .transform((written, context) => {
      if (supplyFilterOf(written) !== null) return written;
      const hint = /^[gmf]\s?\d$/i.test(written.trim())
        ? 'classes of EN 779 were withdrawn in 2018: G4 is about coarse, M5 ePM10 50 %, F7 ePM1 50 %, F9 ePM1 80 %'
        : '';
      context.addIssue({ code: 'custom', message: FILTERS, params: { hint } });
      return z.NEVER;
    })
    .meta({ description: says, ...more });

const FILTERS =
  'none, coarse, or a class of ISO 16890: ePM1, ePM2.5 or ePM10 with 50 % or more, such as ePM1 50 %';
