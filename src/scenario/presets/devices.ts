import { COMMON, preset } from '../../units/preset.ts';

/** Label [L/day], standby [W], tank [L], target and deadband [%], least run and rest [min]. */
export const DEHUMIDIFIER = {
  label: { compressor: preset(12, 8, 25), desiccant: preset(7, 6, 10) },
  standby: preset(1, 0.5, 5),
  tank: preset(2, 1.5, 4),
  target: preset(55, 50, 60),
  deadband: preset(6, 2, 10),
  leastRun: preset(5, 0, 10),
  leastRest: { compressor: preset(5, 3, 10), desiccant: preset(0, 0, 5) },
} as const;

/** Test condition of most labels. [°C], [%] */
export const TESTED_AT = {
  compressor: { temperature: 30, humidity: 80, words: '30 °C/80 %' },
  desiccant: { temperature: 20, humidity: 60, words: '20 °C/60 %' },
} as const;
export const TESTED_SOURCE =
  'trade tables: headline figures are at 30 °C/80 %, desiccants at 20/60';

/** Electricity for a label of 1 L/day. [W] */
export const DRYING_POWER = {
  compressor: preset(17, 12, 25, `${COMMON}: 12 L/day on the label draw about 200 W`),
  desiccant: preset(80, 60, 100, `${COMMON}: 7 L/day on the label draw about 600 W`),
} as const;

/** Water [mL/h], power [W] of one that does not boil and of one that does, target and deadband [%]. */
export const HUMIDIFIER = {
  water: preset(200, 100, 400),
  power: { cold: preset(20, 10, 40), boils: preset(150, 100, 300) },
  target: preset(40, 35, 45),
  deadband: preset(4, 2, 10),
} as const;

const APPROVED = 'English guidance on ventilation (Approved Document F)';

/** Flow [m3/h] by use, power [W], run-on [min], target and deadband [%]. */
export const EXTRACT_FAN = {
  flow: {
    kitchen: preset(108, 60, 220, `${APPROVED}: 30 L/s beside a hob, 60 elsewhere`),
    other: preset(54, 30, 100, `${APPROVED}: 15 L/s in a bathroom`),
    continuous: preset(29, 15, 50, `${APPROVED}: 8 L/s in a bathroom all the time (from memory)`),
  },
  power: preset(15, 4, 35),
  runOn: preset(20, 10, 30, 'householders and fitters: 20 to 30 minutes'),
  target: preset(65, 60, 75),
  deadband: preset(6, 2, 10),
} as const;

/** Recovery [-], power a m3/h of supply [W], class of the filter that keeps its exchanger clean. */
export const BALANCED = {
  filter: 'coarse',
  heatRecovery: preset(0.75, 0.6, 0.9),
  moistureRecovery: preset(0, 0, 0.7, `${COMMON}: plates of metal or plastic let no water through`),
  power: preset(0.4, 0.25, 0.7),
} as const;

/** Clean air [m3/h], power a m3/h [W], target and deadband [µg/m3]. */
export const PURIFIER = {
  cleanAir: preset(200, 80, 400),
  power: preset(0.15, 0.08, 0.3),
  target: preset(12, 8, 15),
  deadband: preset(4, 2, 8),
} as const;

/** Target and deadband of a purifier that runs by something else, from the band of that. [its unit] */
export const purifierLevels = (high: number) => ({
  target: preset(0.5 * high, 0.25 * high, high),
  deadband: preset(0.2 * high, 0.1 * high, 0.3 * high),
});

/** Power [W], radiant share [-], target [°C], deadband [K]. */
export const HEATER = {
  power: preset(1500, 500, 2000),
  radiantShare: preset(0.2, 0.05, 0.6),
  target: preset(19, 17, 21),
  deadband: preset(1, 0.5, 2),
} as const;

/**
 * Batch [kg], refuelling and lag [min], energy [kWh/kg], shares [-], air [m3/h].
 *
 * Energy, published for wood of 20 % water: spruce 4.05, pine 4.14, beech 3.97, oak 3.92 kWh/kg; of 10 %,
 * 4.5 to 4.75 (Technologie- und Förderzentrum, Straubing, as quoted in manuals of wood boilers).
 */
export const STOVE = {
  /** Evenings of the colder months. */
  burns: (south: boolean) => ({
    months: south ? 'Apr-Oct' : 'Oct-Apr',
    from: '18:00',
    to: '22:00',
  }),
  batch: preset(1.3, 0.8, 2.5),
  refuelling: preset(45, 30, 75),
  energy: preset(4.1, 3.6, 4.4, 'ISO 17225-1 form: logs with 12 to 25 % water (from memory)'),
  efficiency: preset(0.72, 0.55, 0.82, `${COMMON}: 75 to 80 % on the test stand, less at home`),
  radiantShare: preset(0.5, 0.3, 0.7),
  lag: preset(20, 10, 170, `${COMMON}: iron 20 minutes, soapstone 3 hours`),
  roomAir: preset(20, 10, 40, `${COMMON}: 8 to 12 m3 for a kilogram of wood, and what leaks in`),
} as const;

/** Relative difference of supply and extract that still counts as balanced. [-] */
export const FLOW_BALANCE = 0.01;
