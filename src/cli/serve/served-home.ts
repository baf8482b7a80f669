import type { Document } from '../../report/page/document-frame.ts';
import { plainPage } from '../../report/served/plain-page.ts';
import { type Standing, withStanding } from '../../report/served/standing.ts';
import { InputProblems, problemText } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import { loadPlans } from '../load/load-plans.ts';
import { createFileWatch } from './file-watch.ts';
import { type MadePage, makePages, Superseded } from './make-pages.ts';
import { createRunStore } from './run-store.ts';
import { standingWords } from './standing-words.ts';

/** A scenario whose files are followed. */
export interface ServedHome {
  /** The last page that could be made, with how it stands to the files; waits for the first. */
  readonly page: () => Promise<Document>;
  readonly standing: () => Standing;
  /** The work of following, which ends by `close`, or fails by a fault of our own. */
  readonly following: Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * Follows a scenario and the files it names: whenever one is saved, makes its page anew. Where they
 * cannot be used, the last page stands, and says that it is older and what is wrong.
 *
 * @param tell  hears of every new standing
 */
export async function serveHome(
  io: Io,
  path: string,
  tell: (standing: Standing) => void,
): Promise<ServedHome> {
  const watch = createFileWatch(io);
  const workers = await io.startWorkers(Number.POSITIVE_INFINITY);
  const maker = { io, workers, store: createRunStore() };
  const script = await io.readAsset('report/follow-script.js');
  const sha256 = await io.loadSha256();
  let made: (MadePage & { readonly of: string }) | null = null;
  let standing: Standing = START;
  let closed = false;
  let known: () => void = () => {};
  const firstKnown = new Promise<void>((done) => {
    known = done;
  });

  function stand(change: Partial<Standing>): void {
    const next = { ...standing, problems: [], ...change };
    standing = { ...next, words: standingWords(path, next, made) };
    if (standing.state !== 'running') known();
    tell(standing);
  }

  async function make(over: () => boolean): Promise<void> {
    try {
      const loaded = await loadPlans(watch.io, path, { plans: 'all', check: 'all', set: [] });
      const of = watch.seen();
      if (made?.of === of && made.whole) {
        return stand({ edition: standing.pageOf, state: 'good' });
      }
      stand({ edition: standing.edition + 1, state: 'running' });
      for await (const page of makePages(maker, loaded, over)) {
        if (over()) return;
        made = { ...page, of };
        stand({ state: 'good', page: standing.page + 1, pageOf: standing.edition });
      }
    } catch (error) {
      if (error instanceof Superseded) return;
      if (!(error instanceof InputProblems)) throw error;
      const problems = error.problems.map(problemText);
      io.err(`${problems.join('\n')}\n`);
      stand({ edition: standing.edition + 1, state: 'wrong', problems });
    }
  }

  async function follow(): Promise<void> {
    while (!closed) {
      watch.restart();
      let over = false;
      const change = watch.next().then(() => {
        over = true;
      });
      await Promise.all([make(() => over), change]);
    }
  }

  return {
    standing: () => standing,
    page: async () => {
      await firstKnown;
      if (made === null) return plainPage(path, standing, script, sha256);
      return { policy: made.policy, page: withStanding(made.page, standing) };
    },
    following: follow(),
    close: async () => {
      closed = true;
      watch.stop();
      await workers?.close();
    },
  };
}

const START: Standing = {
  ...{ edition: 0, page: 0, pageOf: 0, state: 'running' },
  ...{ words: 'Reading …', problems: [] },
};
