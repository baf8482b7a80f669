import type { Ledger } from '../../engine/ledger.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { assumedTable } from './assumed-table.ts';
import { energyLedgerTable, waterLedgerTable } from './ledger-table.ts';
import { periodText } from './period-text.ts';
import { remarkList } from './remark-list.ts';
import { roomsTable } from './rooms-table.ts';
import { secondOpinionTable } from './second-opinion-table.ts';
import { type Column, textTable, WIDTH } from './text-table.ts';

/** Everything one run has to say, as plain text; parts that are empty are left out. */
export function runTables(measures: PlanMeasures, ledger: Ledger, width = WIDTH): string {
  const rooms = Object.keys(measures.rooms);
  const notices = measures.notices.filter(({ id }) => !id.startsWith('second-opinion-'));
  const parts: readonly (readonly [string, string])[] = [
    [`${measures.scenario}: ${measures.plan}`, periodText(measures)],
    ['Whole home', homeTable(measures, width)],
    ['Rooms', roomsTable(measures.rooms, width)],
    ['Where the heat went, plus is into the room [kWh]', energyLedgerTable(ledger, rooms, width)],
    ['Where the water went, plus is into the room [kg]', waterLedgerTable(ledger, rooms, width)],
    ['Second opinion', secondOpinionTable(measures, width)],
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
  const { heating, devices, money, carbon_kg } = measures;
  const rows: [string, number, string][] = [
    ['heat to rooms', heating.useful_kwh, 'kWh'],
    ...Object.entries(heating.delivered_kwh).map(([fuel, kwh]): [string, number, string] => [
      `${fuel} for heat`,
      kwh,
      'kWh',
    ]),
    ['electricity of appliances', devices.electricity_kwh, 'kWh'],
    ...Object.entries(money.by_fuel).map(([fuel, sum]): [string, number, string] => [
      `${fuel} bill`,
      sum,
      money.currency,
    ]),
    ['all energy', money.energy, money.currency],
    ['owning what was bought', money.owning_per_year, `${money.currency}/year`],
    ['all money', money.total_per_year, `${money.currency}/year`],
    ['carbon', carbon_kg, 'kg CO2e'],
  ];
  return rowTable(rows, 0, width);
}

/** What was booked and not found again, as a share of throughput. */
function balanceTable({ balance }: PlanMeasures, width: number): string {
  const cells = Object.values(balance).map(shareText);
  const labels = Object.keys(balance).map((key) => key.replace('_residual', ''));
  return textTable(
    [
      { head: '', cells: labels, align: 'left' },
      { head: 'lost of what passed through', cells },
    ],
    width,
  );
}

function shareText(share: number): string {
  if (!Number.isFinite(share)) return '-';
  return share === 0 ? '0' : share.toExponential(1);
}

function rowTable(rows: readonly [string, number, string][], decimals: number, width: number) {
  const columns: Column[] = [
    { head: '', cells: rows.map(([label]) => label), align: 'left' },
    { head: '', cells: rows.map(([, value]) => figureText(value, decimals)) },
    { head: '', cells: rows.map(([, , unit]) => unit), align: 'left' },
  ];
  return textTable(columns, width).replace(/^\n/, '');
}
