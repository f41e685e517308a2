/** What a stage hands on: always a value, and what there is to say about it. F is the finding type, so that the model stays the floor. */
export type Outcome<V, F> = { readonly value: V; readonly findings: readonly F[] };
