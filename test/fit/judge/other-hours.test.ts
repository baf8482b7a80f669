import { expect, test } from 'vitest';
import { otherHours } from '../../../src/fit/judge/other-hours.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { aStage, type Beside } from './a-stage.ts';

const HOURS = 24 * 21;
const DIVISION = { start: 0, hours: HOURS, release: 24, withheld: HOURS };
/** Warmer by so much between two hours of the day. */
const between = (from: number, to: number, by: number) => (k: number) =>
  17 + (k % 24 >= from && k % 24 < to ? by : 0);

const den = (logged: Beside['logged'], fitted = between(17, 22, 3)): Beside => ({
  ...{ room: 'den', quantity: 'temperature', logged, fitted },
});
const said = (...all: Beside[]) => otherHours('Heating', [aStage(all, HOURS)], DIVISION, UTC_CLOCK);

test('a room that warms and cools at the hours of the fitted home needs no words, however much it does', () => {
  expect(said(den(between(17, 22, 3)))).toEqual([]);
  expect(said(den(between(17, 22, 1)))).toEqual([]);
});

test('hours of heating that are others are named, those of the fitted home beside them', () => {
  const [words] = said(den(between(16, 23, 3)), { ...den(between(16, 23, 3)), room: 'bed' });
  expect(words).toMatch(
    /^Heating seems to come on or go off, or windows to be opened, at other hours than the scenario says: den and bed \(warming from about 16 h, as fitted 17 h; cooling from about 23 h, as fitted 22 h\)\. /,
  );
  expect(said(den(between(19, 22, 3)))[0]).toMatch(/\(warming from about 19 h, as fitted 17 h\)/);
});

test('a meter of heat that is read by the hour tells them too, one that is read by the day does not', () => {
  const power = (from: number) => (k: number) => 1000 * between(from, 22, 1)(k);
  const meter: Beside = { ...den(power(16), power(17)), quantity: 'heating', room: 'the home' };
  expect(said(meter)[0]).toContain('the home (more heat from about 16 h, as fitted 17 h)');
  expect(said({ ...meter, daily: true })).toEqual([]);
});

test('a room that is aired or sunlit besides is not heated at other hours', () => {
  const aired = (k: number) => between(17, 22, 3)(k) - (k % 24 === 8 ? 1.5 : 0);
  expect(said(den(aired))).toEqual([]);
  expect(said(den(between(17, 22, 3), () => 17))).toEqual([]);
  // aired at 17 h, so that it is warm an hour later than the fitted home, once the window is shut
  const late = (k: number) => between(17, 22, 3)(k) - (k % 24 === 17 ? 4.5 : 0);
  expect(said(den(late))).toEqual([]);
});

test('differences count from 0.3 K an hour on, and of a meter from 100 W', () => {
  const later = (by: number) => den(between(16, 22, by), between(17, 22, by));
  expect(said(later(0.4))[0]).toContain('warming from about 16 h, as fitted 17 h');
  expect(said(later(0.25))).toEqual([]);
  const meter = (watts: number): Beside => ({
    ...later(watts),
    ...{ quantity: 'heating', room: 'the home' },
  });
  expect(said(meter(150))).toHaveLength(1);
  expect(said(meter(80))).toEqual([]);
});

test('of a room that warms sharply only what comes near that counts: a third of it', () => {
  const also = (from: number, by: number) => (k: number) =>
    between(6, 9, 3)(k) + between(from, 22, by)(k);
  expect(said(den(also(16, 1.2), also(17, 1.2)))[0]).toContain('from about 16 h, as fitted 17 h');
  expect(said(den(also(16, 0.8), also(17, 0.8)))).toEqual([]);
});

test('a rise is no other hour of one that is more than six hours away', () => {
  const warm = (from: number) => between(from, 22, 3);
  expect(said(den(warm(11), warm(17)))[0]).toContain('from about 11 h, as fitted 17 h');
  expect(said(den(warm(10), warm(17)))).toEqual([]);
  // across midnight as well
  const night = (from: number) => between(from, 28, 3);
  expect(said(den(night(2), night(22)))[0]).toContain('from about 2 h, as fitted 22 h');
});

test('a room is warm again within two hours of being aired, and no later', () => {
  /** Aired from an hour on, and shut so many hours later. */
  const shut = (after: number) => (k: number) =>
    between(17, 22, 3)(k) - between(17, 17 + after, 4.5)(k) + 17;
  expect(said(den(shut(1)))).toEqual([]);
  expect(said(den(shut(2)))).toEqual([]);
  expect(said(den(shut(3)))[0]).toContain('warming from about 20 h, as fitted 17 h');
  // Where it grows warmer more slowly than the fitted home, nothing was opened.
  const slow = (k: number) => between(17, 22, 1)(k) + between(18, 22, 2)(k) - 17;
  expect(said(den(slow))[0]).toContain('warming from about 18 h, as fitted 17 h');
});

test('hours before the fit counts, and those withheld, have no say in it', () => {
  const division = { ...DIVISION, release: 48, withheld: 24 * 14 };
  const isOutside = (k: number) => k < 48 || k >= 24 * 14;
  const odd = (k: number) => between(isOutside(k) ? 14 : 17, 22, 9)(k);
  const room = den(odd, between(17, 22, 9));
  expect(otherHours('Heating', [aStage([room], HOURS)], division, UTC_CLOCK)).toEqual([]);
});
