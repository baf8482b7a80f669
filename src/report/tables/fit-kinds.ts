import type { HomeFit } from '../../fit/fit-home.ts';
import type { Adjustable } from '../../scenario/edits/adjustables.ts';
import type { FitKind } from '../../scenario/edits/fit-places.ts';
import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';

/** What is told of one kind of fitted value. */
interface KindFacts {
  /** What it trades with: air with heat and with water, which both leave by it, those not with each other. */
  readonly moves: 'air' | 'water' | 'breath' | 'heat';
  /** Its name without a room, and what that means; absent where the name says it. */
  readonly means?: readonly [string, string];
  /** What would tell it, the easiest first. */
  readonly tellers: readonly Measurement[];
}

interface Measurement {
  readonly words: string;
  /** Quantities of a log that are this measurement; none where a log cannot show that it was made. */
  readonly of?: readonly string[];
}

const AIR: readonly Measurement[] = [
  {
    words: `${CARBON_DIOXIDE.symbol} logged in a bedroom, or a blower door,`,
    of: [CARBON_DIOXIDE.name],
  },
  { words: 'a blower door' },
];
const WINDOWS: readonly Measurement[] = [
  { words: 'contacts of the windows, logged,', of: ['window'] },
];
/** Quantities of a log that tell what heat was given. */
export const HEAT_METERS: readonly string[] = ['heating power', 'heating electricity', 'gas'];
const METER: readonly Measurement[] = [
  { words: 'a reading of the heating meter every day', of: HEAT_METERS },
];
const HOTTER: readonly Measurement[] = [{ words: 'a log of hotter days' }];
const READS_TOO_MUCH =
  'what the thermostat reads too much; above 0 rooms are kept cooler than it is set, below 0 warmer';

/** Every kind of fitted value. */
const FIT_KINDS: Readonly<Record<FitKind, KindFacts>> = {
  'leakage at 50 Pa': {
    moves: 'air',
    means: [
      'air leakage at 50 Pa',
      'how often an hour a blower door changes the air; in ordinary wind about a twentieth of that',
    ],
    tellers: AIR,
  },
  leakage: { moves: 'air', tellers: AIR },
  'windows left open': { moves: 'air', tellers: WINDOWS },
  'usual airing': {
    moves: 'air',
    means: ['usual airing', 'how far windows stand open in habits of airing, over what is usual'],
    tellers: [
      {
        words: 'contacts of the windows, logged, or readings every ten minutes',
        of: ['window'],
      },
    ],
  },
  'moisture factor': {
    moves: 'water',
    means: ['moisture factor', 'water that people and what they do give off, over what is usual'],
    tellers: [
      {
        words: `a week with a weighed humidifier, or ${CARBON_DIOXIDE.symbol} in a bedroom,`,
        of: [CARBON_DIOXIDE.name],
      },
      { words: 'a week with a weighed humidifier' },
    ],
  },
  'moisture buffer': {
    moves: 'water',
    means: ['moisture buffer', 'what walls and furnishings take up of water in a day'],
    tellers: [{ words: 'half an hour of steam in a shut room, logged every ten minutes,' }],
  },
  'deep moisture': {
    moves: 'water',
    means: ['deep moisture', 'what they hold over weeks, over what they hold over a day'],
    tellers: [{ words: 'a log that runs from a wet into a dry season' }],
  },
  'steady moisture': {
    moves: 'water',
    means: ['steady moisture', 'water given to the room at all hours, besides that of people'],
    tellers: [{ words: 'a week with a weighed humidifier in the room' }],
  },
  breath: {
    moves: 'breath',
    tellers: [{ words: 'who is at home, logged,', of: ['presence'] }],
  },
  'U-value': { moves: 'heat', tellers: METER },
  'heat loss': {
    moves: 'heat',
    means: [
      'heat loss factor',
      'U-values that the scenario does not state, all together, over what was assumed; below 1 is better insulated',
    ],
    tellers: METER,
  },
  'heat capacity': {
    moves: 'heat',
    means: ['heat capacity factor', 'heat that walls and heavy things hold, over what was assumed'],
    tellers: [{ words: 'a night or two with the heating off' }],
  },
  'window shading': {
    moves: 'heat',
    means: ['window shading', 'share of the sun that is kept off windows at all times'],
    tellers: [{ words: 'some sunny days with the heating off' }],
  },
  'heater power': {
    moves: 'heat',
    means: ['heater power', 'most that the heaters give, by floor area'],
    tellers: [{ words: 'the heating switched fully on after a cold night' }],
  },
  thermostat: {
    moves: 'heat',
    means: ['thermostat error', READS_TOO_MUCH],
    tellers: [{ words: 'a log of the hours in which the heating is on' }],
  },
  'thermostat of cooling': {
    moves: 'heat',
    means: ['thermostat error', READS_TOO_MUCH],
    tellers: HOTTER,
  },
  'cooling setpoint': { moves: 'heat', tellers: HOTTER },
  'steady heat': {
    moves: 'heat',
    means: ['steady heat', 'heat given to the room at all hours, besides heating, people and sun'],
    tellers: [{ words: 'the heating power of the room, logged,', of: ['heating power'] }],
  },
};

/** What names of fitted values mean, a line for each that is among them; those that say it themselves have none. */
export function namesInWords(kinds: readonly FitKind[]): string[] {
  const lines = Object.entries(FIT_KINDS)
    .filter(([kind]) => kinds.some((one) => one === kind))
    .flatMap(([, { means }]) => (means === undefined ? [] : [`${means[0]}: ${means[1]}`]));
  return [...new Set(lines)];
}

/**
 * Whether a value of one kind may make up for another that is not as it is in the home: air trades with
 * heat and with water, which both leave by it, but heat and water do not with each other.
 */
export function tradesWith(kind: FitKind, other: FitKind): boolean {
  const [one, two] = [FIT_KINDS[kind].moves, FIT_KINDS[other].moves];
  return one === 'air' || two === 'air' || one === two;
}

/**
 * Which measurement would tell what a log does not: the first that was not logged, in the room that the
 * value is of.
 *
 * @param logged  what was, and in which room
 */
export function wouldTell(
  { kind, room }: Pick<Adjustable, 'kind' | 'room'>,
  logged: HomeFit['logged'],
): string {
  const isLogged = (quantities: readonly string[]) =>
    logged.some(
      (one) => quantities.includes(one.quantity) && (room === undefined || one.room === room),
    );
  const { tellers } = FIT_KINDS[kind];
  return tellers.find(({ of = [] }) => !isLogged(of))?.words ?? 'a longer log';
}
