import type { DayInputs } from '../../control/day-inputs.ts';
import type { i32 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { ROOM } from '../layout/state-layout.ts';
import { CARRIED_TERMS, ENERGY_TERMS, type EnergyTerm } from '../ledger/ledger.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';
import { bookAir } from './book-air.ts';

/**
 * Add the step's heat of every room to the ledger, apart from that through the far ends of walls (see
 * settleWalls).
 *
 * @param flows  BOOK records, this month's from record `row` on
 */
export function recordHeat(
  m: Model,
  day: DayInputs,
  at: i32,
  outdoor: number,
  flows: Float64Array,
  row: i32,
): void {
  const { rooms, roomCount, dt, airCp, evaporation, heat } = m;
  const { peopleHeat, applianceHeat, drying } = day;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = (row + i) * BOOK_STRIDE;
    const fall = (outdoor - rooms[r + MEAN]!) * dt;
    const phase = rooms[r + PHASE]! - evaporation * drying[at + i]!;
    flows[k + HEATING] = flows[k + HEATING]! + rooms[r + EMITTED]! * dt;
    flows[k + COOLING] = flows[k + COOLING]! - rooms[r + COOLED]! * dt;
    flows[k + PEOPLE] = flows[k + PEOPLE]! + peopleHeat[at + i]! * dt;
    flows[k + APPLIANCES] = flows[k + APPLIANCES]! + applianceHeat[at + i]! * dt;
    flows[k + SUNSHINE] = flows[k + SUNSHINE]! + rooms[r + SUN]! * dt;
    const throughPanes =
      rooms[r + PANE_AIR]! * fall +
      rooms[r + PANE_RADIANT]! * (outdoor - heat.solution[2 * i]!) * dt -
      (rooms[r + PANE_AIR_SKY]! + rooms[r + PANE_RADIANT_SKY]!) * dt;
    flows[k + PANES] = flows[k + PANES]! + throughPanes;
    const devices = rooms[r + DEVICE_HEAT]! + rooms[r + DEVICE_RADIANT]!;
    flows[k + DEVICES] = flows[k + DEVICES]! + devices * dt;
    flows[k + PHASE_CHANGE] = flows[k + PHASE_CHANGE]! + phase * dt;
  }
  bookAir(m, MEAN, FAN_T, outdoor, airCp, CARRIED, flows, row);
}

const { meanTemperature: MEAN } = ROOM;
const { emitted: EMITTED, cooling: COOLED } = ROOM;
const { phase: PHASE, sun: SUN, deviceHeat: DEVICE_HEAT, deviceRadiant: DEVICE_RADIANT } = ROOM;
const { paneAir: PANE_AIR, paneRadiant: PANE_RADIANT } = ROOM;
const { paneAirSky: PANE_AIR_SKY, paneRadiantSky: PANE_RADIANT_SKY } = ROOM;
const { fanTemperature: FAN_T } = ROOM;

const term = (name: EnergyTerm): number => ENERGY_TERMS.indexOf(name);
const HEATING = term('heating');
const COOLING = term('cooling');
const PEOPLE = term('people');
const APPLIANCES = term('appliances');
const SUNSHINE = term('sun');
const PANES = term('panes');
const CARRIED = term(CARRIED_TERMS[0]);
const DEVICES = term('devices');
const PHASE_CHANGE = term('phaseChange');

const ROOM_STRIDE = ROOM.stride;
const BOOK_STRIDE = BOOK.stride;
