import { either, list, quantity, section } from './fields.ts';
import { dayOfYear } from './month-day.ts';
import { months } from './month-fields.ts';
import { degrees } from './setpoint-field.ts';

/** When the home is heated at all: by months, by outdoor temperature, or by both. */
export const seasonField = either(
  [
    months().describe('Months of the season: all year, a span such as Oct-Apr, or a list'),
    section(
      {
        months: months().describe('Months of the season; those usual in the country').optional(),
        'mean below': quantity(
          '°C',
          { min: -20, max: 40 },
          'Heated on days before which the mean outdoor temperature was lower than this; usual in the country for the source',
        ).optional(),
        over: quantity(
          'day',
          { min: 1, max: 30, whole: true },
          'Whole days that the mean is taken over',
        ).optional(),
      },
      'By month and outdoor temperature, both of which must hold',
    ),
  ],
  'all year, months such as Oct-Apr, or a mapping with months, mean below, over',
  'Heating season: outside it thermostats keep the frost guard; the one usual in the country where not given',
);

const DATES_WORDS = 'a list of { from, to }, each a month and day such as "12-27"';

/** What is kept while everybody is away. */
export const holidaySetbackField = either(
  [
    degrees('Temperature kept on the holidays of the household'),
    section(
      {
        setpoint: degrees('Temperature kept on these days'),
        dates: list(
          section(
            { from: dayOfYear('First day'), to: dayOfYear('Last day') },
            'Days of every year; they may run over its end',
          ),
          DATES_WORDS,
          'When it is kept; whenever all who live here are on holiday where not given',
        ).optional(),
      },
      'A setback with dates of its own',
    ),
  ],
  'a temperature in °C, or a mapping with setpoint, dates',
  'Highest temperature kept on holidays; as on other days where not given',
);
