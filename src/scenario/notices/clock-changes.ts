import type { Notice } from '../../home/notices.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import { pathWords } from '../yaml/path-words.ts';

/**
 * A remark on clock times that fall into an hour which daylight saving skips or repeats.
 *
 * They come back every day or week, so they are not wrong, but on two days of the year they mean
 * something else than they say.
 *
 * @param raw  the merged scenario as it was written
 */
export function clockChangeRemarks(raw: unknown, clock: LocalClock): Notice[] {
  const { skipped, repeated } = changedMinutes(clock);
  const times = timesIn(raw);
  const within = (spans: readonly Span[]) =>
    times
      .filter(({ minute }) => spans.some(({ from, to }) => minute >= from && minute < to))
      .map(({ words }) => words);
  const [lost, twice] = [within(skipped), within(repeated)];
  if (lost.length + twice.length === 0) return [];
  const parts = [
    lost.length === 0
      ? ''
      : `On the day the clocks go forward there is no such time, and the moment they jump stands for it: ${listed(lost)}.`,
    twice.length === 0
      ? ''
      : `On the day they go back it comes twice, and the first of the two is meant: ${listed(twice)}.`,
  ];
  return [{ id: 'clock-change', text: parts.filter((part) => part !== '').join(' ') }];
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Minutes of the day that the clock ever skips or repeats, in years that people plan for. */
function changedMinutes({ from, offset }: LocalClock): { skipped: Span[]; repeated: Span[] } {
  const skipped: Span[] = [];
  const repeated: Span[] = [];
  for (let k = 1; k < from.length; k++) {
    if (from[k]! < FIRST || from[k]! > LAST) continue;
    const [before, after] = [from[k]! + offset[k - 1]!, from[k]! + offset[k]!];
    const minute = (seconds: number) =>
      (((seconds / 60) % MINUTES_PER_DAY) + MINUTES_PER_DAY) % MINUTES_PER_DAY;
    const [low, high] = [Math.min(before, after), Math.max(before, after)];
    const start = minute(low);
    const span = { from: start, to: start + (high - low) / 60 };
    (after > before ? skipped : repeated).push(span);
  }
  return { skipped, repeated };
}

/** Every time of day that was written, with where it stands. */
function timesIn(raw: unknown): { minute: number; words: string }[] {
  const found: { minute: number; words: string }[] = [];
  const path: (string | number)[] = [];
  const look = (value: unknown): void => {
    if (typeof value === 'string') {
      if (!CLOCKS.test(value)) return;
      for (const text of value.split(/\s*[-–]\s*/)) {
        const [hours, minutes] = text.split(':').map(Number) as [number, number];
        found.push({ minute: hours * 60 + minutes, words: `${text.trim()} (${pathWords(path)})` });
      }
      return;
    }
    if (typeof value !== 'object' || value === null) return;
    const within = Array.isArray(value) ? value.entries() : Object.entries(value);
    for (const [step, inner] of within) {
      path.push(step);
      look(inner);
      path.pop();
    }
  };
  look(raw);
  return found;
}

const listed = (words: readonly string[]): string =>
  words.length <= MOST
    ? words.join(', ')
    : `${words.slice(0, MOST).join(', ')} and ${words.length - MOST} more`;

const CLOCKS = /^\s*\d{1,2}:[0-5]\d(\s*[-–]\s*\d{1,2}:[0-5]\d)?\s*$/;
const MOST = 5;
const FIRST = 1_262_304_000; // 2010-01-01
const LAST = 2_208_988_800; // 2040-01-01
