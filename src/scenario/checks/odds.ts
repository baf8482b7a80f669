import type { Finding } from '../finding.ts';
import { zoneClock, zoneNames } from '../zone-clock.ts';
import { items, type Loose, loosely, mapping } from './leniently.ts';

/** Single values that are well formed and still impossible. */
export function oddFindings(raw: Loose): Finding[] {
  const findings: Finding[] = [];
  const zone = mapping(raw['site'])['timezone'];
  if (typeof zone === 'string' && zone !== '' && zoneClock(zone) === null) {
    const expected = 'a time zone by its IANA name, such as Europe/London';
    findings.push({ path: ['site', 'timezone'], expected, names: zoneNames() });
  }
  const step = loosely(raw['step'], 'min');
  if (step >= 1 && step <= 60 && !Number.isInteger(60 / step)) {
    findings.push({
      path: ['step'],
      expected: 'minutes that divide an hour: 1, 2, 3, 4, 5, 6, 10 ...',
    });
  }
  for (const end of ['from', 'to']) {
    const match = /^(\d\d)-(\d\d)$/.exec(String(mapping(raw['period'])[end] ?? ''));
    if (match === null) continue;
    const longest = LONGEST[Number(match[1]) - 1] ?? 31;
    if (Number(match[2]) <= longest) continue;
    findings.push({ path: ['period', end], expected: `a day up to ${match[1]}-${longest}` });
  }
  const points = items(mapping(raw['heating'])['cop']);
  if (Array.isArray(mapping(raw['heating'])['cop']) && points.length === 0) {
    findings.push({ path: ['heating', 'cop'], expected: 'at least one point' });
  }
  points.forEach((point, k) => {
    const here = loosely(mapping(point)['outdoor'], '°C');
    const before = loosely(mapping(points[k - 1])['outdoor'], '°C');
    if (here > before || Number.isNaN(here + before)) return;
    const expected = `an outdoor temperature above the one before (${before} °C)`;
    findings.push({ path: ['heating', 'cop', k, 'outdoor'], expected });
  });
  for (const path of BAND_PATHS(raw)) {
    for (const name of ['temperature', 'humidity', 'co2']) {
      const { low, high } = mapping(mapping(path.bands)[name]);
      const unit = name === 'temperature' ? '°C' : name === 'humidity' ? '%' : 'ppm';
      if (!(loosely(low, unit) > loosely(high, unit))) continue;
      findings.push({ path: [...path.at, name, 'low'], expected: `no more than high (${high})` });
    }
  }
  return findings;
}

const BAND_PATHS = (raw: Loose) => [
  { at: ['bands'], bands: raw['bands'] },
  ...Object.entries(mapping(mapping(raw['home'])['rooms'])).map(([name, room]) => ({
    at: ['home', 'rooms', name, 'bands'],
    bands: mapping(room)['bands'],
  })),
];

const LONGEST = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
