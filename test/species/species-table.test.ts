import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { WHATS } from '../../src/scenario/choices.ts';
import { sourceAmount, sourcePerSecond } from '../../src/species/concentration-unit.ts';
import {
  byName,
  FILTER_RATED,
  MOST_HARMFUL_FIRST,
  speciesCalled,
  speciesKeys,
} from '../../src/species/species-lists.ts';
import { type KnownSpecies, SPECIES } from '../../src/species/species-table.ts';
import type { Preset } from '../../src/units/preset.ts';

describe('the table of species', () => {
  test('has five, two of them on request, from what tells of stale air to what harms most', () => {
    expect(SPECIES.map(({ name }) => name)).toEqual(['co2', 'tvoc', 'pollen', 'no2', 'pm25']);
    expect(MOST_HARMFUL_FIRST.map(({ symbol }) => symbol)).toEqual([
      ...['PM2.5', 'NO2', 'pollen', 'TVOC', 'CO2'],
    ]);
    const asked = SPECIES.filter(({ onRequest }) => onRequest === true);
    expect(asked.map(({ name }) => name)).toEqual(['pollen', 'no2']);
    expect(FILTER_RATED.name).toBe('pm25');
  });

  test.each(SPECIES)('$name: presets lie within their range and the limits', (facts) => {
    const { outdoors, penetration, deposition, band, limits, sensor } = facts;
    const all = [outdoors, penetration, deposition, ...Object.values(sensor)];
    for (const { low, value, high } of all.filter((each) => each !== undefined)) {
      expect(low).toBeLessThanOrEqual(value);
      expect(value).toBeLessThanOrEqual(high);
    }
    const [least, most] = limits.weather;
    expect(outdoors.low).toBeGreaterThanOrEqual(least);
    expect(outdoors.high).toBeLessThanOrEqual(Math.min(most, limits.level));
    expect(band.high).toBeLessThanOrEqual(limits.band);
  });

  test.each(SPECIES)('$name: usual amounts are of activities that the scenario knows', (facts) => {
    const kinds = Object.keys(facts.sources.activity?.usual ?? {});
    expect(kinds.filter((kind) => !(WHATS as readonly string[]).includes(kind))).toEqual([]);
  });

  test('each is known by what people call it otherwise', () => {
    expect(speciesCalled('Carbon dioxide')).toBe('co2');
    expect(speciesCalled('dust')).toBe('pm25');
    expect(speciesCalled('VOCs')).toBe('tvoc');
    expect(speciesCalled('draught')).toBeNull();
  });

  test('the keys of each', () => {
    expect(byName(SPECIES, (facts) => [...new Set(speciesKeys(facts))])).toEqual({
      co2: ['co2'],
      tvoc: ['tvoc', 'tvoc share'],
      pollen: ['pollen', 'pollen share', 'pollen held'],
      no2: ['no2'],
      pm25: ['pm25', 'particles', 'particles held'],
    });
  });
});

describe('sources', () => {
  test('1 mg is 1000 µg, and 1 L of pure gas is 1000 ppm m3', () => {
    expect(sourceAmount(1, 'µg/m3')).toBe(1000);
    expect(sourceAmount(1, 'ppm')).toBe(1000);
  });

  test('3600 µg an hour is 1 µg a second, and 0.0036 m3 an hour is 1 ppm m3 a second', () => {
    expect(sourcePerSecond(3600, 'µg/m3')).toBe(1);
    expect(sourcePerSecond(0.0036, 'ppm')).toBeCloseTo(1, 12); // rounding
  });
});

describe('docs', () => {
  test('docs/scenario.md prints the table', () => {
    const page = readFileSync('docs/scenario.md', 'utf8');
    for (const facts of SPECIES) expect(page).toContain(`\n${row(facts)}\n`);
  });

  test('docs/quantities.md names the key of each upper edge and each column of a weather file', () => {
    const page = readFileSync('docs/quantities.md', 'utf8');
    for (const { name } of SPECIES) expect(page).toContain(`\`${name}_high\``);
    const names = MOST_HARMFUL_FIRST.map(({ name }) => `\`${name}\``).join(', ');
    const units = MOST_HARMFUL_FIRST.map(({ unit }) => unit).join(', ');
    expect(page).toContain(`\n| ${names} | ${units} | mean of the step |\n`);
  });
});

/** A species as the page prints it. */
function row({ name, words, symbol, unit, band, ...facts }: KnownSpecies): string {
  const { outdoors, penetration, deposition, sensor } = facts;
  const mean = band.hours === 0 ? '' : `, mean of ${band.hours} h`;
  const cells = [
    ...[`\`${name}\``, `${words}${words === symbol ? '' : ` (${symbol})`}`, unit],
    ...[outdoors, penetration, deposition].map(range),
    `${band.high}${mean}`,
    ...[sensor.bias, sensor.noise].map(range),
  ];
  return `| ${cells.join(' | ')} |`;
}

const range = (preset: Preset | undefined): string =>
  preset === undefined ? '-' : `${preset.value} (${preset.low} to ${preset.high})`;
