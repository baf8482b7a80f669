/** A name of no more characters than that, its end given up for dots where it is longer. */
export function shortened(name: string, characters: number): string {
  const all = [...name];
  const most = leastRoom(characters);
  return all.length <= most ? name : `${all.slice(0, most - 1).join('')}…`;
}

/** Names of no more characters each, shortened at their ends; those that would come out alike, in their middles. */
export function shortenedApart(names: readonly string[], characters: number): string[] {
  const cut = names.map((name) => shortened(name, characters));
  return names.map((name, k) =>
    cut.indexOf(cut[k]!) === cut.lastIndexOf(cut[k]!) ? cut[k]! : withoutMiddle(name, characters),
  );
}

function withoutMiddle(name: string, characters: number): string {
  const all = [...name];
  const most = leastRoom(characters);
  if (all.length <= most) return name;
  const end = Math.floor((most - 1) / 2);
  return `${all.slice(0, most - 1 - end).join('')}…${all.slice(all.length - end).join('')}`;
}

const leastRoom = (characters: number): number => Math.max(2, Math.floor(characters));
