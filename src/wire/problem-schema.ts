import { z } from "zod";
import { goalLevels } from "#engine/index.ts";
import type { Wanted } from "./problem.ts";
import {
  fromZero,
  integer,
  listOf,
  nameText,
  oneOf,
  positive,
  strictMap,
  wholeNumber,
  yesOrNo,
} from "./schema-parts.ts";

const because = (wanted: Wanted) => ({ error: () => wanted });

/** Why one task must follow another, as the model has it. */
export const lagReasons = [
  "uses-product",
  "method-order",
  "stated-wait",
  "hold-limit",
  "fridge-limit",
  "serve-soon",
  "preheat",
  "wash-before",
  "plate-together",
] as const;

/** A stretch [from, to) in minutes. */
const stretch = z
  .tuple([integer, integer], because("stretch"))
  .refine(([from, to]) => from < to, because("stretch"));

const minutes = z.union(
  [
    fromZero,
    z.tuple([fromZero, fromZero, fromZero]).refine(([low, likely, high]) => low <= likely && likely <= high),
  ],
  because("minutes"),
);

const segments = listOf(
  strictMap({
    minutes,
    attention: oneOf(["hands", "mind", "none"], "attention"),
    uses: listOf(
      strictMap({ resource: nameText, amount: positive.optional(), celsius: integer.optional() }),
    ).optional(),
    manned: yesOrNo.optional(),
  }),
);

const edge = oneOf(["start", "end"], "edge");

/** tamis-problem/1: every key is known, and what may be left out says so in docs/formats.md. */
export const problemSchema = strictMap({
  format: z.literal("tamis-problem/1", because("format")),
  name: nameText,
  span: stretch.optional(),
  attention: strictMap({ capacity: wholeNumber, hands: wholeNumber, mind: wholeNumber }).optional(),
  cooks: listOf(strictMap({ name: nameText, shifts: listOf(stretch) })),
  ovens: listOf(strictMap({ id: nameText, shelves: wholeNumber, cold: integer.optional() })).optional(),
  ovenRamp: strictMap({ heat: fromZero, cool: fromZero }).optional(),
  ovenTolerance: fromZero.optional(),
  ovensCold: oneOf(["at-opening", "once"], "cold-ovens").optional(),
  resources: listOf(strictMap({ id: nameText, capacity: fromZero })).optional(),
  tasks: listOf(
    strictMap({
      id: nameText,
      name: nameText.optional(),
      dish: nameText.optional(),
      course: nameText.optional(),
      finishing: yesOrNo.optional(),
      cooks: listOf(nameText).optional(),
      starts: stretch.optional(),
      segments,
      ways: listOf(segments).optional(),
    }),
  ),
  lags: listOf(
    strictMap({
      before: nameText,
      beforeEdge: edge.optional(),
      after: nameText,
      afterEdge: edge.optional(),
      least: integer.optional(),
      most: integer.optional(),
      reason: oneOf(lagReasons, "reason").optional(),
      why: nameText.optional(),
    }),
  ).optional(),
  courses: listOf(
    strictMap({
      name: nameText,
      due: integer,
      plates: listOf(nameText),
      landsWith: oneOf(["last", "first"], "landing").optional(),
    }),
  ),
  holds: listOf(strictMap({ task: nameText, plate: nameText, weight: fromZero, hot: yesOrNo })).optional(),
  stays: listOf(
    strictMap({
      resource: nameText,
      amount: positive.optional(),
      from: nameText.optional(),
      to: nameText.optional(),
    }),
  ).optional(),
  calm: listOf(stretch).optional(),
  sameCook: listOf(listOf(nameText)).optional(),
  freeFrom: listOf(strictMap({ before: nameText, after: nameText })).optional(),
  levels: listOf(oneOf(goalLevels, "level")).optional(),
});

/** A file of the format, as checked. */
export type ProblemFile = z.output<typeof problemSchema>;
