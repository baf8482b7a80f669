import { expect, test } from 'vitest';
import { otherClock } from '../../../src/fit/judge/other-clock.ts';
import { aStage, type Beside } from './a-stage.ts';

const HOURS = 24 * 21;
const DIVISION = { start: 0, hours: HOURS, release: 24, withheld: HOURS };
/** A room that is warmer from 7 to 22 h, and an error that follows nothing. */
const day = (k: number) => (k % 24 >= 7 && k % 24 < 22 ? 20 : 17);
const noise = (k: number) => 0.3 * Math.sin(k * k);

const den: Beside = {
  ...{ room: 'den', quantity: 'temperature', fitted: day },
  logged: (k) => day(k) + noise(k),
};
const said = (...all: Beside[]) => otherClock([aStage(all, HOURS)], DIVISION);
/** Readings of the same that are labelled some hours early. */
const early = (by: number): Beside => ({ ...den, logged: (k) => day(k + by) + noise(k) });

test('readings that fit best as they are have another clock in no words', () => {
  expect(said(den)).toEqual([]);
});

test('readings that all fit better at another hour do, with which way and how far', () => {
  expect(said(early(1))).toHaveLength(1);
  expect(said(early(1), early(1))[0]).toMatch(
    /^All readings would fit clearly better if they were taken an hour later than they say\..*--zone.* everything an hour earlier /,
  );
  expect(said(early(-2))[0]).toMatch(/taken 2 hours earlier than they say\..* 2 hours later /);
});

test('one room at other hours is no clock, and a daily meter says nothing of it', () => {
  expect(said(early(1), den)).toEqual([]);
  const meter: Beside = { ...den, quantity: 'heating', fitted: () => 100, daily: true };
  expect(said(early(1), meter)).toHaveLength(1);
  expect(said(meter)).toEqual([]);
});

/** A room whose readings are an hour early, and which other things move by so much besides. [K] */
const unsteady = (most: number): Beside => ({
  ...den,
  logged: (k) => day(k + 1) + (most / 0.3) * noise(k),
});

test('another clock is told from a fifth less error on, not counting what a sensor reads too much', () => {
  // Errors fall by about 25 %, then by about 16 %.
  expect(said(unsteady(1.4))).toHaveLength(1);
  expect(said(unsteady(1.8))).toEqual([]);
  expect(said({ ...den, logged: (k) => early(1).logged(k) + 5 })).toHaveLength(1);
});

test('the middle of several rooms decides, but none may fit as well at its own hours', () => {
  expect(said(unsteady(1.8), early(1), early(1))).toHaveLength(1);
  const alike: Beside = { ...den, fitted: () => 20, logged: (k) => 20 + noise(k) };
  expect(said(alike, early(1), early(1))).toEqual([]);
});

test('four channels that agree tell it by half as much, where all are worse the other way', () => {
  const four = Array.from({ length: 4 }, () => unsteady(1.8)); // 16 % less each
  expect(said(...four)[0]).toMatch(/taken an hour later /);
  expect(said(...four.slice(1))).toEqual([]);
  const flat: Beside = { ...den, fitted: () => 20, logged: (k) => 20 + noise(k) };
  expect(said(...four, flat)).toEqual([]);
  // A room that hardly fits better at another hour, though it fits worse the other way.
  expect(said(...four, unsteady(8))).toEqual([]);
  // A peak at noon that was logged at 11 and at 13: some 15 % better an hour either way.
  const peak = (k: number, ...hours: number[]) => (hours.includes(k % 24) ? 23 : 20);
  const both: Beside = {
    ...{ ...den, fitted: (k) => peak(k, 12) },
    logged: (k) => peak(k, 11, 13) + 6 * noise(k),
  };
  expect(said(both, both, both, both)).toEqual([]);
});

test('hours before the fit counts, and those withheld, have no say in it', () => {
  const division = { ...DIVISION, release: 48, withheld: 24 * 14 };
  const odd: Beside = {
    ...den,
    logged: (k) => (k < 48 || k >= 24 * 14 ? 40 * noise(k) : early(1).logged(k)),
  };
  expect(otherClock([aStage([odd], HOURS)], division)).toHaveLength(1);
});
