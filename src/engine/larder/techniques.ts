import type { Technique, TechniqueId } from "../model/food.ts";
import { normaliseName } from "./normalise-name.ts";
import { techniqueRows } from "./tables/techniques.ts";
import { spellings, type VerbForm, verbForms } from "./verb-forms.ts";

/** Every technique of the table, in its order. */
export const techniques: readonly Technique[] = techniqueRows as readonly Technique[];

const byId: ReadonlyMap<TechniqueId, Technique> = new Map(techniques.map((t) => [t.id, t]));

/** The technique of an id; null when the table has none. */
export const techniqueById = (id: TechniqueId): Technique | null => byId.get(id) ?? null;

/** One way of reading a word as a kitchen verb. */
export type VerbReading = {
  readonly technique: Technique;
  /** The verb in its base form, with its particles: "stir in". */
  readonly verb: string;
  readonly form: VerbForm;
  /** Words that must follow, after an object perhaps: "to the boil"; empty for a one-word verb. */
  readonly tail: readonly string[];
};

const readings = new Map<string, VerbReading[]>();

for (const technique of techniques)
  for (const written of technique.verbs)
    for (const spelt of spellings(written)) {
      const [head = "", ...tail] = normaliseName(spelt.replaceAll("-", "\u0001"))
        .replaceAll("\u0001", "-")
        .split(" ");
      for (const { word, form } of verbForms(head)) {
        const known = readings.get(word) ?? [];
        const verb = [head, ...tail].join(" ");
        if (!known.some((r) => r.verb === verb && r.form === form))
          readings.set(word, [...known, { technique, verb, form, tail }]);
      }
    }
for (const list of readings.values()) list.sort((a, b) => b.tail.length - a.tail.length);

const none: readonly VerbReading[] = [];

/** What a word can mean as a verb, in lower case without accents; those with the longest tail come first. */
export const verbReadings = (word: string): readonly VerbReading[] => readings.get(word) ?? none;

const letting = new Set([
  "let",
  "leave",
  "allow",
  "letting",
  "leaving",
  "allowing",
  "left",
  "leaves",
  "lets",
]);

/**
 * The technique of a verb in any of its forms, British or American, of one word or more ("bringing to the boil",
 * "sautéed", "leave to cool"); null when the table has none.
 */
export const techniqueByVerb = (verb: string): Technique | null => {
  const [head = "", ...rest] = verb
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .trim()
    .split(/\s+/);
  for (const r of verbReadings(head))
    if (r.tail.length === rest.length && r.tail.every((word, i) => word === rest[i])) return r.technique;
  if (rest.length === 0) return null;
  if (letting.has(head))
    return techniqueByVerb(rest.filter((word) => !/^(to|it|them)$/.test(word)).join(" "));
  return techniqueByVerb([head, ...rest].join("-"));
};
