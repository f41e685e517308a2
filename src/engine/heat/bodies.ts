import { type Density, type Metres, metres } from "../measure/heat-units.ts";
import type { Grams } from "../measure/units.ts";
import type { Shape } from "./series.ts";

/** A piece of food as heat sees it. */
export type Body =
  /** Far wider than it is thick, with the medium on both faces; a layer with one open face counts double. */
  | { readonly kind: "slab"; readonly thickness: Metres }
  /** A length of null is one far longer than it is thick. */
  | { readonly kind: "cylinder"; readonly diameter: Metres; readonly length: Metres | null }
  | { readonly kind: "sphere"; readonly diameter: Metres }
  | { readonly kind: "brick"; readonly sides: readonly [Metres, Metres, Metres] };

/** The one-way flows whose product is the flow in a body, each with half its thickness or its radius. */
export type Flow = { readonly shape: Shape; readonly half: Metres };

/** A body as the product of one-way flows. */
export const flowsOf = (body: Body): readonly Flow[] => {
  switch (body.kind) {
    case "slab":
      return [{ shape: "slab", half: metres(body.thickness / 2) }];
    case "sphere":
      return [{ shape: "sphere", half: metres(body.diameter / 2) }];
    case "cylinder": {
      const round: Flow = { shape: "cylinder", half: metres(body.diameter / 2) };
      return body.length === null ? [round] : [round, { shape: "slab", half: metres(body.length / 2) }];
    }
    case "brick":
      return body.sides.map((side): Flow => ({ shape: "slab", half: metres(side / 2) }));
  }
};

/** Volume ÷ surface, the length of the lumped model: half a slab, a third of a sphere's radius. */
export const volumeOverSurface = (body: Body): Metres => {
  switch (body.kind) {
    case "slab":
      return metres(body.thickness / 2);
    case "sphere":
      return metres(body.diameter / 6);
    case "cylinder": {
      const r = body.diameter / 2;
      return metres(body.length === null ? r / 2 : (r * body.length) / (2 * (r + body.length)));
    }
    case "brick": {
      const [a, b, c] = body.sides;
      return metres((a * b * c) / (2 * (a * b + b * c + c * a)));
    }
  }
};

/** A joint of meat as a cylinder twice as long as it is thick. Common practice, no source. */
export const jointOf = (weight: Grams, heavy: Density): Body => {
  const diameter = Math.cbrt((2 * weight) / 1000 / heavy / Math.PI);
  return { kind: "cylinder", diameter: metres(diameter), length: metres(2 * diameter) };
};
