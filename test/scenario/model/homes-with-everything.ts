/*
 * Small homes that between them have every section of the scenario, and leave out its keys, so that
 * every default has a place where it matters.
 */

type Plain = Readonly<Record<string, unknown>>;

const SPELL = { from: '07:00', to: '09:00' };
const WET = [{ room: 'bedroom', reading: 'humidity', over: 65 }];
const ROOMS = {
  living: { 'floor area': 16, panes: [{}], openings: [{}] },
  bedroom: { 'floor area': 12 },
  bathroom: { 'floor area': 5 },
};

const homeOf = (more: Plain, home: Plain = {}): Plain => ({
  title: 'Everything',
  weather: 'w.csv',
  ...{ site: { latitude: 54, longitude: -2, elevation: 30, timezone: 'Europe/London' } },
  home: { rooms: ROOMS, ...home },
  ...more,
});

/** Building, people, habits and a boiler with all that a thermostat may have. */
const LIVED_IN = homeOf(
  {
    site: { latitude: 54, longitude: -2, elevation: 30, 'wind station': {} },
    money: { gas: {}, electricity: {} },
    heating: {
      ...{ emitters: {}, gate: 'when present', lead: 'learned', sensor: {}, season: {} },
      rooms: { living: { sensor: {} } },
    },
    household: {
      people: [
        { irregular: {}, 'lives in': [{ room: 'bedroom' }] },
        { schedule: [{ room: 'living', ...SPELL }] },
      ],
      guests: [{ ...SPELL }],
      bodies: { awake: {}, asleep: {} },
      activities: [{ what: 'shower' }, { what: 'cooking' }],
      airing: [
        { room: 'bedroom', at: '07:00' },
        { room: 'living', 'on waking': 'bedroom' },
      ],
    },
  },
  { build: {}, doors: {} },
);

const sensed = ['temperature', 'humidity', 'co2', 'tvoc', 'pollen', 'no2', 'pm25', 'radon'];

/** Everything that air carries, what measures it, and what is done about it. */
const WATCHED = homeOf({
  air: {
    species: ['pollen', 'no2'],
    ...{ outdoors: {}, penetration: {}, 'window penetration': {}, deposition: {}, materials: {} },
    'own species': { radon: { unit: 'Bq/m3', outdoors: 8, band: { high: 100 }, sources: {} } },
  },
  sensors: { presence: {}, ...Object.fromEntries(sensed.map((name) => [name, {}])) },
  rules: [
    ...sensed.map((reading) => ({
      name: `high ${reading}`,
      when: [{ room: 'bedroom', reading, over: 30 }],
      response: [{ tell: 'look' }],
    })),
    { name: 'stuffy', when: WET, gate: 'when present', response: [{ open: 'bedroom' }] },
  ],
  devices: {
    filter: { kind: 'purifier', room: 'living' },
    unit: { kind: 'balanced ventilation', supplies: { living: 30 }, extracts: { bathroom: 30 } },
  },
});

/** One device of each kind, cooling by room units and blinds. */
const EQUIPPED = homeOf({
  household: { activities: [{ what: 'shower' }] },
  cooling: { coil: {} },
  blinds: [
    { room: 'living', 'sun over': 100 },
    { room: 'bedroom', hours: '22:00-07:00' },
  ],
  devices: {
    drier: { kind: 'dehumidifier', room: 'bedroom' },
    mist: { kind: 'humidifier', room: 'living' },
    fan: { kind: 'extract fan', room: 'bathroom', with: 'shower' },
    'damp fan': { kind: 'extract fan', room: 'bathroom', runs: 'by humidity' },
    air: { kind: 'balanced ventilation', supplies: { living: 30 }, extracts: { bathroom: 30 } },
    heater: { kind: 'heater', room: 'bedroom' },
    stove: { kind: 'stove', room: 'living', burns: '18:00-22:00' },
  },
});

const COOLED = [
  homeOf({ cooling: { source: 'single duct' } }),
  homeOf({ heating: { source: 'heat pump' }, cooling: { source: 'reversible heat pump' } }),
];

const FUELLED = ['gas', 'oil', 'lpg', 'wood', 'electricity', 'district heat'].flatMap((fuel) =>
  [undefined, {}].map((price) =>
    homeOf({
      heating:
        fuel === 'electricity' || fuel === 'district heat'
          ? { source: fuel === 'electricity' ? 'heat pump' : fuel }
          : { fuel },
      money: price === undefined ? {} : { [fuel]: price },
    }),
  ),
);

/** Spans of time that say neither days nor months. */
const SPANNED = homeOf(
  {
    heating: { setpoint: [{ ...SPELL, setpoint: 19 }], night: { setpoint: 17, ...SPELL } },
    money: { electricity: { price: 0.3, blocks: [{ price: 0.4, ...SPELL }] } },
  },
  { doorways: [{ between: ['living', 'bedroom'], open: SPELL }] },
);

/** One room over another, so that floors between rooms and the roof count. */
const STACKED = homeOf(
  { site: { latitude: 54, longitude: -2, elevation: 30, storeys: 2 } },
  { build: {} },
);

export const HOMES: readonly Plain[] = [
  LIVED_IN,
  WATCHED,
  EQUIPPED,
  ...COOLED,
  ...FUELLED,
  SPANNED,
  STACKED,
  homeOf({ heating: {} }),
];
