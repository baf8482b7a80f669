import type { Ledger } from '../../engine/ledger/ledger.ts';
import { devicesKwh } from '../../measures/energy/device-totals.ts';
import { SHUT_WINDOWS } from '../../measures/notices/shut-windows.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { hasOwnSection } from '../own-section.ts';
import { assumedTable } from './assumed-table.ts';
import {
  alertsTable,
  arrivalsTable,
  blindsTable,
  devicesTable,
  roomsTable,
} from './figure-tables.ts';
import { freshAirTable } from './fresh-air-table.ts';
import { handbookCrossCheckTable } from './handbook-cross-check-table.ts';
import { energyLedgerTable, waterLedgerTable } from './ledger-table.ts';
import { periodText } from './period-text.ts';
import { remarkList } from './remark-list.ts';
import { type FigureRow, rowTable } from './row-table.ts';
import { speciesTable } from './species-table.ts';
import { textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Everything one run has to say, as plain text; parts that are empty are left out. @param clock  of the household */
export function runTables(
  measures: PlanMeasures,
  ledger: Ledger,
  clock: LocalClock,
  width: number,
): string {
  const rooms = Object.keys(measures.rooms);
  const first = measures.notices.filter(({ id }) => id === SHUT_WINDOWS);
  const notices = measures.notices.filter(({ id }) => id !== SHUT_WINDOWS && !hasOwnSection(id));
  const parts: readonly (readonly [string, string])[] = [
    [
      visibleProse(`${measures.scenario}: ${measures.plan}`),
      [periodText(measures, clock), ...first.map(({ text }) => wrapText(text, '', width))].join(
        '\n',
      ),
    ],
    ['Whole home', homeTable(measures, width)],
    ['Rooms', roomsTable(measures.rooms, width)],
    ['In the air, mean levels and hours above the bands', speciesTable(measures, width)],
    ['Coming into a room that stood empty', arrivalsTable(measures.rooms, width)],
    ['Blinds', blindsTable(measures.blinds, width)],
    ['Devices', devicesTable(measures.devices, width)],
    ['Fresh air', freshAirTable(measures, width)],
    ['Airing', airingTable(measures, width)],
    ['Rules', alertsTable(measures.alerts, width)],
    ['Where the heat went, plus is into the room [kWh]', energyLedgerTable(ledger, rooms, width)],
    ['Where the water went, plus is into the room [kg]', waterLedgerTable(ledger, rooms, width)],
    ['Handbook cross-check', handbookCrossCheckTable(measures, width)],
    ['Balances, a check of the program on itself', balanceTable(measures, width)],
    ['Assumed, because the scenario does not say', assumedTable(measures.assumed, width)],
    ['Cautions', remarkList(measures.cautions, width)],
    ['Notices', remarkList(notices, width)],
  ];
  return parts
    .filter(([, body]) => body !== '')
    .map(([title, body]) => `${title}\n${body}`)
    .join('\n\n');
}

/** Energy, money and carbon of the period. */
function homeTable(measures: PlanMeasures, width: number): string {
  const { heating, cooling, devices, money, carbon_kg } = measures;
  const ofDevices = devicesKwh(measures);
  const hasDevices = Object.keys(devices.by_device).length > 0;
  const only = (when: boolean, ...row: FigureRow): FigureRow[] => (when ? [row] : []);
  const { with_window_open_kwh: open } = heating;
  return rowTable(
    [
      ['heat to rooms', heating.useful_kwh, 'kWh'],
      ...only(open > 0, 'of it while a window was open', open, 'kWh'),
      ...Object.entries(heating.delivered_kwh).map(
        ([fuel, kwh]): FigureRow => [`${fuel} for heat`, kwh, 'kWh'],
      ),
      ...only(cooling.removed_kwh > 0, 'removed by cooling', cooling.removed_kwh, 'kWh'),
      ...Object.entries(cooling.delivered_kwh).map(
        ([fuel, kwh]): FigureRow => [`${fuel} for cooling`, kwh, 'kWh'],
      ),
      ['electricity of appliances', devices.electricity_kwh - ofDevices, 'kWh'],
      ...only(devices.gas_kwh > 0, 'gas burnt by activities', devices.gas_kwh, 'kWh'),
      ...only(hasDevices, 'electricity of devices', ofDevices, 'kWh'),
      ...Object.entries(money.by_fuel).map(
        ([fuel, sum]): FigureRow => [`${fuel} bill`, sum, money.currency],
      ),
      ['all energy', money.energy, money.currency],
      ['purchase cost a year', money.purchase_cost_per_year, `${money.currency}/year`],
      ['all money', money.total_per_year, `${money.currency}/year`],
      ['carbon', carbon_kg, 'kg CO2e'],
    ],
    width,
  );
}

/** Residuals of the balances, relative to throughput. */
function balanceTable({ balance }: PlanMeasures, width: number): string {
  const cells = Object.values(balance).map(shareText);
  const labels = Object.keys(balance).map((key) => key.replace('_residual', ''));
  return textTable(
    [
      { head: '', cells: labels, align: 'left' },
      { head: 'residual over throughput', cells },
    ],
    width,
  );
}

function shareText(share: number): string {
  if (!Number.isFinite(share)) return '-';
  return share === 0 ? '0' : share.toExponential(1);
}

/** What open windows carried out, what that cost, and whether it helped; nothing where none opened. */
function airingTable({ airing, rooms, money }: PlanMeasures, width: number): string {
  if (!Object.values(rooms).some((room) => room.window_open_hours > 0)) return '';
  return rowTable(
    [
      ['water out of windows', airing.openings_kg, 'kg'],
      ['of that, in the heating season', airing.heating_season_kg, 'kg'],
      ['heat out of windows in the heating season', airing.heating_season_kwh, 'kWh'],
      ['for each litre of water then', airing.kwh_per_litre, 'kWh', 2],
      ['for each litre then, at the price of heat', airing.money_per_litre, money.currency, 3],
      ['airings of an hour at most that dried a room', airing.short_airings, ''],
      ['of those, nearly as damp again within a day', airing.rebounds, ''],
      ['until then, mean', airing.rebound_minutes_mean, 'min'],
      ['windows open, drier outdoors', airing.hours_drier, 'room h'],
      ['windows open, no difference', airing.hours_no_difference, 'room h'],
      ['windows open, wetter outdoors', airing.hours_wetter, 'room h'],
      ['going by % alone would mislead', airing.hours_humidity_rule_wrong, 'room h'],
    ],
    width,
  );
}
