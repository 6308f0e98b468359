/** What a person and an observer do with a page in any browser. */
export type PageInBrowser = {
  readonly browser: string;
  /** Goes to an address and waits until its page has loaded. */
  readonly open: (address: string) => Promise<void>;
  /** Runs a function of its own words in the page; what goes in and out is plain data. */
  readonly evaluate: <Given, Result>(act: (given: Given) => Result | Promise<Result>, given: Given) => Promise<Result>;
  /** Runs a script's source in the page. */
  readonly runSource: (source: string) => Promise<void>;
  /** Clicks with the pointer on the nth element that a selector finds. */
  readonly click: (selector: string, place?: number) => Promise<void>;
  readonly press: (key: Key) => Promise<void>;
  /** What pages said went wrong since the browser was started: in their scripts, or against their policy. */
  readonly complaints: () => Promise<readonly string[]>;
  /** Every address that pages asked for, as far as the browser tells. */
  readonly addresses: () => Promise<readonly string[]>;
  /** Saves a picture of what is on screen. */
  readonly picture: (file: string) => Promise<void>;
  readonly close: () => Promise<void>;
};

export type Key = 'Tab' | 'Space' | 'n' | 'b';

/** Runs in each page before its own scripts, and notes what goes wrong in it. */
export const complaintsSource = `
  window.complaints = [];
  addEventListener('error', (event) => window.complaints.push(event.message || 'not loaded: ' + event.target.outerHTML), true);
  addEventListener('unhandledrejection', (event) => window.complaints.push(String(event.reason)));
  addEventListener('securitypolicyviolation', (event) =>
    window.complaints.push(event.violatedDirective + ': ' + event.blockedURI), true);
`;

/** What `complaintsSource` has noted in the page that is open, and the addresses that this page took files from. */
export function notedInPage(): { readonly complaints: readonly string[]; readonly addresses: readonly string[] } {
  const noted: unknown = Reflect.get(window, 'complaints');
  return {
    complaints: Array.isArray(noted) ? noted.map(String) : ['nothing was noted'],
    addresses: performance.getEntriesByType('resource').map(({ name }) => name),
  };
}
