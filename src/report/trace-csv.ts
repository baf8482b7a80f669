import type { Observer, TraceView } from '../engine/record/trace.ts';
import { columnSuffix } from '../species/concentration-unit.ts';
import { isOfTable } from '../species/own-species.ts';
import { type LocalClock, offsetAt } from '../units/local-clock.ts';
import { SECONDS_PER_HOUR } from '../units/time-units.ts';
import { csvLine, typedField } from './csv-line.ts';

/** What the columns are called by, and how hours are told. */
export interface TraceCsvSetup {
  /** Names of the rooms in the order of the home. */
  readonly rooms: readonly string[];
  readonly species: readonly { readonly name: string; readonly unit: string }[];
  readonly sources: readonly string[];
  /** Sources, by name, that have a backup heater; absent means none. */
  readonly backedUp?: readonly string[];
  /** Names of the devices in the order of the home; absent means none. */
  readonly devices?: readonly string[];
  /** Names of the blinds in the order of the home; absent means none. */
  readonly blinds?: readonly string[];
  readonly clock: LocalClock;
}

/**
 * Keeps the hourly means of a run and writes them as CSV: one row an hour, one header line with
 * the unit in every name. The columns are described in docs/quantities.md.
 */
export function createTraceCsv(setup: TraceCsvSetup): { observe: Observer; text(): string } {
  const columns = columnsOf(setup);
  const lines = [csvLine(['time_utc', 'time_local', ...columns.map((c) => typedField(c.name))])];
  const sums = new Float64Array(columns.length);
  let filled = 0;

  function observe(trace: TraceView): void {
    const perHour = Math.round(SECONDS_PER_HOUR / trace.dt);
    for (let s = 0; s < trace.steps; s++) {
      columns.forEach((column, c) => {
        sums[c]! += column.at(trace, s);
      });
      filled++;
      if (filled < perHour) continue;
      const begin = trace.start + (s + 1) * trace.dt - SECONDS_PER_HOUR;
      const means = columns.map((column, c) => (sums[c]! / perHour).toFixed(column.decimals));
      lines.push(csvLine([isoUtc(begin), isoLocal(begin, setup.clock), ...means.map(unsigned)]));
      sums.fill(0);
      filled = 0;
    }
  }

  return { observe, text: () => `${lines.join('\n')}\n` };
}

interface Column {
  readonly name: string;
  readonly decimals: number;
  at(trace: TraceView, step: number): number;
}

function columnsOf(setup: TraceCsvSetup): Column[] {
  const { rooms, sources, species, backedUp = [], devices = [], blinds = [] } = setup;
  const home: Column[] = [
    column('outdoor_temperature_c', 2, (t, s) => t.home.outdoorTemperature[s]!),
    column('outdoor_vapour_pressure_pa', 1, (t, s) => t.home.outdoorVapourPressure[s]!),
    column('infiltration_m3_per_h', 2, (t, s) => t.home.infiltration[s]! * SECONDS_PER_HOUR),
    column('electricity_w', 1, ({ home: { electricity, devices: all, coolers } }, s) =>
      [...all, ...coolers].reduce((sum, each) => sum + each.electricity[s]!, electricity[s]!),
    ),
    column('gas_w', 1, (t, s) => t.home.gas[s]!),
    ...sources.flatMap((name, k) => [
      column(`${name}.fuel_w`, 1, (t, s) => t.home.sourceFuel[k]![s]!),
      ...(backedUp.includes(name)
        ? [column(`${name}.backup_w`, 1, (t, s) => t.home.sourceBackup[k]![s]!)]
        : []),
    ]),
    ...devices.flatMap(deviceColumns),
    ...blinds.map((name, b) => column(`${name}.closed_share`, 3, (t, s) => t.home.blinds[b]![s]!)),
    ...species.map((each, q) =>
      column(
        `outdoor_${ofSpecies(each)}`,
        decimalsOf(each),
        (t, s) => t.home.outdoorSpecies[q]![s]!,
      ),
    ),
  ];
  return [...home, ...rooms.flatMap((name, i) => roomColumns(name, i, species))];
}

type SpeciesOf = TraceCsvSetup['species'][number];

const ofSpecies = ({ name, unit }: SpeciesOf): string =>
  `${name.toLowerCase()}_${columnSuffix(unit)}`;

/** Nobody knows how small the levels of a species are that a scenario names. */
const decimalsOf = ({ name }: SpeciesOf): number => (isOfTable(name) ? 1 : 4);

function deviceColumns(name: string, d: number): Column[] {
  return [
    column(`${name}.electricity_w`, 1, (t, s) => t.home.devices[d]!.electricity[s]!),
    column(`${name}.fuel_w`, 1, (t, s) => t.home.devices[d]!.fuel[s]!),
    column(
      `${name}.water_g_per_h`,
      2,
      (t, s) => t.home.devices[d]!.water[s]! * 1000 * SECONDS_PER_HOUR,
    ),
    column(`${name}.heat_w`, 1, (t, s) => t.home.devices[d]!.heat[s]!),
    column(`${name}.running_share`, 3, (t, s) => t.home.devices[d]!.share[s]!),
  ];
}

function roomColumns(name: string, i: number, species: TraceCsvSetup['species']): Column[] {
  const of = (
    what: string,
    decimals: number,
    array: (r: TraceView['room']) => Float64Array,
    factor = 1,
  ) => column(`${name}.${what}`, decimals, (t, s) => array(t.room)[s * t.rooms + i]! * factor);
  return [
    of('air_temperature_c', 2, (r) => r.airTemperature),
    of('radiant_temperature_c', 2, (r) => r.radiantTemperature),
    of('operative_temperature_c', 2, (r) => r.operativeTemperature),
    of('relative_humidity_pct', 1, (r) => r.relativeHumidity),
    of('humidity_ratio_g_per_kg', 3, (r) => r.humidityRatio, 1000),
    of('vapour_pressure_pa', 1, (r) => r.vapourPressure),
    of('heating_w', 1, (r) => r.heating),
    of('cooling_w', 1, (r) => r.cooling),
    of('outdoor_air_l_per_s', 2, (r) => r.outdoorAir, 1000),
    of('occupants', 2, (r) => r.occupants),
    of('window_open_share', 3, (r) => r.windowOpen),
    of('condensation_g_per_h', 2, (r) => r.condensation, 1000 * SECONDS_PER_HOUR),
    of('wall_condensation_g_per_h', 2, (r) => r.wallCondensation, 1000 * SECONDS_PER_HOUR),
    ...species.map((each, k) => of(ofSpecies(each), decimalsOf(each), (r) => r.species[k]!)),
  ];
}

function column(name: string, decimals: number, at: Column['at']): Column {
  return { name, decimals, at };
}

/** 2023-01-31T23:00:00Z */
function isoUtc(utc: number): string {
  return new Date(utc * 1000).toISOString().replace('.000', '');
}

/** 2023-07-31T23:00:00+01:00 */
function isoLocal(utc: number, clock: LocalClock): string {
  const offset = offsetAt(clock, utc);
  const minutes = Math.round(Math.abs(offset) / 60);
  const two = (n: number) => String(n).padStart(2, '0');
  const zone = `${offset < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
  return isoUtc(utc + offset).replace('Z', zone);
}

/** A rounded-off "-0.00" without its sign. */
const unsigned = (text: string): string => (/^-0\.?0*$/.test(text) ? text.slice(1) : text);
