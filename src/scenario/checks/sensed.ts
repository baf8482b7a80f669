import { isMapping } from '../yaml/merge-patch.ts';
import { mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Whether a sensor of this kind is there; only "none" takes it away. */
export function hasSensor(raw: UncheckedMapping, room: string, kind: string): boolean {
  const sensors = mapping(raw['sensors']);
  const own = mapping(sensors['rooms'], room)[kind];
  return (own ?? (room === 'outdoors' ? undefined : sensors[kind])) !== 'none';
}

/** Sensors that a reading is made from. */
export function sensorsOf(condition: unknown): readonly string[] {
  if (!isMapping(condition)) return [];
  if ('presence' in condition) return ['presence'];
  const reading = condition['reading'];
  if (typeof reading !== 'string') return [];
  return DERIVED.has(reading) ? ['temperature', 'humidity'] : [reading];
}

const DERIVED: ReadonlySet<string> = new Set([
  'absolute humidity',
  'humidity above outdoors',
  'dew point',
]);
