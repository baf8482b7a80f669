import { FROST_GUARD } from '../presets/heating.ts';
import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import type { Path } from '../yaml/place-of.ts';
import { items, mapping, readTolerantly, type UncheckedMapping } from './tolerant-readers.ts';

/** Settings that contradict one another. */
export function setpointFindings(raw: UncheckedMapping): Finding[] {
  const heating = mapping(raw['heating']);
  const frost = frostGuardOf(raw);
  const findings = programmeFindings(heating, heating, ['heating'], frost);
  for (const [name, room] of Object.entries(mapping(heating['rooms']))) {
    const own = isMapping(room) ? room : { setpoint: room };
    const path = ['heating', 'rooms', name];
    // A plain valve beside the thermostat of another room knows no setback.
    const isPlain = typeof heating['thermostat'] === 'string' && heating['thermostat'] !== name;
    const all = { ...heating, ...own, ...(isPlain && { setback: undefined }) };
    const found = programmeFindings(all, own, path, frost);
    findings.push(...(isMapping(room) ? found : found.map((finding) => ({ ...finding, path }))));
  }
  findings.push(...holidayFindings(raw, heating, frost));
  return [...findings, ...coolingFindings(mapping(raw['cooling']))];
}

/** As it is given, else as it is usual. [°C] */
export function frostGuardOf(raw: UncheckedMapping): number {
  const given = readTolerantly(mapping(raw['heating'])['frost guard'], '°C');
  return Number.isNaN(given) ? FROST_GUARD.value : given;
}

/** A holiday setback under the frost guard, or without any day to hold on. */
function holidayFindings(
  raw: UncheckedMapping,
  heating: UncheckedMapping,
  frost: number,
): Finding[] {
  const given = heating['holiday setback'];
  if (given === undefined) return [];
  const path = ['heating', 'holiday setback'];
  const { setpoint, dates } = mapping(given);
  const at = isMapping(given) ? [...path, 'setpoint'] : path;
  const findings: Finding[] = [];
  if (readTolerantly(isMapping(given) ? setpoint : given, '°C') < frost) {
    findings.push({ path: at, expected: `a setback of the frost guard (${frost} °C) or more` });
  }
  const { holidays, people } = mapping(raw['household']);
  const away = [holidays, ...items(people).map((person) => mapping(person)['holidays'])];
  if (!away.some((list) => items(list).length > 0) && items(dates).length === 0) {
    const got = 'a setback that never holds';
    findings.push({ path, expected: 'dates, or holidays of the household', got });
  }
  return findings;
}

function coolingFindings(cooling: UncheckedMapping): Finding[] {
  const rooms = Object.entries(mapping(cooling['rooms'])).map(([name, own]) => ({
    own: mapping(own),
    path: ['cooling', 'rooms', name],
  }));
  return [{ own: cooling, path: ['cooling'] }, ...rooms].flatMap(({ own, path }) =>
    twoClocks({ ...cooling, ...own }, own, path),
  );
}

/** Contradictions of one programme; only fields in `own` are spoken of. */
function programmeFindings(
  all: UncheckedMapping,
  own: UncheckedMapping,
  path: Path,
  frost: number,
): Finding[] {
  const findings: Finding[] = [];
  const say = (steps: Path, expected: string) =>
    findings.push({ path: [...path, ...steps], expected });
  const setpoints = settings(all['setpoint']);
  const lowest = Math.min(...setpoints.map(({ value }) => value));
  const setback = readTolerantly(all['setback'], '°C');
  if ('setpoint' in own) {
    for (const { steps, value } of settings(own['setpoint'])) {
      if (value < frost) say(steps, `a setpoint of the frost guard (${frost} °C) or more`);
      if (value < setback && !('setback' in own)) {
        say(steps, `a setpoint of the setback (${setback} °C) or more`);
      }
    }
  }
  if ('setback' in own) {
    if (setback > lowest) say(['setback'], `a setback of the setpoint (${lowest} °C) or less`);
    if (setback < frost) say(['setback'], `a setback of the frost guard (${frost} °C) or more`);
  }
  const night = readTolerantly(mapping(own['night'])['setpoint'], '°C');
  if (night > lowest) say(['night', 'setpoint'], `the day's setpoint (${lowest} °C) or less`);
  if (night < frost) say(['night', 'setpoint'], `the frost guard (${frost} °C) or more`);
  return [...findings, ...twoClocks(all, own, path)];
}

/** Hours beside a setpoint that has its own. */
function twoClocks(all: UncheckedMapping, own: UncheckedMapping, path: Path): Finding[] {
  if (!Array.isArray(all['setpoint']) || !('hours' in all)) return [];
  if (!('hours' in own || 'setpoint' in own)) return [];
  const key = 'hours' in own ? 'hours' : 'setpoint';
  return [{ path: [...path, key], expected: 'hours, or a setpoint by the clock, not both' }];
}

function settings(value: unknown): { steps: Path; value: number }[] {
  if (!Array.isArray(value)) return [{ steps: ['setpoint'], value: readTolerantly(value, '°C') }];
  return items(value).map((item, k) => ({
    steps: ['setpoint', k, 'setpoint'],
    value: readTolerantly(mapping(item)['setpoint'], '°C'),
  }));
}
