import { useEffect, useState } from "preact/hooks";

/** A value that can be watched. */
export type Store<S> = {
  readonly get: () => S;
  readonly update: (change: (now: S) => S) => void;
  readonly watch: (told: () => void) => () => void;
};

/** Makes a store. Watchers are told only when the value is another one. */
export const makeStore = <S>(first: S): Store<S> => {
  let now = first;
  const watchers = new Set<() => void>();
  return {
    get: () => now,
    update: (change) => {
      const next = change(now);
      if (Object.is(next, now)) return;
      now = next;
      for (const told of [...watchers]) told();
    },
    watch: (told) => {
      watchers.add(told);
      return () => watchers.delete(told);
    },
  };
};

/** The store's value in a component, which is drawn anew when it changes. */
export const useStore = <S>(store: Store<S>): S => {
  const [value, setValue] = useState(store.get());
  useEffect(() => {
    const look = () => setValue(() => store.get());
    look();
    return store.watch(look);
  }, [store]);
  return value;
};
