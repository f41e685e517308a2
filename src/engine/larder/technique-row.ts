import type { Technique } from "../model/food.ts";

type Plain<T> = T extends number
  ? number
  : T extends readonly (infer U)[]
    ? readonly Plain<U>[]
    : T extends string | boolean | null
      ? T
      : { readonly [K in keyof T]: Plain<T[K]> };

/** A technique as the generated table holds it: the same fields, with bare numbers. */
export type TechniqueRow = Plain<Technique>;
