import type { CARRIED_TERMS, EnergyTerm, WaterTerm } from '../engine/ledger/ledger.ts';

/** What air carries, by the way it leaves. */
const CARRIED_WORDS: Readonly<Record<(typeof CARRIED_TERMS)[number], string>> = {
  leakage: 'leakage',
  openings: 'open windows',
  extracts: 'extract fans',
  draught: 'stove draught',
  fans: 'supply air',
  doorways: 'doorways',
};

/** Ways of heat in the ledger, in words, in the order in which they are told. */
export const ENERGY_WORDS: Readonly<Record<EnergyTerm, string>> = {
  heating: 'heating',
  cooling: 'cooling',
  people: 'people',
  appliances: 'appliances',
  devices: 'devices',
  sun: 'sun',
  walls: 'walls',
  floors: 'floors',
  roofs: 'roofs',
  partitions: 'partitions',
  panes: 'panes',
  ...CARRIED_WORDS,
  phaseChange: 'drying, condensing',
  held: 'held temperature',
  extra: 'imposed heat',
};

/** Ways of water in the ledger, in words, in the order in which they are told. */
export const WATER_WORDS: Readonly<Record<WaterTerm, string>> = {
  people: 'people',
  appliances: 'cooking, showers',
  drying: 'laundry, plants',
  devices: 'devices',
  cooling: 'cooling coils',
  ...CARRIED_WORDS,
  runoff: 'run off',
  held: 'held humidity',
  extra: 'imposed vapour',
};
