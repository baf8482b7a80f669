import type { Preset } from '../../../units/preset.ts';
import type { CarriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

/** What a device is filled in with. */
export interface DeviceContext {
  readonly plan: RoomPlan;
  readonly plans: readonly RoomPlan[];
  readonly species: readonly CarriedSpecies[];
  readonly number: NumberOf;
}

/** A field's number as given, else the preset's, which is then listed. */
export type NumberOf = (key: string, given: number | undefined, preset: Preset) => number;

/** Filler for the fields of one device: given values, else presets, which are then listed. */
export const filling =
  (name: string, defaults: Defaults): NumberOf =>
  (key, given, preset) =>
    defaults.number(['devices', name, key], given, preset);
