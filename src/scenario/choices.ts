/* Words of which a scenario takes one, each list in the order in which messages name them. */

export const WHO = ['adult', 'frail adult', 'child', 'infant'] as const;

export const PATTERNS = [
  'works away on weekdays',
  'works at home',
  'at home',
  'school child',
  'infant',
] as const;

export const WHATS = [
  'shower',
  'bath',
  'cooking',
  'light meal',
  'dishes',
  'laundry dried indoors',
  'plants',
  'fridge',
  'lights and appliances',
  'standby',
  'candles',
  'cleaning',
  'tumble dryer',
  'other',
] as const;

export const BLIND_KINDS = [
  'roller shutter',
  'outside slats',
  'outside screen',
  'inside blind',
  'curtain',
] as const;

export const AGES = [
  'before 1900',
  '1900-1929',
  '1930-1949',
  '1950-1966',
  '1967-1975',
  '1976-1982',
  '1983-1990',
  '1991-1995',
  '1996-2002',
  '2003-2006',
  '2007 on',
] as const;

export const WALLS = [
  'solid brick',
  'cavity',
  'filled cavity',
  'timber frame',
  'granite',
  'sandstone',
  'system built',
] as const;

export const GLAZINGS = ['single', 'double', 'double low-e', 'triple'] as const;

export const DRAUGHTS = ['very tight', 'tight', 'average', 'leaky', 'very leaky'] as const;

export const SHAPES = ['flat', 'terrace', 'end terrace', 'semi-detached', 'detached'] as const;

export const FURNISHINGS = ['bare', 'furnished', 'plenty'] as const;

export const SHELTERS = ['exposed', 'rural', 'suburban', 'urban', 'enclosed'] as const;

export const TERRAINS = ['city', 'suburban', 'open', 'flat'] as const;

export const COLD_SPOTS = ['good', 'middling', 'poor', 'very poor'] as const;

export const USES = [
  'living',
  'kitchen',
  'dining',
  'bedroom',
  'bathroom',
  'hall',
  'study',
  'utility',
  'storage',
] as const;

/** The word in a list of airing habits that stands for the usual ones. */
export const USUAL = 'usual';
