import { everyAt, mapping, textOf } from '../checks/tolerant-readers.ts';
import { firstUsedAs, type Use, useOfName } from '../presets/rooms.ts';
import { validate } from '../validate.ts';
import { pointerOf, pointerSteps } from '../yaml/json-pointer.ts';
import { valueAt } from '../yaml/path-words.ts';
import { readSettings, settingWords, withSetting } from '../yaml/settings.ts';

/** Whether a device of one of these kinds stands in the home. @param raw a scenario as plain values */
export const hasDevice = (raw: unknown, ...kinds: readonly string[]): boolean =>
  devicesOf(raw).some(({ kind }) => kinds.includes(textOf(kind)));

/** Whether a stove burns with air of its room, which an extract fan can turn round in its flue. */
export const hasOpenFluedStove = (raw: unknown): boolean =>
  devicesOf(raw).some(({ kind, air }) => kind === 'stove' && air !== 'outdoors');

/** The first room that is used so, such as "bathroom", as it says or else by its name; null for none. */
export function roomUsedAs(raw: unknown, use: Use): string | null {
  const used = everyAt(raw, 'home/rooms/*').map(({ path, value }) => {
    const name = String(path.at(-1));
    return { name, use: (mapping(value)['use'] ?? useOfName(name)) as Use };
  });
  return used[firstUsedAs(used, use)]?.name ?? null;
}

/**
 * The number that a scenario gives at a place, in the unit of that place; undefined where it gives
 * none, or where the scenario is wrong.
 *
 * @param pointer  RFC 6901
 */
export function givenNumber(raw: unknown, pointer: string): number | undefined {
  const given = givenValue(raw, pointer);
  return typeof given === 'number' ? given : undefined;
}

/** What a scenario gives at a place; undefined for nothing. @param pointer  RFC 6901 */
export const givenValue = (raw: unknown, pointer: string): unknown =>
  valueAt(validate(raw).data, pointerSteps(pointer) ?? []);

/** Whether a scenario would still be one with this number at a place. @param pointer  RFC 6901 */
export const couldStand = (raw: unknown, pointer: string, value: number): boolean =>
  validate(readSettings([settingWords(pointer, String(value))]).reduce<unknown>(withSetting, raw))
    .data !== null;

/** RFC 6901 pointers to every number that a scenario gives. @param raw as plain values */
export const numberPointers = (raw: unknown): string[] => pointersIn(validate(raw).data, []);

function pointersIn(value: unknown, steps: readonly string[]): string[] {
  if (typeof value === 'number') return [pointerOf(steps)];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => pointersIn(inner, [...steps, key]));
}

const devicesOf = (raw: unknown) => everyAt(raw, 'devices/*').map(({ value }) => mapping(value));
