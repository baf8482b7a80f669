/** What a browser of this machine asks for. */
export interface SiteRequest {
  readonly method: 'GET' | 'POST';
  /** What follows the token in the address; empty for the page itself. */
  readonly name: string;
  /** Of a POST; empty otherwise. */
  readonly body: string;
}

/** What it is answered. */
export interface SiteAnswer {
  readonly status: number;
  /** A page with its policy, or some words. */
  readonly page: { readonly page: string; readonly policy: string } | string;
  /** Where to go on instead. */
  readonly location?: string;
}

/** What a site is made of. */
export interface SiteSetup {
  /** A word that nobody can guess, without which nothing is answered. */
  readonly token: string;
  readonly respond: (request: SiteRequest) => Promise<SiteAnswer>;
  /** Hears of a page that listens from now on, and gives what it is told first. */
  readonly greeting: () => Promise<string>;
  /** Hears of a fault of our own. */
  readonly failed: (fault: unknown) => void;
}

/** Pages that this machine alone can open. */
export interface Site {
  readonly address: string;
  /** Tell something, one line, to every page that is open. */
  tell(line: string): void;
  close(): Promise<void>;
}
