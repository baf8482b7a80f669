import * as z from 'zod';
import { nearestHint } from '../../units/nearest-name.ts';
import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import { DAYS, daysOf, dayTwice, EVERY_DAY, GROUPS, minutesOf, spellOf } from '../clock-words.ts';
import { choice, either, isWord, list, type Shown, section } from './fields.ts';
import { months } from './month-fields.ts';

export const clock = (says: string, more: Shown = {}) =>
  z
    .string({ error: () => CLOCK_WORDS })
    .transform((written, context) => {
      const minutes = minutesOf(written);
      if (Number.isNaN(minutes)) context.addIssue({ code: 'custom', message: CLOCK_WORDS });
      return minutes;
    })
    .meta({ description: says, unit: 'local time, "HH:MM"', ...example(more, '07:00') });

const example = ({ eg, otherwise }: Shown, usual: string) => ({
  eg: eg ?? usual,
  ...(otherwise !== undefined && { otherwise }),
});

const CLOCKS = 'a local time such as "07:00", or a list of them';

/** One time of day or several, each once. */
export const times = (says: string, more: Shown = {}) =>
  either(
    [
      clock('One time of day'),
      list(clock('One time of day'), CLOCKS, 'Several times').refine(
        (all) => new Set(all).size === all.length,
        { error: 'every time once' },
      ),
    ],
    CLOCKS,
    says,
    more,
  ).transform((given) => [given].flat());

export const days = () =>
  z
    .union([z.string(), z.array(z.string())], { error: () => DAYS_WORDS })
    .transform((written, context) => {
      const bits = daysOf(written);
      const twice = dayTwice(written);
      if (twice !== null) {
        const got = `${DAYS[twice]} twice`;
        context.addIssue({ code: 'custom', message: 'every day once', params: { got } });
      } else if (Number.isNaN(bits) || bits === 0) {
        const unknown = [written].flat().find((name) => Number.isNaN(daysOf(name))) ?? '';
        const hint = nearestHint(unknown, [...DAYS, ...Object.keys(GROUPS)]);
        const got = unknown === '' ? 'no day at all' : JSON.stringify(unknown);
        context.addIssue({ code: 'custom', message: DAYS_WORDS, params: { got, hint } });
      }
      return bits;
    })
    .meta({
      description: 'Days on which it starts: every day, weekdays, weekends, or names of days',
      eg: 'weekdays',
      usual: 'every day',
    });

/** "22:30-06:00": every day, past midnight where the end is not after the start. */
const span = z
  .string({ error: () => SPAN_WORDS })
  .transform((written, context) => {
    const [from, to, more] = written.split(/\s*[-–]\s*/).map(minutesOf);
    if (from === undefined || to === undefined || more !== undefined || !(from + to >= 0)) {
      const params = { isWord: isWord(written) };
      context.addIssue({ code: 'custom', message: SPAN_WORDS, params });
      return z.NEVER;
    }
    return spellOf(EVERY_DAY, from, to);
  })
  .meta({
    description: 'A span of local time on every day, past midnight where it ends before it starts',
    eg: '22:30-06:00',
  });

export const spellShape = {
  days: days().optional(),
  months: months().optional(),
  from: clock('Time of day at which it starts', { eg: '07:00' }),
  to: clock('Time of day at which it ends, on the next day where that is at or before the start', {
    eg: '22:30',
  }),
};

const spellSection = section(spellShape, 'A span of local time on some days', {
  eg: { days: 'weekdays', from: '07:00', to: '09:00' },
}).transform(({ days, months, from, to }) => spellOf(days, from, to, months));

/** Spells of local time: `always`, `never`, one span, or a list of spans and stretches. */
export const hours = (says: string, more: Shown = {}) =>
  either(
    [
      choice(['always', 'never'], 'All the time, or not at all'),
      span,
      spellSection,
      list(
        either([span, spellSection], SPAN_WORDS, 'One span of time'),
        HOURS_WORDS,
        'Several spans of time',
      ),
    ],
    HOURS_WORDS,
    says,
    { eg: '07:00-22:30', ...more },
  ).transform((given) => {
    if (given === 'always') return [spellOf(EVERY_DAY, 0, MINUTES_PER_DAY)];
    if (given === 'never') return [];
    return Array.isArray(given) ? given : [given];
  });

const CLOCK_WORDS = 'a local time such as "06:30"';
const SPAN_WORDS = 'a span of local time such as "22:30-06:00"';
const HOURS_WORDS =
  'always, never, a span such as "22:30-06:00", or a list of { days, months, from, to }';
const DAYS_WORDS = 'every day, weekdays, weekends, or day names such as [Mon, Wed]';
