/** A session of WebDriver BiDi (W3C, https://www.w3.org/TR/webdriver-bidi/): commands out, results and events in. */
export type BidiSession = {
  readonly send: (method: string, params: object) => Promise<unknown>;
  /** Events by their method, in the order they came. */
  readonly events: readonly { readonly method: string; readonly params: unknown }[];
  readonly end: () => void;
};

type Waiting = { readonly resolve: (result: unknown) => void; readonly reject: (error: Error) => void };

/** Opens a session with a browser that listens at an address. */
export async function openBidi(address: string): Promise<BidiSession> {
  const socket = new WebSocket(`${address}/session`);
  const waiting = new Map<number, Waiting>();
  const events: { method: string; params: unknown }[] = [];
  let last = 0;
  await new Promise((resolve, reject) => {
    socket.addEventListener('open', resolve);
    socket.addEventListener('error', () => reject(new Error(`No answer at ${address}`)));
  });
  socket.addEventListener('message', ({ data }) => {
    const message = JSON.parse(String(data));
    if (message.type === 'event') events.push({ method: message.method, params: message.params });
    const asked = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.type === 'success') asked?.resolve(message.result);
    if (message.type === 'error') asked?.reject(new Error(`${message.error}: ${message.message}`));
  });
  socket.addEventListener('close', () => {
    for (const { reject } of waiting.values()) reject(new Error('The browser is gone.'));
  });
  const send = (method: string, params: object) =>
    new Promise<unknown>((resolve, reject) => {
      last += 1;
      waiting.set(last, { resolve, reject });
      socket.send(JSON.stringify({ id: last, method, params }));
    });
  await send('session.new', { capabilities: {} });
  return { send, events, end: () => socket.close() };
}
