import { MINUTES_PER_DAY, MINUTES_PER_WEEK } from '../../units/time-units.ts';
import { DAYS, momentOfWeek } from '../clock-words.ts';
import { FUELS } from '../model/money.ts';
import { nextMonths } from '../month-words.ts';
import type { Finding } from '../unplaced-problem.ts';
import {
  everyAt,
  items,
  mapping,
  spellsOf,
  type UncheckedMapping,
  type UncheckedSpell,
} from './tolerant-readers.ts';

/** Schedules that say two things about one moment. */
export function overlapFindings(raw: UncheckedMapping): Finding[] {
  const blocks = everyAt(raw, ...FUELS.map((fuel) => `money/${fuel}/blocks`)).map(
    ({ path, value }) => ({
      path,
      value: items(value).map((block) => ({ ...ALL_DAY, ...mapping(block) })),
    }),
  );
  return [...everyAt(raw, ...SCHEDULES), ...blocks].flatMap(({ path, value }) =>
    overlaps(spellsOf(value, path)),
  );
}

/** Hours of a block of a tariff that gives none. */
const ALL_DAY = { from: '00:00', to: '24:00' };

/** Each spell that begins or runs while an earlier one of the list still lasts. */
function overlaps(spells: readonly UncheckedSpell[]): Finding[] {
  return spells.flatMap((later, k) => {
    for (const earlier of spells.slice(0, k)) {
      const minute = common(earlier, later);
      if (minute === null) continue;
      const number = Number(earlier.path.at(-1)) + 1;
      const expected = `a time apart from that of #${number}`;
      return [{ path: later.path, expected, got: `both on ${momentOfWeek(minute)}` }];
    }
    return [];
  });
}

/** First minute of the week that both spells cover in some month, null for none. */
function common(a: UncheckedSpell, b: UncheckedSpell): number | null {
  for (const x of inWeek(a)) {
    for (const y of inWeek(b)) {
      for (const shift of [-MINUTES_PER_WEEK, 0, MINUTES_PER_WEEK]) {
        const from = Math.max(x.from, y.from + shift);
        if (from >= Math.min(x.to, y.to + shift)) continue;
        // The night of a month's last day ends in the next month.
        const [first, then] = x.day <= y.day + shift ? [a, b] : [b, a];
        const reach = x.day === y.day + shift ? 0 : nextMonths(first.months);
        if (((first.months | reach) & then.months) !== 0)
          return ((from % MINUTES_PER_WEEK) + MINUTES_PER_WEEK) % MINUTES_PER_WEEK;
      }
    }
  }
  return null;
}

const inWeek = ({ days, from, to }: UncheckedSpell) =>
  DAYS.flatMap((_, d) =>
    (days >> d) & 1
      ? [
          {
            day: d * MINUTES_PER_DAY,
            from: d * MINUTES_PER_DAY + from,
            to: d * MINUTES_PER_DAY + to,
          },
        ]
      : [],
  );

const SCHEDULES = [
  ...['heating', 'heating/rooms/*', 'cooling', 'cooling/rooms/*'].flatMap((section) => [
    `${section}/setpoint`,
    `${section}/hours`,
  ]),
  ...FUELS.map((fuel) => `money/${fuel}/night hours`),
  'home/doorways/#/open',
  'blinds/#/hours',
  'household/people/#/schedule',
  'rules/#/quiet hours',
  'devices/*/hours',
  'devices/*/burns',
];
