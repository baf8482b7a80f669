import type { WaterTerm } from '../engine/ledger.ts';

/** Ways of water in the ledger, in words. */
export const WATER_WORDS: Readonly<Record<WaterTerm, string>> = {
  people: 'people',
  appliances: 'cooking, showers',
  drying: 'laundry, plants',
  devices: 'devices',
  cooling: 'cooling coils',
  leakage: 'leakage',
  openings: 'open windows',
  extracts: 'extract fans',
  draught: 'stove draught',
  fans: 'supply air',
  doorways: 'doorways',
  runoff: 'run off',
  held: 'held humidity',
  extra: 'imposed vapour',
};
