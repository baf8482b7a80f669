import { criticalHumidity } from './critical-humidity.ts';
import type { MouldKind } from './mould-kind.ts';

/**
 * Mould index after a step: 0 none, 1 under the microscope, 3 seen by eye (10 %), 6 dense cover.
 *
 * Keep two numbers per surface, the index and the dry hours, and pass both through each step:
 * `index = mouldStep(index, dry, ...)`, then `dry = dryHoursAfter(dry, ...)`. For the time loop: no
 * allocation, nothing checked. Steps of an hour are the model's own; shorter ones differ little.
 *
 * Growth needs 0 to 50 °C and at least the critical humidity; anything else counts as dry, frost
 * included. A dry spell takes its toll in the first 6 hours, rests to the 24th, then goes on slowly.
 *
 * @param index  before the step, 0 to 6
 * @param dryHours  how long it had been dry before the step [h]
 * @param temperature  of the surface [°C]
 * @param humidity  relative, at the surface; beyond 100 counts as 100 [%]
 * @param kind  of material, see `mould-kind`
 * @param hours  length of the step [h]
 * Source: Hukka and Viitanen 1999, growth and decline; Ojanen et al. 2010, classes (from memory).
 */
export function mouldStep(
  index: number,
  dryHours: number,
  temperature: number,
  humidity: number,
  kind: MouldKind,
  hours: number,
): number {
  if (!mouldGrows(temperature, humidity, kind)) {
    if (index === 0) return 0;
    return Math.max(0, index - kind.decline * dieBack(dryHours, dryHours + hours));
  }
  return index + (mouldGrowth(index, temperature, humidity, kind) * hours) / 24;
}

/** Hours without growth after a step: 0 as soon as it grows. [h] */
export function dryHoursAfter(
  dryHours: number,
  temperature: number,
  humidity: number,
  kind: MouldKind,
  hours: number,
): number {
  return mouldGrows(temperature, humidity, kind) ? 0 : dryHours + hours;
}

/** Whether a surface allows growth. */
function mouldGrows(temperature: number, humidity: number, kind: MouldKind): boolean {
  if (!(humidity >= kind.lowest && temperature > 0 && temperature < 50)) return false;
  return humidity >= criticalHumidity(temperature, kind.lowest);
}

/** Rise of the index where mould grows. [1/d] */
export function mouldGrowth(
  index: number,
  temperature: number,
  humidity: number,
  kind: MouldKind,
): number {
  const most = mouldIndexLimit(temperature, humidity, kind);
  if (index >= most) return 0;
  const slowing = 1 - Math.exp(2.3 * (index - most));
  const weeks = weeksToFirstGrowth(temperature, humidity, kind);
  if (index < 1) return (kind.early * slowing) / (7 * weeks);
  if (kind.late !== null) return (kind.late * slowing) / (7 * weeks);
  const t = Math.log(temperature);
  const rh = Math.log(Math.min(100, humidity));
  const weeksToSee = Math.exp(-0.74 * t - 12.72 * rh + 0.06 * kind.species + 61.5);
  return (2 / (weeksToSee / weeks - 1)) * (slowing / (7 * weeks));
}

/** The index that growth tends to at a temperature [°C] and humidity [%]. */
export function mouldIndexLimit(temperature: number, humidity: number, kind: MouldKind): number {
  const critical = criticalHumidity(temperature, kind.lowest);
  const r = (critical - Math.min(100, humidity)) / (critical - 100);
  return kind.a + (kind.b - kind.c * r) * r;
}

/** Weeks until the first growth under the microscope on wood: the index goes from 0 to 1. */
export function weeksToFirstGrowth(temperature: number, humidity: number, kind: MouldKind): number {
  const t = Math.log(temperature);
  const rh = Math.log(Math.min(100, humidity));
  return Math.exp(-0.68 * t - 13.9 * rh + 0.14 * kind.species - 0.33 * kind.surface + 66.02);
}

/** Fall of pine's index while dry from one hour to another of a dry spell. */
function dieBack(from: number, to: number): number {
  const fast = Math.max(0, Math.min(to, 6) - from);
  const slow = Math.max(0, to - Math.max(from, 24));
  return (0.032 * fast + 0.016 * slow) / 24;
}
