import { addAiring } from '../../scenario/edits/add-airing.ts';
import { addDehumidifier } from '../../scenario/edits/add-device.ts';
import { type Edit, isLegalEdit } from '../../scenario/edits/edit.ts';
import { raiseSetpoints, wholeHomeSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import { scaleElectricityPrice } from '../../scenario/edits/scale-electricity-price.ts';
import { hasDevice } from '../../scenario/edits/scenario-facts.ts';
import {
  heatByPresence,
  heedsPresence,
  nightOf,
  nightSetpoint,
} from '../../scenario/edits/trial-edits.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { readSettings } from '../../scenario/yaml/settings.ts';
import { settingsFromPatch } from '../../scenario/yaml/settings-from-patch.ts';
import type { Trial, TrialOffer } from './knobs.ts';

/**
 * @param raw    the baseline as plain values
 * @param room   where a dehumidifier would stand; null for nowhere
 * @param price  mean price of electricity [currency/kWh]
 */
export function trialOffer(
  raw: unknown,
  prepared: PreparedPlan,
  room: string | null,
  price: number,
): TrialOffer {
  const legal = (edit: Edit | null): boolean => edit !== null && isLegalEdit(raw, edit);
  const heats = legal(raiseSetpoints(raw, 1));
  const night = heats ? (nightOf(raw) ?? wholeHomeSetpoint(raw)) : null;
  return {
    heats,
    setpoint: heats ? wholeHomeSetpoint(raw) : null,
    night: night !== null && legal(nightSetpoint(raw, night - 1)) ? night : null,
    presence: heats && !heedsPresence(raw) && legal(heatByPresence(raw)),
    airing: legal(addAiring(raw)),
    room: hasDevice(raw, 'dehumidifier') ? null : room,
    electricity: scaleElectricityPrice(raw, prepared, 1) === null ? null : price,
  };
}

/**
 * What a trial changes by the knobs that there are, as `/pointer=value` words to lay on the baseline, in the order in which they
 * are to be laid.
 *
 * @param raw  the baseline as plain values
 */
export function trialSettings(
  raw: unknown,
  prepared: PreparedPlan,
  offer: TrialOffer,
  trial: Trial,
): string[] {
  const { warmer, night, presence, airing, dehumidifier, electricity } = trial;
  const edits = [
    warmer === 0 || !offer.heats ? null : raiseSetpoints(raw, warmer),
    night === null || offer.night === null || night === offer.night
      ? null
      : nightSetpoint(raw, night),
    presence && offer.presence ? heatByPresence(raw) : null,
    airing === 0 || !offer.airing ? null : addAiring(raw, airing),
    dehumidifier === null || offer.room === null
      ? null
      : addDehumidifier(raw, NAME, offer.room, LABEL, dehumidifier),
  ].filter((edit) => edit !== null);
  const prices = electricity === 1 ? [] : (scaleElectricityPrice(raw, prepared, electricity) ?? []);
  return [...edits.flatMap((edit) => settingsFromPatch(edit)), ...prices];
}

/** The change of a plan that does what these settings do: a merge patch, whose nulls remove. */
export function trialChange(settings: readonly string[]): unknown {
  const change: Nested = {};
  for (const { steps, value } of readSettings(settings)) {
    const last = steps.at(-1)!;
    let at = change;
    for (const step of steps.slice(0, -1)) {
      at[step] ??= {};
      at = at[step] as Nested;
    }
    at[last] = value;
  }
  return change;
}

type Nested = Record<string, unknown>;

const NAME = 'tried dehumidifier';
const LABEL = 12; // L/day
