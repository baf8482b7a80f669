import type { Tariff } from '../physics/economics/tariff.ts';
import type { Fuel } from './home.ts';

export type { Tariff };

/** What energy costs here, and what carbon comes with it. */
export interface Prices {
  /** Currency as it is written behind a sum, e.g. "GBP". */
  readonly currency: string;
  readonly fuels: Readonly<Partial<Record<Fuel, FuelPrice>>>;
}

export interface FuelPrice {
  readonly tariff: Tariff;
  /** Standing charge. [currency/day] */
  readonly standing: number;
  /** [kg CO2e/kWh] */
  readonly carbon: number;
}
