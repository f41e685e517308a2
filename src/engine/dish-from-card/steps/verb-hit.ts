import type { Technique } from "../../model/food.ts";

/** A kitchen verb found in a sentence. */
export type VerbHit = {
  /** Place of the verb in the sentence. */
  readonly at: number;
  /** Place behind the verb and, for "let it cool", behind the second verb. */
  readonly to: number;
  readonly technique: Technique;
  readonly verb: string;
  /** "let it bubble", "leave to cool": it goes on without hands. */
  readonly letting: boolean;
  readonly passive: boolean;
  /** No word orders it ("Flour, egg, crumb."): the token at `at` is one of the foods. */
  readonly unsaid?: boolean;
  /** Told as what is wanted: "you want the beans soaked". */
  readonly wished?: boolean;
};
