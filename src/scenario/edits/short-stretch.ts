import { mapping } from '../checks/tolerant-readers.ts';
import type { Edit } from './edit.ts';

/**
 * Three weeks of a season, at half-hourly steps, instead of the whole period: a fraction of its
 * work, to find out what moves figures most.
 *
 * @param raw     the scenario with its plan laid on, as plain values
 * @param season  when the weeks are, by the calendar north of the equator turned round south of it
 * @returns null where the scenario has a period of its own
 */
export function shortStretch(raw: unknown, season: 'cold' | 'hot'): Edit | null {
  if (mapping(raw)['period'] !== undefined) return null;
  const south = Number(mapping(mapping(raw)['site'])['latitude']) < 0;
  const january = (season === 'cold') !== south;
  return { period: january ? JANUARY : JULY, step: 30 };
}

const JANUARY = { from: '01-10', to: '01-30' };
const JULY = { from: '07-10', to: '07-30' };
