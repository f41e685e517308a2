/** Wakes those who wait for changes. The changes themselves are read from the store, so none can be missed. */
export type Bell = {
  readonly ring: () => void;
  /** Resolves at the next ring, or after so many milliseconds with false. */
  readonly wait: (milliseconds: number) => Promise<boolean>;
};

/** A bell that anyone may ring and any number may wait for. */
export const makeBell = (): Bell => {
  const waiting = new Set<() => void>();
  return {
    ring: () => {
      for (const wake of [...waiting]) wake();
    },
    wait: (milliseconds) =>
      new Promise((resolve) => {
        const wake = (): void => {
          clearTimeout(timer);
          waiting.delete(wake);
          resolve(true);
        };
        const timer = setTimeout(() => {
          waiting.delete(wake);
          resolve(false);
        }, milliseconds);
        timer.unref();
        waiting.add(wake);
      }),
  };
};
