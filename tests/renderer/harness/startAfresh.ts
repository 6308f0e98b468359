import type { StoreApi } from 'zustand';

/** Puts a slice of state back to what it was when the window opened; what other tests left in it goes. */
export function startAfresh<T>(store: StoreApi<T>): void {
  store.setState(store.getInitialState(), true);
}
