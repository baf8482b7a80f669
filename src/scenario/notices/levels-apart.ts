import { chainUValue } from '../../home/chain.ts';
import { heatLoss } from '../../home/heat-loss.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { andList } from '../../units/word-list.ts';
import type { FloorsBetween } from '../assemble/home/floors-between.ts';
import type { Questioned } from './questioned.ts';
import { written } from './written.ts';

/**
 * Floors that reach beyond the rooms below, and ceilings of which much lies under no room: nothing is lost
 * through either. A ceiling has to be bare for a third, because storeys seldom have the same rooms to the
 * metre; smaller parts are asked about where a roof over all of them would count in what the home loses.
 */
export function levelsApart({
  data,
  home,
  floors: { hanging, bare },
}: Pick<Questioned, 'data' | 'home' | 'floors'>): Notice[] {
  const floors = hanging.filter(
    ({ area, whole }) => area >= LEAST_HANGING && area >= SHARE_HANGING * whole,
  );
  const ceilings = bareCeilings(home, bare);
  const guessed = floors
    .map(({ room }) => room)
    .filter((room) => data.home.rooms[room]?.storey === undefined);
  const downstairs =
    guessed.length === 0
      ? ''
      : ` If ${andList(guessed)} ${guessed.length === 1 ? 'is' : 'are'} downstairs, say "storey: 0" there.`;
  return [
    ...levelsText(floors, {
      ...{ part: 'floor', lies: 'over' },
      remedy: `hang over outdoors, a passage or a garage, say "exposed floor`,
    }).map((text) => text + downstairs),
    ...levelsText(ceilings, {
      ...{ part: 'ceiling', lies: 'under' },
      remedy: 'have a roof over them, say "exposed ceiling',
    }),
  ].map((text) => ({ id: 'levels-apart', text }));
}

function bareCeilings(home: Home, bare: FloorsBetween['bare']): FloorsBetween['bare'] {
  const isLarge = ({ area, whole }: FloorsBetween['bare'][number]): boolean =>
    area >= LEAST_BARE && area >= SHARE_BARE * whole;
  const small = bare.filter((one) => !isLarge(one));
  const area = small.reduce((sum, one) => sum + one.area, 0);
  const counts =
    area >= LEAST_BARE && area * roofUValue(home) >= SHARE_OF_LOSS * heatLoss(home).total;
  return bare.filter((one) => isLarge(one) || (counts && one.area >= LEAST_OF_SEVERAL));
}

/** Mean of all roofs of a home by area; 0 where it has none. [W/(m2 K)] */
function roofUValue({ elements }: Home): number {
  const roofs = elements.filter(({ kind, far }) => kind === 'roof' && far.to === 'outdoors');
  const area = roofs.reduce((sum, roof) => sum + roof.area, 0);
  const loss = roofs.reduce((sum, roof) => sum + roof.area * chainUValue(roof.chain), 0);
  return area === 0 ? 0 : loss / area;
}

/** One question for all floors, or all ceilings; none where there is nothing to ask. */
function levelsText(
  parts: FloorsBetween['hanging'],
  { part, lies, remedy }: { readonly part: string; readonly lies: string; readonly remedy: string },
): string[] {
  const [first, ...others] = parts;
  if (first === undefined) return [];
  const lost = `lie ${lies} no room of the home: nothing is lost through them. If they ${remedy}: ${written(first.area)}" in `;
  if (others.length === 0) {
    return [
      `Of the ${part} of ${first.room} (${written(first.whole)} m2), ${written(first.area)} m2 ${lost}the room.`,
    ];
  }
  const told = parts.map(
    ({ room, area, whole }) => `${written(area)} of the ${written(whole)} m2 in ${room}`,
  );
  return [`Of the ${part}s, ${andList(told)} ${lost}${first.room}, and so on.`];
}

/** What of a floor has to hang, and of a ceiling to be bare [m2], [-]. */
const LEAST_HANGING = 1;
const SHARE_HANGING = 0.05;
const LEAST_BARE = 4;
const SHARE_BARE = 1 / 3;
/** What small parts must come to, of what all of the shell loses [-], and how much one of them must be [m2]. */
const SHARE_OF_LOSS = 0.03;
const LEAST_OF_SEVERAL = 1;
