import { COLD_BY, SEASON_DAYS } from '../presets/heating-season.ts';
import { choice, either, list, quantity, section } from './fields.ts';
import { dayOfYear } from './month-day.ts';
import { months } from './month-fields.ts';
import { degrees } from './setpoint-field.ts';

/** When the home is heated at all: by months, and within them by outdoor temperature and by hand. */
export const seasonField = either(
  [
    months().meta({
      description: 'Months of the season: all year, a span such as Oct-Apr, or a list',
      usual: undefined,
    }),
    section(
      {
        months: months()
          .meta({
            description: 'Months in which the home may be heated',
            usual: undefined,
            otherwise: 'those usual in the country',
          })
          .optional(),
        'mean below': quantity(
          '°C',
          { min: -20, max: 40 },
          'Mean outdoor temperature of the days before, below which a day is heated',
          { eg: '15 °C', otherwise: 'usual in the country for the source' },
        ).optional(),
        over: quantity(
          'day',
          { min: 1, max: 30, whole: true },
          'How many whole days the mean outdoor temperature is taken over',
          { usual: SEASON_DAYS },
        ).optional(),
        'cold by': either(
          [
            choice(['never'], 'Nobody touches it'),
            quantity(
              'K',
              { above: 0, max: 20 },
              'How far a room is under its setting when whoever is awake in it is cold',
              { eg: '2 K' },
            ),
          ],
          'never, or a temperature difference such as 2 K',
          'How cold it is to who switches the heating on, on other days of the months',
          { usual: COLD_BY },
        ).optional(),
      },
      'By month, and by outdoor temperature or people who are cold',
      { eg: { months: 'Oct-Apr', 'mean below': '15 °C' } },
    ),
  ],
  'all year, months such as Oct-Apr, or a mapping with months, mean below, over, cold by',
  'Heating season, outside which thermostats keep the frost guard',
  { eg: 'Oct-Apr', otherwise: 'the one usual in the country' },
);

const DATES_WORDS = 'a list of { from, to }, each a month and day such as "12-27"';

/** What is kept while everybody is away. */
export const holidaySetbackField = either(
  [
    degrees('Temperature kept on the holidays of the household', { eg: '12 °C' }),
    section(
      {
        setpoint: degrees('Temperature kept on these days', { eg: '12 °C' }),
        dates: list(
          section(
            {
              from: dayOfYear('First day of the setback, every year', '12-27'),
              to: dayOfYear('Last day of the setback, every year', '01-03'),
            },
            'Days of every year; they may run over its end',
          ),
          DATES_WORDS,
          'Days on which the setback is kept',
          { otherwise: 'whenever all who live here are on holiday' },
        ).optional(),
      },
      'A setback with dates of its own',
      { eg: { setpoint: '12 °C', dates: [{ from: '12-27', to: '01-03' }] } },
    ),
  ],
  'a temperature in °C, or a mapping with setpoint, dates',
  'Highest temperature that is kept on holidays',
  { eg: '12 °C', otherwise: 'as on other days' },
);
