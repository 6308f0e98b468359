import { cleanup } from '@testing-library/react';
import { onTestFinished, vi } from 'vitest';
import type { Bridge } from '../../../electron/contract/bridge.ts';
import type { AnyEvent } from '../../../electron/contract/events.ts';
import type { Reply } from '../../../electron/contract/reply.ts';
import type {
  Params,
  Result,
  ScreenName,
  WindowParams,
  WindowRequestName,
  WindowResult,
} from '../../../electron/contract/requests.ts';

export type Answers = { readonly [N in ScreenName]?: (params: Params<N>) => Result<N> };
type WindowAnswers = { readonly [N in WindowRequestName]?: (params: WindowParams<N>) => WindowResult<N> };

/** What an act answers that made nothing new. */
export const changed = {};

/** One thing the page asked for, as it asked. */
export type Asked = { readonly name: ScreenName | WindowRequestName; readonly params: unknown };

export type FakeRackside = {
  /** Everything asked so far, in order. */
  readonly asked: readonly Asked[];
  /** What was asked under one name. */
  readonly askedFor: (name: Asked['name']) => readonly unknown[];
  /** Tells the page of an event. */
  readonly emit: (event: AnyEvent) => void;
};

/**
 * Puts a bridge on the window that answers from tables and remembers what it was asked, until the test ends, when
 * everything rendered is taken off the page too. A request that no table answers gets a problem that names it.
 */
export function fakeRackside(answers: Answers, windowAnswers: WindowAnswers = {}): FakeRackside {
  const asked: Asked[] = [];
  const listeners = new Set<(event: AnyEvent) => void>();
  const answered = <T>(name: Asked['name'], params: unknown, answer: (() => T) | undefined): Promise<Reply<T>> => {
    asked.push({ name, params });
    return Promise.resolve(
      answer === undefined
        ? {
            ok: false,
            problem: {
              code: 'internal',
              message: { id: 'asWritten', values: { sentence: `No answer to ${name} in this test.` } },
            },
          }
        : { ok: true, value: answer() },
    );
  };
  const bridge: Bridge = {
    ask: (name, params) => {
      const answer = answers[name];
      return answered(name, params, answer && (() => answer(params)));
    },
    askWindow: (name, params) => {
      const answer = windowAnswers[name];
      return answered(name, params, answer && (() => answer(params)));
    },
    onEvent: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    pathOfFile: (file) => `/dropped/${file.name}`,
  };
  if (typeof document === 'undefined') {
    // Without a page there is nothing to render, and the window is the bridge alone.
    vi.stubGlobal('window', { rackside: bridge });
    onTestFinished(() => void vi.unstubAllGlobals());
  } else {
    Object.defineProperty(window, 'rackside', { value: bridge, configurable: true });
    Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);
    onTestFinished(cleanup);
  }
  return {
    asked,
    askedFor: (name) => asked.filter((one) => one.name === name).map(({ params }) => params),
    emit: (event) => {
      for (const listener of listeners) listener(event);
    },
  };
}
