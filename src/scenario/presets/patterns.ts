import type { Spell } from '../../control/household.ts';
import type { PATTERNS, WHO } from '../choices.ts';
import { daysOf, EVERY_DAY, minutesOf, spellOf } from '../clock-words.ts';

/** Place in the home by its use, whatever the rooms are called. */
export type Spot = 'bed' | 'day' | 'kitchen' | 'bath' | 'desk';

export interface SpotStay extends Spell {
  readonly spot: Spot;
  readonly asleep: boolean;
}

export type Pattern = (typeof PATTERNS)[number];

/** Likely pattern of a person. */
export const PATTERN_OF: Readonly<Record<(typeof WHO)[number], Pattern>> = {
  adult: 'works away on weekdays',
  'frail adult': 'at home',
  child: 'school child',
  infant: 'infant',
};

const WEEKDAYS = daysOf('weekdays');
const WEEKENDS = daysOf('weekends');
const BEFORE_WORK = daysOf(['Sun', 'Mon', 'Tue', 'Wed', 'Thu']);
const BEFORE_REST = daysOf(['Fri', 'Sat']);

/** "07:00-07:20" in the bathroom on weekdays: one line of a pattern. */
function stay(days: number, times: string, spot: Spot): SpotStay {
  const [from, to] = times.split('-').map(minutesOf) as [number, number];
  return { ...spellOf(days, from, to), spot, asleep: spot === 'bed' };
}

/** Saturdays and Sundays of those who work, wherever they do. */
const WORKERS_WEEKEND: readonly SpotStay[] = [
  stay(WEEKENDS, '08:30-08:50', 'bath'),
  stay(WEEKENDS, '08:50-10:00', 'kitchen'),
  stay(WEEKENDS, '10:00-12:30', 'day'),
  stay(WEEKENDS, '16:30-17:30', 'day'),
  stay(WEEKENDS, '17:30-18:40', 'kitchen'),
  stay(WEEKENDS, '18:40-23:00', 'day'),
];

/**
 * Where people are by the clock, invented and plain; at all times not listed they are out.
 * Common practice. Stays of one pattern do not overlap.
 */
export const STAYS: Readonly<Record<Pattern, readonly SpotStay[]>> = {
  'works away on weekdays': [
    stay(BEFORE_WORK, '23:00-07:00', 'bed'),
    stay(BEFORE_REST, '23:00-08:30', 'bed'),
    stay(WEEKDAYS, '07:00-07:20', 'bath'),
    stay(WEEKDAYS, '07:20-08:00', 'kitchen'),
    stay(WEEKDAYS, '17:30-18:40', 'kitchen'),
    stay(WEEKDAYS, '18:40-23:00', 'day'),
    ...WORKERS_WEEKEND,
  ],
  'works at home': [
    stay(BEFORE_WORK, '23:00-07:10', 'bed'),
    stay(BEFORE_REST, '23:00-08:30', 'bed'),
    stay(WEEKDAYS, '07:10-07:30', 'bath'),
    stay(WEEKDAYS, '07:30-08:30', 'kitchen'),
    stay(WEEKDAYS, '08:30-12:30', 'desk'),
    stay(WEEKDAYS, '12:30-13:10', 'kitchen'),
    stay(WEEKDAYS, '13:10-17:00', 'desk'),
    stay(WEEKDAYS, '17:40-18:40', 'kitchen'),
    stay(WEEKDAYS, '18:40-23:00', 'day'),
    ...WORKERS_WEEKEND,
  ],
  'at home': [
    stay(EVERY_DAY, '22:30-07:30', 'bed'),
    stay(EVERY_DAY, '07:30-07:50', 'bath'),
    stay(EVERY_DAY, '07:50-09:00', 'kitchen'),
    stay(EVERY_DAY, '09:00-12:00', 'day'),
    stay(EVERY_DAY, '12:00-13:00', 'kitchen'),
    stay(EVERY_DAY, '13:00-14:30', 'day'),
    stay(EVERY_DAY, '16:00-17:30', 'day'),
    stay(EVERY_DAY, '17:30-18:40', 'kitchen'),
    stay(EVERY_DAY, '18:40-22:30', 'day'),
  ],
  'school child': [
    stay(BEFORE_WORK, '20:30-07:15', 'bed'),
    stay(BEFORE_REST, '21:00-08:30', 'bed'),
    stay(WEEKDAYS, '07:15-08:15', 'kitchen'),
    stay(WEEKDAYS, '15:45-17:40', 'day'),
    stay(WEEKDAYS, '17:40-18:40', 'kitchen'),
    stay(WEEKDAYS, '18:40-20:10', 'day'),
    stay(WEEKDAYS, '20:10-20:30', 'bath'),
    stay(WEEKENDS, '08:30-10:00', 'kitchen'),
    stay(WEEKENDS, '10:00-12:30', 'day'),
    stay(WEEKENDS, '16:30-17:40', 'day'),
    stay(WEEKENDS, '17:40-18:40', 'kitchen'),
    stay(WEEKENDS, '18:40-20:10', 'day'),
    stay(WEEKENDS, '20:10-20:30', 'bath'),
  ],
  infant: [
    stay(EVERY_DAY, '19:00-06:30', 'bed'),
    stay(EVERY_DAY, '06:30-07:30', 'day'),
    stay(EVERY_DAY, '07:30-08:00', 'kitchen'),
    stay(EVERY_DAY, '08:00-09:30', 'day'),
    stay(EVERY_DAY, '09:30-11:00', 'bed'),
    stay(EVERY_DAY, '11:00-12:30', 'day'),
    stay(EVERY_DAY, '12:30-14:30', 'bed'),
    stay(EVERY_DAY, '15:30-17:40', 'day'),
    stay(EVERY_DAY, '17:40-18:20', 'kitchen'),
    stay(EVERY_DAY, '18:20-18:40', 'bath'),
    stay(EVERY_DAY, '18:40-19:00', 'day'),
  ],
};
