import { readQuantity } from '../../units/quantity.ts';
import { mapping, readTolerantly, type UncheckedMapping } from '../checks/tolerant-readers.ts';
import { SETPOINT } from '../presets/heating.ts';
import { mergePatch } from '../yaml/merge-patch.ts';
import { valueAt } from '../yaml/path-words.ts';
import type { Edit } from './edit.ts';

/**
 * Sets every thermostat so many kelvin higher: setpoints, setbacks, on holidays too, and nights, of
 * the home and of rooms that have their own. Rooms that are off and the frost guard stay.
 *
 * @param raw     the scenario with its plan laid on, as plain values
 * @param kelvin  how much [K]; below 0 is cooler
 * @returns null where the home has nothing to heat with
 */
export function raiseSetpoints(raw: unknown, kelvin: number): Edit | null {
  const heating = mapping(raw, 'heating');
  if (heating['source'] === 'none') return null;
  const rooms = Object.entries(mapping(heating['rooms']))
    .filter(([, own]) => own !== 'off')
    .map(([name, own]) => [name, warmerRoomSetting(own, kelvin)] as const);
  return {
    heating: {
      ...warmerProgramme({ setpoint: SETPOINT.value, ...heating }, kelvin),
      ...('holiday setback' in heating && {
        'holiday setback': warmerHoliday(heating['holiday setback'], kelvin),
      }),
      ...(rooms.length > 0 && { rooms: Object.fromEntries(rooms) }),
    },
  };
}

/**
 * Sets the thermostat of one room so many kelvin higher; the room keeps the hours it has.
 *
 * @param raw     the scenario with its plan laid on, as plain values
 * @param kelvin  how much [K]; below 0 is cooler
 * @returns null where the room is not heated or is always off
 */
export function raiseRoomSetpoint(raw: unknown, room: string, kelvin: number): Edit | null {
  const heating = mapping(raw, 'heating');
  const own = mapping(heating['rooms'])[room];
  const emitter = valueAt(raw, ['home', 'rooms', room, 'emitter']);
  if (heating['source'] === 'none' || own === 'off' || emitter === 'none') return null;
  const { setpoint = SETPOINT.value, setback, night } = heating;
  const common = {
    setpoint,
    ...(setback !== undefined && { setback }),
    ...(night !== undefined && { night }),
  };
  const programme = { ...common, ...asProgramme(own) };
  return { heating: { rooms: { [room]: warmerProgramme(programme, kelvin) } } };
}

/** Whether one scenario says of heating just what another does once it is edited. */
export function heatsAlike(one: unknown, other: unknown, edit: Edit): boolean {
  const heating = (scenario: unknown): string => inKeyOrder(mapping(scenario)['heating'] ?? {});
  return heating(one) === heating(mergePatch(other, edit));
}

/** Plain values as text that does not depend on the order of keys. */
function inKeyOrder(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

/** What the home's thermostats are set to, where that is one number all day. [°C] */
export function wholeHomeSetpoint(raw: unknown): number | null {
  const { setpoint = SETPOINT.value } = mapping(raw, 'heating');
  const written = readTolerantly(setpoint, '°C');
  return Number.isNaN(written) ? null : written;
}

const asProgramme = (own: unknown): UncheckedMapping =>
  typeof own === 'number' || typeof own === 'string' ? { setpoint: own } : mapping(own);

function warmerRoomSetting(own: unknown, kelvin: number): unknown {
  if (typeof own === 'number' || typeof own === 'string') return warmer(own, kelvin);
  return warmerProgramme(mapping(own), kelvin);
}

/** Only what a programme says of temperatures, each raised. */
function warmerProgramme(
  { setpoint, setback, night }: UncheckedMapping,
  kelvin: number,
): UncheckedMapping {
  return {
    ...(setpoint !== undefined && { setpoint: warmerSetpoint(setpoint, kelvin) }),
    ...(setback !== undefined && { setback: warmer(setback, kelvin) }),
    ...(night !== undefined && { night: withWarmer(night, kelvin) }),
  };
}

const warmerHoliday = (given: unknown, kelvin: number): unknown =>
  typeof given === 'number' || typeof given === 'string'
    ? warmer(given, kelvin)
    : withWarmer(given, kelvin);

const warmerSetpoint = (setpoint: unknown, kelvin: number): unknown =>
  Array.isArray(setpoint)
    ? setpoint.map((spell) => withWarmer(spell, kelvin))
    : warmer(setpoint, kelvin);

const withWarmer = (spell: unknown, kelvin: number): UncheckedMapping => ({
  ...mapping(spell),
  setpoint: warmer(mapping(spell)['setpoint'], kelvin),
});

/** A temperature as written, raised; what is none stays as it is. [°C] */
function warmer(written: unknown, kelvin: number): unknown {
  if (typeof written !== 'number' && typeof written !== 'string') return written;
  const read = readQuantity(written, '°C');
  return 'value' in read ? Number((read.value + kelvin).toFixed(6)) : written;
}
