import { byName } from '../../species/species-lists.ts';
import { SPECIES } from '../../species/species-table.ts';
import { LONGEST } from '../model/month-day.ts';
import type { Finding } from '../unplaced-problem.ts';
import { zoneClock, zoneNames } from '../zone-clock.ts';
import { curveFindings } from './curves.ts';
import {
  everyAt,
  mapping,
  readTolerantly,
  textOf,
  type UncheckedMapping,
} from './tolerant-readers.ts';

/** Single values that are well formed and still impossible. */
export function impossibleValueFindings(raw: UncheckedMapping): Finding[] {
  const findings: Finding[] = [];
  const zone = mapping(raw['site'])['timezone'];
  if (typeof zone === 'string' && zone !== '' && zoneClock(zone) === null) {
    const expected = 'a time zone by its IANA name, such as Europe/London';
    findings.push({ path: ['site', 'timezone'], expected, names: zoneNames() });
  }
  const step = readTolerantly(raw['step'], 'min');
  if (step >= 1 && step <= 60 && !Number.isInteger(60 / step)) {
    findings.push({
      path: ['step'],
      expected: 'minutes that divide an hour: 1, 2, 3, 4, 5, 6, 10 ...',
    });
  }
  for (const end of ['from', 'to']) {
    const match = /^(\d\d)-(\d\d)$/.exec(textOf(mapping(raw['period'])[end]));
    if (match === null) continue;
    const longest = LONGEST[Number(match[1]) - 1] ?? 31;
    if (Number(match[2]) <= longest) continue;
    findings.push({ path: ['period', end], expected: `a day up to ${match[1]}-${longest}` });
  }
  findings.push(...curveFindings(raw));
  for (const { path, value } of everyAt(raw, ...BANDS)) {
    const name = String(path.at(-1));
    const { low, high } = mapping(value);
    if (!(edgeOf(low, name) > edgeOf(high, name))) continue;
    findings.push({ path: [...path, 'low'], expected: `no more than high (${high})` });
  }
  return findings;
}

/** An edge of a band; that of a species which the scenario names stands in the species' own unit. */
function edgeOf(written: unknown, name: string): number {
  if (Object.hasOwn(BAND_UNITS, name)) return readTolerantly(written, BAND_UNITS[name]!);
  return Number.parseFloat(textOf(written));
}

const BAND_UNITS: Readonly<Record<string, string>> = {
  temperature: '°C',
  humidity: '%',
  ...byName(SPECIES, ({ unit }) => unit),
};

const BANDS = ['bands/*', 'home/rooms/*/bands/*'];
