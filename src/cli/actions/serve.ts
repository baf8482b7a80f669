import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { MOST_SCENARIO } from '../load/load-scenario.ts';
import { tellOthers } from '../serve/other-servers.ts';
import { type ServedHome, serveHome } from '../serve/served-home.ts';
import type { Site, SiteAnswer, SiteRequest } from '../serve/site.ts';
import type { ServiceChoice } from '../start/weather-for.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the scenario's name. */
export interface ServeOptions extends ServiceChoice {
  readonly port?: number;
  readonly open?: true;
  readonly new?: string;
}

/** Show a scenario as a page that follows its files, or a form that writes one, until somebody ends it. */
export async function serve(
  io: Io,
  given: string | undefined,
  options: ServeOptions,
): Promise<void> {
  const path = pathOf(given, options);
  const form = await formOf(io, path, given, options);
  let site: Site | null = null;
  let home: Promise<ServedHome> | null = null;
  let forget = async (): Promise<void> => {};
  let fail: (fault: unknown) => void = () => {};
  const broken = new Promise<never>((_, reject) => {
    fail = reject;
  });

  /** The home, from when its file is there. */
  const opened = (): Promise<ServedHome> => {
    home ??= serveHome(io, path, (standing) => site?.tell(JSON.stringify(standing))).then((one) => {
      one.following.catch(fail);
      return one;
    });
    return home;
  };
  const respond = async ({ name, method, body }: SiteRequest): Promise<SiteAnswer> => {
    if (name !== '') return { status: 404, page: 'There is nothing of that name here.\n' };
    if (method === 'POST') return form?.take(body) ?? NO_FORM;
    if (form !== null && home === null && !(await io.exists(path))) return form.empty();
    return { status: 200, page: await (await opened()).page() };
  };

  const ended = io.untilEnded(); // from now on, so that no Ctrl-C is too early
  try {
    if (form === null) await opened();
    site = await io.openSite(options.port ?? 0, {
      ...{ token: await io.randomToken(), respond },
      greeting: async () => JSON.stringify((await home)?.standing() ?? {}),
      failed: fail,
    });
    io.err(`${visibleValue(path)} is ${form === null ? '' : 'asked for and '}${SHOWN}\n`);
    forget = await tellOthers(io, path, new URL(site.address).port);
    io.out(`${site.address}\n`);
    if (options.open) await io.show(site.address);
    await Promise.race([ended, broken]);
    io.err('Ended.\n');
  } finally {
    await Promise.all([
      forget(),
      site?.close(),
      (await (home as Promise<ServedHome> | null))?.close(),
    ]);
  }
}

function pathOf(given: string | undefined, options: ServeOptions): string {
  if (given === undefined || options.new === undefined) return given ?? options.new ?? 'home.yaml';
  throw new UsageError("error: option '--new <file.yaml>' cannot be used with a scenario");
}

/** The form; null where there is a scenario to show. */
async function formOf(io: Io, path: string, given: string | undefined, options: ServeOptions) {
  const asks = options.new !== undefined || (given === undefined && !(await io.exists(path)));
  if (asks) {
    const { serveForm } = await import('../serve/served-form.ts');
    return serveForm(io, path, options);
  }
  await io.readText(path, MOST_SCENARIO);
  return null;
}

const SHOWN = 'shown to this machine alone; Ctrl-C ends that.';
const NO_FORM: SiteAnswer = { status: 405, page: 'Not answered: nothing is asked here.\n' };
