import { InputProblems } from '../../units/problem.ts';
import { visibleValue } from '../../units/visible-text.ts';

// The only file of the program that uses the network.

/** What an answer may take before it is given up. */
export interface HttpLimits {
  /** From the request to the last byte. [ms] */
  readonly time: number;
  /** Bytes of the answer, unpacked. */
  readonly size: number;
  /** Waits before the second, third ... try. [ms] */
  readonly waits: readonly number[];
  /** Longest wait that a service may ask for by Retry-After. [ms] */
  readonly longestWait: number;
}

/**
 * The text at an address, by GET.
 *
 * Only https is spoken, and http with this machine itself. What may pass (no connection, a broken
 * answer, a service that is busy) is tried again after a while; what will not is told at once.
 *
 * @param agent  who asks, for the service's own books
 * @throws InputProblems under the service's name, in words
 */
export async function httpGet(
  address: string,
  agent: string,
  limits: HttpLimits = LIMITS,
): Promise<string> {
  const url = spoken(address);
  for (let k = 0; ; k++) {
    const answer = await attempt(url, agent, limits);
    if ('text' in answer) return answer.text;
    const wait = limits.waits[k];
    if (answer.passes === null || wait === undefined) {
      const tries = k === 0 ? '' : `tried ${k + 1} times`;
      throw refused(url, answer.got, [answer.hint, tries].filter((part) => part !== '').join('; '));
    }
    const asked = Math.min(Math.max(wait, answer.passes), Math.max(wait, limits.longestWait));
    await new Promise((done) => setTimeout(done, asked));
  }
}

/** Why a try failed; `passes` is the wait that the service asks for [ms], null where none helps. */
interface Failure {
  readonly got: string;
  readonly hint: string;
  readonly passes: number | null;
}

async function attempt(
  url: URL,
  agent: string,
  { time, size }: HttpLimits,
): Promise<{ readonly text: string } | Failure> {
  const signal = AbortSignal.timeout(time);
  try {
    const response = await fetch(url, {
      signal,
      redirect: 'manual',
      headers: { 'user-agent': agent, accept: 'text/csv, application/json, text/plain' },
    });
    const { status } = response;
    const bytes = await bodyOf(response, status === 200 ? size : MOST_WORDS);
    if (status !== 200) return refusal(response, bytes === null ? '' : lenient(bytes));
    if (bytes === null) {
      return {
        got: `more than ${size / 1e6} MB`,
        hint: 'that is no year of weather',
        passes: null,
      };
    }
    const type = response.headers.get('content-type') ?? '';
    if (/html|^image|^video|^audio/i.test(type)) return page(type);
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    return unheard(error, signal, time);
  }
}

/** The bytes of an answer; null where they are more than `most`, of which the rest is not read. */
async function bodyOf(response: Response, most: number): Promise<Uint8Array | null> {
  const pieces: Uint8Array[] = [];
  let total = 0;
  for await (const piece of response.body ?? []) {
    pieces.push(piece);
    total += piece.length;
    if (total > most) return null; // leaving the loop closes the connection
  }
  return Buffer.concat(pieces);
}

function refusal(response: Response, body: string): Failure {
  const { status, headers } = response;
  const said = reasonIn(body);
  const words = said === '' ? '' : `: "${said}"`;
  if (status >= 300 && status < 400) {
    const got = `being sent on to ${visibleValue(headers.get('location') ?? 'nowhere')} (${status})`;
    return { got, hint: 'the service has moved; its address can be given', passes: null };
  }
  const got = `a refusal (${status})${words}`;
  if (status === 429 || status >= 500) {
    const asked = 1000 * Number(headers.get('retry-after') ?? 0);
    return { got, hint: 'the service is busy or broken; try later', passes: asked || 0 };
  }
  return { got, hint: 'has it that place and that year?', passes: null };
}

/** The reason that a service gives in a refusal: `message` or `reason` of its JSON, shortened. */
function reasonIn(body: string): string {
  try {
    const { message, reason } = JSON.parse(body) as Record<string, unknown>;
    const said = [message, reason].find((words) => typeof words === 'string');
    return visibleValue(String(said ?? '').slice(0, 200));
  } catch {
    return '';
  }
}

const page = (type: string): Failure => ({
  got: `a page for a browser (${visibleValue(type)})`,
  hint: 'perhaps a network wants you to sign in first',
  passes: null,
});

function unheard(error: unknown, signal: AbortSignal, time: number): Failure {
  if (signal.aborted) return { got: `no whole answer in ${time / 1000} s`, hint: '', passes: 0 };
  const { cause, message } = error as Error & { cause?: { code?: string; message?: string } };
  if (error instanceof TypeError && cause === undefined && /encod|decod/i.test(message)) {
    return { got: 'bytes that are not UTF-8 text', hint: '', passes: null };
  }
  const code = cause?.code ?? '';
  const words =
    CODES[code] ?? (message === 'terminated' ? BROKEN : `no connection (${code || message})`);
  return { got: words, hint: code === 'ENOTFOUND' ? 'is the network up?' : '', passes: 0 };
}

const lenient = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

function spoken(address: string): URL {
  const url = URL.canParse(address) ? new URL(address) : null;
  if (url?.protocol === 'https:') return url;
  if (url?.protocol === 'http:' && LOOPBACK.includes(url.hostname)) return url;
  const expected = 'an address that begins with https://';
  throw new InputProblems([{ ...NOWHERE, file: address, expected, got: 'another' }]);
}

function refused(url: URL, got: string, hint: string): InputProblems {
  return new InputProblems([{ ...NOWHERE, file: url.host, expected: 'weather', got, hint }]);
}

const NOWHERE = { line: 0, column: 0, where: '', hint: '' };
const LOOPBACK = ['localhost', '127.0.0.1', '[::1]'];
const BROKEN = 'an answer that breaks off';
const CODES: Readonly<Record<string, string>> = {
  ENOTFOUND: 'no connection: nobody knows the name (ENOTFOUND)',
  EAI_AGAIN: 'no connection: the name cannot be looked up (EAI_AGAIN)',
  ECONNREFUSED: 'no connection: it is refused (ECONNREFUSED)',
  ECONNRESET: BROKEN,
  UND_ERR_SOCKET: BROKEN,
};
/** Most of a refusal that is read for its reason. [byte] */
const MOST_WORDS = 10_000;
/** A year of hours has less than 1 MB; a typical year takes a service some ten seconds. */
const LIMITS: HttpLimits = { time: 60_000, size: 20e6, waits: [1000, 4000], longestWait: 30_000 };
