import type { Io } from '../io.ts';
import type { Candidate } from './candidates.ts';

/** Names that a scenario gives to its plans and rooms; none where it cannot be read. */
export async function namesOfScenario(
  io: Io,
  file: string,
): Promise<Readonly<Record<'plans' | 'rooms', readonly Candidate[]>>> {
  const { parse } = await import('yaml');
  try {
    const scenario = parse(await io.readText(file, MOST)) as Plain;
    return {
      plans: namesIn(scenario?.['plans'], ({ description }) => description),
      rooms: namesIn(plainOf(scenario?.['home'])?.['rooms'], ({ use }) => use),
    };
  } catch {
    return { plans: [], rooms: [] };
  }
}

type Plain = Readonly<Record<string, unknown>> | null;

const plainOf = (value: unknown): Plain =>
  typeof value === 'object' && value !== null ? (value as Plain) : null;

function namesIn(
  section: unknown,
  aboutOf: (one: Readonly<Record<string, unknown>>) => unknown,
): Candidate[] {
  return Object.entries(plainOf(section) ?? {}).map(([word, one]) => {
    const about = aboutOf(plainOf(one) ?? {});
    return { word, about: typeof about === 'string' ? about.replaceAll(/\s+/g, ' ') : '' };
  });
}

/** A line is completed at once or not at all. [bytes] */
const MOST = 1e6;
