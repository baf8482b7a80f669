import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { MOST_SCENARIO } from '../load-scenario.ts';
import { serveHome } from '../serve/served-home.ts';
import type { Site, SiteAnswer, SiteRequest } from '../serve/site.ts';

/** What may be said beside the scenario's name. */
export interface ServeOptions {
  readonly port?: number;
  readonly open?: true;
}

/** Show a scenario as a page that follows its files, until somebody ends it. */
export async function serve(
  io: Io,
  given: string | undefined,
  options: ServeOptions,
): Promise<void> {
  const path = given ?? 'home.yaml';
  await io.readText(path, MOST_SCENARIO);
  let site: Site | null = null;
  const home = await serveHome(io, path, (standing) => site?.tell(JSON.stringify(standing)));
  const respond = async ({ name, method }: SiteRequest): Promise<SiteAnswer> => {
    if (name !== '') return { status: 404, page: 'There is nothing of that name here.\n' };
    if (method === 'POST') return { status: 409, page: `${path} is there already.\n` };
    return { status: 200, page: await home.page() };
  };
  try {
    site = await io.openSite(options.port ?? 0, {
      ...{ token: await io.randomToken(), respond },
      greeting: () => JSON.stringify(home.standing()),
    });
    io.err(`${visibleValue(path)} is shown to this machine alone; Ctrl-C ends that.\n`);
    io.out(`${site.address}\n`);
    if (options.open) await io.show(site.address);
    await Promise.race([io.untilEnded(), home.following]);
    io.err('Ended.\n');
  } finally {
    await Promise.all([site?.close(), home.close()]);
  }
}
