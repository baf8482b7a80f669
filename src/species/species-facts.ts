import type { Preset } from '../units/preset.ts';
import type { SensorErrors } from './sensor-errors.ts';
import type { HeldBy } from './supply-filter.ts';

/**
 * Everything the program knows of one kind of thing that air carries besides water. Keys of the
 * scenario, readings, bands, figures, tables and files follow from it.
 */
export interface SpeciesFacts<Name extends string = string> {
  /** Key in scenarios, weather files and traces, and the stem of `<name>_high` in the figures. */
  readonly name: Name;
  /** Short name that tables print, such as "PM2.5". */
  readonly symbol: string;
  /** Name as a description begins, such as "Fine particles". */
  readonly words: string;
  /** Name in the middle of a sentence, such as "particles". */
  readonly plainName: string;
  /** What people call it besides, in small letters. */
  readonly alsoCalled?: readonly string[];
  /** Of its concentration; see concentration-unit.ts. */
  readonly unit: string;
  /** An indicator tells that air is stale; a pollutant does harm itself. */
  readonly role: 'indicator' | 'pollutant';
  /** What air never falls below, anywhere; absent: it may hold none. [unit] */
  readonly leastInAir?: number;
  /** Outdoors where neither weather file nor scenario says. [unit] */
  readonly outdoors: Preset;
  /** Usual levels outdoors by month, January first, where they have a season. [unit] */
  readonly outdoorsByMonth?: readonly number[];
  /** Carried only where the scenario asks for it; absent: always. */
  readonly onRequest?: boolean;
  /** Given off by an open flame for each kWh of gas as bought. [mg, or L by volume] */
  readonly perGas?: number;
  /** Share that survives the way in through leaks [-]; absent: all of it does. */
  readonly penetration?: Preset;
  /** Share that survives the way in through open windows [-]; absent: all of it does. */
  readonly windowPenetration?: Preset;
  /** How fast surfaces take it out of the air [1/h]; absent: they take none. */
  readonly deposition?: Preset;
  /** Given off all the time by the materials of a room, a square metre of its floor; absent: nothing is known of any. [rate of the unit, such as µg/h] */
  readonly materials?: Preset;
  readonly band: SpeciesBand;
  readonly limits: SpeciesLimits;
  /** How a consumer sensor errs; bias, noise and step in the species' unit. */
  readonly sensor: SensorErrors;
  readonly sources: SpeciesSources;
  /** What a purifier does to it; absent: lets it pass. */
  readonly filter?: SpeciesFilter;
  /** What filters of supply air hold of it; absent: they let it pass. */
  readonly supplyFilter?: SpeciesSupplyFilter;
}

/** Up to which level a room's air counts as fine. */
interface SpeciesBand {
  /** [unit] */
  readonly high: number;
  /** Averaging time [h], 0 for none. */
  readonly hours: number;
  /** Who says so: a source, or "common practice". */
  readonly reason: string;
  /** Which hours above it a table of the whole home counts. */
  readonly counted: 'occupied' | 'any time';
}

/** Numbers beyond these are refused. [unit] */
interface SpeciesLimits {
  /** Most that a scenario may give as a level outdoors, and as an error of a sensor. */
  readonly level: number;
  /** Most that may be an edge of a band. */
  readonly band: number;
  /** Least and most that a column of a weather file may hold, and what else a number may be. */
  readonly weather: readonly [number, number];
  readonly weatherHint: string;
}

/** What gives it off, each with the scenario's key for how much; absent where nothing of the kind does. */
export interface SpeciesSources {
  /** An activity, each time. [mg, or L by volume] */
  readonly activity?: SourceField & {
    /** Usual amounts by kind of activity; others give none. */
    readonly usual: Readonly<Record<string, Preset>>;
  };
  /** A grown body. [µg/h, or m3/h by volume] */
  readonly body?: SourceField & {
    readonly awake: Preset;
    readonly asleep: Preset;
    /** It comes with breath, so that age and activity count; else bodies give it by their skin. */
    readonly breathed?: boolean;
  };
  /** Fresh wall paint, all that it will ever give off [g]; usual amounts a square metre [g/m2]. */
  readonly paint?: SourceField & { readonly usual: Preset };
  /** A wood stove, each time its door is opened for logs. [mg, or L by volume] */
  readonly refuelling?: SourceField & { readonly usual: Preset };
}

/** A field of the scenario for what a source gives. */
export interface SourceField {
  readonly key: string;
  readonly description: string;
  readonly max: number;
}

/** The share of the level outdoors that a filter of supply air holds back, with the scenario's key for it. */
export interface SpeciesSupplyFilter {
  readonly key: string;
  readonly description: string;
  readonly held: HeldBy;
}

/** The species for which a purifier's clean-air delivery rate is stated, or a share of that rate. */
export type SpeciesFilter =
  | { readonly by: 'rate' }
  | {
      readonly by: 'share';
      readonly key: string;
      readonly description: string;
      readonly usual: Preset;
    };
