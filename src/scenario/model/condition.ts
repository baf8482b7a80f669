import * as z from 'zod';
import type { Quantity } from '../../control/automation.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { readAnyQuantity } from '../../units/any-quantity.ts';
import { clock } from './clock-fields.ts';
import { choice, list, type Shown, section, text } from './fields.ts';
import { type Reading, unitsOf } from './readings.ts';

/** One edge that a reading has to be beyond. */
export interface ConditionData {
  readonly quantity: Quantity;
  /** Name of a room, "outdoors", or null for the home as a whole. */
  readonly room: string | null;
  readonly is: 'above' | 'below';
  readonly value: number;
  readonly clear: number;
}

const level = (says: string, eg: number, otherwise?: string) =>
  z
    .union([z.number(), z.string()], { error: () => LEVEL_WORDS })
    .meta({ description: says, unit: 'unit of the reading', eg, ...(otherwise && { otherwise }) });
const LEVEL_WORDS = 'a number, or text with a unit of the reading';

const conditionShape = (readings: readonly Reading[]) => ({
  room: text('Name of the room whose reading counts, or outdoors', {
    eg: 'bedroom',
    otherwise: 'the home as a whole, or the room of the rule',
  }).optional(),
  reading: z
    .enum(readings as [Reading, ...Reading[]], {
      error: () => `one of: ${readings.join(', ')}; or a species that air.own species declares`,
    })
    .meta({ description: 'What the sensor reads', eg: 'humidity' })
    .optional(),
  over: level('Level over which the condition is met', 65).optional(),
  under: level('Level under which the condition is met', 40).optional(),
  clear: level(
    'Level at which the condition, once met, ends again (hysteresis)',
    60,
    'that of over or under',
  ).optional(),
  windows: choice(
    ['open', 'closed'],
    'Whether a window of the room is open, or all are closed',
  ).optional(),
  presence: choice(
    ['somebody', 'nobody'],
    'What the presence sensor says: somebody is there, or nobody',
  ).optional(),
  price: choice(
    ['electricity'],
    'What a kWh costs at the time, compared with over and under',
  ).optional(),
  after: clock('Time of day from which the condition is met', { eg: '06:00' }).optional(),
  before: clock('Time of day until which the condition is met', { eg: '21:00' }).optional(),
});

const conditionModel = (units: Readonly<Record<Reading, string>>, unplaced: Unplaced) =>
  section(
    conditionShape(Object.keys(units) as Reading[]),
    'One condition, of a reading, windows, presence, a price or a time of day',
    {
      eg: { room: 'bedroom', reading: 'humidity', over: 65 },
    },
  ).transform((given, context) => {
    const { room = null, windows, presence, price, after, before } = given;
    const say = (path: string[], message: string, more: object = {}) =>
      context.addIssue({ code: 'custom', message, path, params: more });
    const kinds = [given.reading, windows, presence, price, after ?? before];
    if (kinds.filter((kind) => kind !== undefined).length !== 1) {
      say([], 'exactly one of: reading; windows; presence; price; after, before or both');
      return [];
    }
    const edge = (quantity: Quantity, is: 'above' | 'below', value: number): ConditionData => ({
      quantity,
      room,
      is,
      value,
      clear: value,
    });
    if (windows !== undefined) return [edge('window', windows === 'open' ? 'above' : 'below', 0.5)];
    if (presence !== undefined) {
      return [edge('presence', presence === 'somebody' ? 'above' : 'below', 0.5)];
    }
    if (price !== undefined) {
      if (room !== null) say(['room'], 'no room beside a price');
      return levelEdges('electricity price', null, given, say, edge);
    }
    if (given.reading === undefined) {
      if (room !== null) say(['room'], 'no room beside a time of day');
      return hourEdges(after, before, say, edge);
    }
    if (given.room === undefined && unplaced === 'never') {
      say([], 'the room whose reading it is, or outdoors');
    }
    return readingEdges(given.reading, units[given.reading], given, say, edge);
  });

/** Past midnight hours are counted from noon. @param after  [min after midnight] */
function hourEdges(
  after: number | undefined,
  before: number | undefined,
  say: Say,
  edge: Edge,
): ConditionData[] {
  if (after !== undefined && before !== undefined && after >= before) {
    const night = after > before && after >= NOON && before <= NOON;
    if (!night) say(['before'], 'a time later in the day than after', { hint: NIGHT });
    return [
      edge('hour since noon', 'above', (after - NOON) / 60),
      edge('hour since noon', 'below', (before + NOON) / 60),
    ];
  }
  return [
    ...(after === undefined ? [] : [edge('hour', 'above', after / 60)]),
    ...(before === undefined ? [] : [edge('hour', 'below', before / 60)]),
  ];
}

/** [min after midnight] */
const NOON = 720;
const NIGHT = 'or, past midnight, an after from 12:00 on and a before up to 12:00';

/** Whether a reading may do without a room, as that of the rule, which is seen to elsewhere. */
type Unplaced = 'never' | 'of the rule';

type Say = (path: string[], message: string, more?: object) => void;
type Edge = (quantity: Quantity, is: 'above' | 'below', value: number) => ConditionData;
type Levels = {
  readonly [K in 'over' | 'under' | 'clear']?: number | string | undefined;
} & { readonly room?: string | undefined };

function readingEdges(
  reading: Reading,
  unit: string,
  given: Levels,
  say: Say,
  edge: Edge,
): ConditionData[] {
  if (given.room === 'outdoors' && reading === 'humidity above outdoors') {
    say(['reading'], 'humidity above outdoors of a room');
  }
  const quantity = reading === 'humidity' ? 'relative humidity' : reading;
  return levelEdges(quantity, unit, given, say, edge);
}

/**
 * One edge or, where it has to lie between two levels, both.
 *
 * @param unit  null for a price, a plain number
 */
function levelEdges(
  quantity: Quantity,
  unit: string | null,
  given: Levels,
  say: Say,
  edge: Edge,
): ConditionData[] {
  const read = (key: 'over' | 'under' | 'clear') => {
    const written = given[key];
    if (written === undefined) return undefined;
    if (unit === null) {
      if (typeof written === 'number') return written;
      say([key], 'a number, the price of a kWh');
      return Number.NaN;
    }
    const result = readAnyQuantity(written, unit);
    if ('value' in result) {
      if (unit !== '%' || (result.value >= 0 && result.value <= 100)) return result.value;
      say([key], 'a relative humidity from 0 to 100 %');
      return Number.NaN;
    }
    const { expected, got, hint } = result.refused;
    say([key], expected, { got, hint });
    return Number.NaN;
  };
  const [over, under, clear] = [read('over'), read('under'), read('clear')];
  if (over === undefined && under === undefined) say([], 'a level: over, under or both');
  if (over !== undefined && under !== undefined) {
    if (over >= under) say(['under'], `a level greater than that of over (${over})`);
    if (clear !== undefined) say(['clear'], 'no clear level where over and under are both given');
  } else if (clear !== undefined) {
    if (over !== undefined && clear > over) say(['clear'], `a clear level of ${over} or less`);
    if (under !== undefined && clear < under) say(['clear'], `a clear level of ${under} or more`);
  }
  const edges: ConditionData[] = [];
  if (over !== undefined) edges.push(edge(quantity, 'above', over));
  if (under !== undefined) edges.push(edge(quantity, 'below', under));
  return edges.map((one) => (clear === undefined ? one : { ...one, clear }));
}

const WORDS = 'a list of conditions, such as [{ room: bedroom, reading: humidity, over: 65 }]';

/**
 * Conditions that must all be met.
 *
 * @param species   whose levels may be read
 * @param unplaced  whether readings may leave out the room
 */
export const conditions = (
  says: string,
  species: readonly KnownSpecies[],
  unplaced: Unplaced = 'never',
  more: Shown = {},
) =>
  list(conditionModel(unitsOf(species), unplaced), WORDS, says, more).transform(
    (all): readonly ConditionData[] => all.flat(),
  );
