import { mapping, readTolerantly } from '../checks/tolerant-readers.ts';
import type { Edit } from './edit.ts';

/**
 * Another setting for the night; its hours stay where the scenario gives them.
 *
 * @param raw  a scenario as plain values
 * @param to   [°C]
 */
export function nightSetpoint(raw: unknown, to: number): Edit {
  const { night } = mapping(raw, 'heating');
  return { heating: { night: { ...NIGHT, ...mapping(night), setpoint: to } } };
}

/** What the night is set to, or what rooms fall to besides their hours; null for neither. [°C] */
export function nightOf(raw: unknown): number | null {
  const { night, setback } = mapping(raw, 'heating');
  const written = mapping(night)['setpoint'] ?? setback;
  const value = written === undefined ? Number.NaN : readTolerantly(written, '°C');
  return Number.isNaN(value) ? null : value;
}

/**
 * A thermostat in every room that heats only while somebody is seen there, at any hour where the
 * setpoint does not go by the clock.
 *
 * @param raw  a scenario as plain values
 */
export function heatByPresence(raw: unknown): Edit {
  const { setpoint } = mapping(raw, 'heating');
  const hours = Array.isArray(setpoint) ? {} : { hours: 'always' };
  return { heating: { thermostat: null, ...hours, gate: 'when present' } };
}

/** Whether heating heeds presence already. @param raw a scenario as plain values */
export const heedsPresence = (raw: unknown): boolean =>
  mapping(raw, 'heating')['gate'] !== undefined;

const NIGHT = { from: '22:30', to: '06:00' };
