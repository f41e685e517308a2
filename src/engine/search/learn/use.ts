/** A use of a resource; presentSide −1: always present. */
export type Use = {
  readonly x: number;
  readonly offset: number;
  readonly length: number;
  readonly amount: number;
  readonly presentSide: number;
  readonly presentBound: number;
};
