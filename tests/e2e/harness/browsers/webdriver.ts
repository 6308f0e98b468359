import * as v from 'valibot';

/** A session of WebDriver (W3C, https://www.w3.org/TR/webdriver2/): commands are requests below the session's address. */
export type WebDriverSession = {
  readonly get: (command: string) => Promise<unknown>;
  readonly post: (command: string, params: object) => Promise<unknown>;
  readonly end: () => Promise<void>;
};

/** What a browser may take to answer. */
const longestMs = 60_000;

const sessionSchema = v.object({ sessionId: v.string() });

/** Opens a session with the driver at an address. */
export async function openWebDriver(address: string): Promise<WebDriverSession> {
  const call = async (method: string, command: string, params?: object): Promise<unknown> => {
    const body = params === undefined ? {} : { body: JSON.stringify(params) };
    const answer = await fetch(`${address}${command}`, { method, ...body, signal: AbortSignal.timeout(longestMs) });
    const { value } = JSON.parse(await answer.text());
    if (!answer.ok) throw new Error(`${command}: ${JSON.stringify(value).slice(0, 500)}`);
    return value;
  };
  const { sessionId } = v.parse(sessionSchema, await call('POST', '/session', { capabilities: {} }));
  const own = `/session/${sessionId}`;
  return {
    get: (command) => call('GET', `${own}${command}`),
    post: (command, params) => call('POST', `${own}${command}`, params),
    end: async () => {
      await call('DELETE', own).catch(() => {});
    },
  };
}
