import { COMMON, type Preset } from '../../units/preset.ts';
import type { COLD_SPOTS, SHAPES, USES } from '../choices.ts';

export type Use = (typeof USES)[number];

/** What a room is for, by its name; living where the name says nothing. */
export const useOfName = (name: string): Use => useInName(name) ?? 'living';

/**
 * What the name of a room says that it is for, in English and the larger languages of Europe's west;
 * null where it says nothing.
 */
export function useInName(name: string): Use | null {
  const { plain, words } = read(name);
  const found = NAMES.find(
    ({ parts, whole = [] }) =>
      parts.some((part) => plain.includes(part)) || whole.some((word) => words.includes(word)),
  );
  return found?.use ?? null;
}

/**
 * The first room of a use; of bathrooms the first that is more than a toilet by its name, because nobody has
 * a shower there.
 *
 * @returns its index, -1 for none
 */
export function firstUsedAs(
  rooms: readonly { readonly name: string; readonly use: Use }[],
  use: Use,
): number {
  const bathing = rooms.findIndex((room) => room.use === use && !isToilet(room.name));
  return bathing >= 0 ? bathing : rooms.findIndex((room) => room.use === use);
}

/** Whether its name says that nobody has a shower there. */
export function isToilet(name: string): boolean {
  const { plain, words } = read(name);
  return TOILETS.some((word) => words.includes(word)) && !BATHING.test(plain);
}

/** Whether a bedroom's name says that a child sleeps there. */
export const isForChildren = (name: string): boolean => CHILDREN.test(read(name).plain);

/** Whether a bedroom's name says that it stands empty on most nights. */
export const isForGuests = (name: string): boolean => GUESTS.test(read(name).plain);

/** A name in small letters, and its words. */
function read(name: string): { readonly plain: string; readonly words: readonly string[] } {
  const plain = name.normalize('NFC').toLowerCase();
  return { plain, words: plain.split(/[^\p{L}]+/u) };
}

const TOILETS: readonly string[] = ['wc', 'loo', 'toilet', 'toilette', 'toilettes', 'cloakroom'];
const CHILDREN = /child|kid|nursery|kinder|enfant|niñ|bambin|cameretta|\bbarn|børn/;
const GUESTS = /guest|spare|box room|gäste|gaeste|invit|ospiti|huésped|logeer|gjest|gæst/;
const BATHING = /bath|bad|shower|dusch|douche/;

/** Parts of names, and whole words where a part would stand in other names too; the first that fits. */
const NAMES: readonly {
  readonly use: Use;
  readonly parts: readonly string[];
  readonly whole?: readonly string[];
}[] = [
  {
    use: 'bathroom',
    parts: [
      ...['bath', 'shower', 'toilet', 'wet room', 'ensuite', 'en suite', 'en-suite', 'cloakroom'],
      ...['badezimmer', 'dusche', 'salle de bain', "salle d'eau", 'salle d’eau', 'badkamer'],
      ...['badrum', 'baderom', 'badeværelse'],
    ],
    whole: [
      ...['wc', 'loo', 'bad', 'gästebad', 'duschbad', 'douche', 'baño', 'bano', 'aseo', 'bagno'],
    ],
  },
  {
    use: 'bedroom',
    parts: [
      ...['bed', 'nursery', 'child', 'guest room', 'spare room', 'box room', 'schlaf', 'kinder'],
      ...['gästezimmer', 'gaestezimmer', 'chambre', 'slaapkamer', 'dormitorio', 'camera da letto'],
      ...['sovrum', 'soverom', 'soveværelse', 'niños', 'bambini', 'logeerkamer'],
    ],
    whole: [
      ...['habitación', 'habitacion', 'alcoba', 'cuarto', 'camera', 'cameretta', 'kids', 'barnrum'],
      ...['barnerom', 'børneværelse'],
    ],
  },
  {
    use: 'utility', // before the kitchens that stand in these names
    parts: ['waschküche', 'waschkueche', 'hauswirtschaft', 'bijkeuken', 'buanderie'],
    whole: ['lavadero', 'lavanderia', 'tvättstuga'],
  },
  {
    use: 'kitchen',
    parts: ['kitchen', 'küche', 'kueche', 'cuisine', 'keuken', 'kjøkken', 'køkken'],
    whole: ['cocina', 'cucina', 'kök'],
  },
  {
    use: 'dining',
    parts: ['dining', 'esszimmer', 'salle à manger', 'eetkamer', 'sala da pranzo'],
    whole: ['comedor', 'matsal'],
  },
  {
    use: 'hall',
    parts: ['hall', 'landing', 'stair', 'corridor', 'vestibule', 'treppenhaus', 'korridor'],
    whole: [
      ...['porch', 'passage', 'flur', 'diele', 'gang', 'hal', 'couloir', 'entrée', 'palier'],
      ...['pasillo', 'recibidor', 'corridoio', 'ingresso', 'entré', 'hol', 'vestíbulo'],
    ],
  },
  {
    use: 'study',
    parts: ['study', 'office', 'arbeitszimmer', 'werkkamer'],
    whole: ['büro', 'buero', 'bureau', 'despacho', 'arbetsrum'],
  },
  { use: 'utility', parts: ['utility', 'laundry'] },
  {
    use: 'storage',
    parts: ['store', 'cellar', 'garage', 'abstell', 'keller', 'speisekammer'],
    whole: ['larder', 'pantry', 'cave', 'berging', 'trastero', 'ripostiglio', 'cantina', 'förråd'],
  },
  {
    use: 'living',
    parts: ['living', 'lounge', 'sitting', 'drawing', 'family', 'parlour', 'wohn', 'vardagsrum'],
    whole: [
      ...['den', 'snug', 'studio', 'stube', 'salon', 'séjour', 'woonkamer', 'sala', 'salón'],
      ...['soggiorno', 'stue'],
    ],
  },
];

/** Floor to ceiling. [m] */
export const HEIGHT: Preset = { value: 2.4, low: 2.2, high: 2.8, source: COMMON };

/** Sides of a room that are outdoors, by how the home stands to its neighbours. */
export const OUTER_SIDES: Readonly<Record<(typeof SHAPES)[number], Preset>> = {
  flat: { value: 1, low: 1, high: 2, source: COMMON },
  terrace: { value: 1, low: 1, high: 1.5, source: COMMON },
  'end terrace': { value: 1.4, low: 1, high: 2, source: COMMON },
  'semi-detached': { value: 1.4, low: 1, high: 2, source: COMMON },
  detached: { value: 1.8, low: 1, high: 2.5, source: COMMON },
};

/** Window as a share of the floor. [-] */
export const WINDOW_SHARE: Readonly<Record<Use, number>> = {
  living: 0.2,
  kitchen: 0.15,
  dining: 0.18,
  bedroom: 0.15,
  bathroom: 0.1,
  hall: 0.06,
  study: 0.16,
  utility: 0.1,
  storage: 0,
};
export const WINDOW_SOURCE = 'common practice: share of floor area by use of the room';

/** What of a window can stand open. [-], [m] */
export const OPENABLE: Preset = { value: 0.4, low: 0.2, high: 0.8, source: COMMON };
/** Upper edge of a window above the floor. [m] */
export const WINDOW_HEAD: Preset = { value: 2.1, low: 1.8, high: 2.4, source: COMMON };
export const OPENING_HEIGHT: Preset = { value: 1, low: 0.5, high: 1.4, source: COMMON };

const FACTOR_SOURCE = 'common practice; 0.75 or more is asked of dwellings (BRE IP 1/06)';

/** Surface temperature factor of the coldest corner. [-] */
export const COLD_SPOT: Readonly<Record<(typeof COLD_SPOTS)[number], Preset>> = {
  good: { value: 0.85, low: 0.8, high: 0.9, source: FACTOR_SOURCE },
  middling: { value: 0.75, low: 0.7, high: 0.8, source: FACTOR_SOURCE },
  poor: { value: 0.65, low: 0.6, high: 0.7, source: FACTOR_SOURCE },
  'very poor': { value: 0.55, low: 0.5, high: 0.6, source: FACTOR_SOURCE },
};

/** Cold spot factor of a room without any outer face. [-] */
export const INNER_ROOM: Preset = { value: 0.95, low: 0.9, high: 1, source: COMMON };

/**
 * Cold spot factor where nobody looked, by the U-value of the walls [W/m2K]: the worse a wall insulates,
 * the nearer its corners come to outdoors. No jumps, so that a little more or less changes little.
 */
export function likelyColdSpot(wallUValue: number): Preset {
  const { value, source } = COLD_SPOT.good;
  const over = BY_WALLS.reduce((lost, { from, to, loses }) => {
    return lost + loses * Math.max(0, Math.min(1, (wallUValue - from) / (to - from)));
  }, 0);
  const likely = Math.round(1000 * (value - over)) / 1000;
  return { value: likely, low: likely - SPREAD, high: likely + SPREAD, source };
}

/** From `good` to `middling`, and on to `poor`: U-values [W/m2K], own estimate. */
const BY_WALLS = [
  { from: 0.45, to: 0.85, loses: 0.1 },
  { from: 0.85, to: 1.3, loses: 0.1 },
];
/** As wide as that of the words. */
const SPREAD = 0.05;
