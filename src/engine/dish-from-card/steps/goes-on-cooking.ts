import { techniqueById } from "../../larder/techniques.ts";
import type { Action } from "../../model/dish.ts";
import type { Technique } from "../../model/food.ts";
import type { Clause } from "./clauses.ts";
import type { StepReader } from "./step-reader.ts";

const ovenDish = /\b(tins?|tray|dish|dishes|roaster|sheet|ramekins?|moulds?)$/;

// Short work of the hands after which what stands on the fire or in the oven cooks.
const thenCooks = new Set(
  "put add cover pour top adjust-heat arrange spread sprinkle preheat fill".split(" "),
);

/**
 * "Turn the oven down to 150. Four hours, till the bone pulls out": a length without a verb, behind work of the hands on
 * what stands on the fire or comes into the oven, is the length that it cooks. Null where it is not.
 */
export const goesOnCooking = (
  reader: StepReader,
  clause: Clause,
  last: Action | undefined,
): Clause | null => {
  const cook = techniqueById("cook");
  const short = clause.mentions.length > 0 ? 0.5 : 3;
  const length = clause.times.find((t) => t.kind === "length" && t.minutes.likely >= short);
  if (clause.hit !== null || cook === null || length === undefined || last === undefined) return null;
  if (clause.station !== null || speaksOfBefore(clause)) return null;
  // "Lined 2 lb tin, 50 minutes": into the tin, whatever was done last.
  const inTin = reader.preheat !== null && clause.tokens.some((t) => ovenDish.test(t.text));
  // "Cherries 2 min." into the sauce that stands on the fire.
  const joins =
    (reader.kitchen.current?.onHeat === true || reader.kitchen.emptied !== null) &&
    clause.mentions.length > 0 &&
    clause.tokens.filter((t) => t.kind !== "mark").length <= 7;
  if (joins) return cooking(clause, cook);
  if (!thenCooks.has(last.technique ?? "") && !inTin) return null;
  if ((last.station !== "hands" && last.technique !== "preheat") || last.minutes?.assumed === false)
    return null;
  const { current } = reader.kitchen;
  // "In it goes. Half an hour of that."
  const wentIn = /^(go in|load)$/.test(last.verb) && reader.preheat !== null && current?.onHeat !== true;
  if (!wentIn && (current === null || current.aside)) return null;
  const oven =
    wentIn ||
    (inTin && current?.onHeat !== true) ||
    current?.inOven === true ||
    (last.technique === "adjust-heat" && last.celsius !== null) ||
    (current?.onHeat !== true && reader.preheat !== null && ovenDish.test(current?.called ?? ""));
  if (!oven && current?.onHeat !== true) return null;
  const technique = oven ? (techniqueById("bake") ?? cook) : cook;
  return cooking(clause, technique);
};

/** The clause, as if its words had begun with the work. */
const cooking = (clause: Clause, technique: Technique): Clause => ({
  ...clause,
  hit: {
    at: 0,
    to: 0,
    technique,
    verb: technique.verbs[0] ?? "cook",
    letting: true,
    passive: false,
    unsaid: true,
  },
  verbAt: 0,
  verbTo: 0,
});

/** "It takes an hour", "about 20 minutes": the words speak of what was done before. */
export const speaksOfBefore = (clause: Clause): boolean =>
  /^(it|this|that|they|it'll|they'll|that'll|it's|they're|which|should|about|allow|around|another)$/.test(
    clause.tokens[0]?.text ?? "",
  ) &&
  (clause.hit === null ||
    clause.tokens
      .slice(1, 5)
      .some((t) => /^(take|takes|need|needs|want|wants|be|allow|ready|done)$/.test(t.text)));
