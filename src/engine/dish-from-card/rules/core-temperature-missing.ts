import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { limitsFor } from "../../larder/limits.ts";
import { techniqueById } from "../../larder/techniques.ts";
import { celsius } from "../../measure/units.ts";
import type { Dish, Step } from "../../model/dish.ts";
import type { HazardKind } from "../../model/food.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span } from "../../model/span.ts";
import { actionsOn, type Placed, placedActions } from "./dish-graph.ts";
import { isReadyMeat, rawAnimal } from "./keeps-badly.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { toldCore } from "./told-core.ts";

const risky: readonly HazardKind[] = ["raw-poultry", "raw-mince", "liver"];

// Pieces that boil or stew so long are done through. Common practice, no source.
const longWet = 30;
// Pieces under a lid or in liquor, in the oven. Common practice, no source.
const longPot = 60;
// A joint that has been in the oven so long comes off the bone. Common practice, no source.
const longOven = 150;
const wet = new Set(["simmer", "stew", "boil", "braise", "pressure-cook", "confit", "make-stock", "reduce"]);

// Browned mince that cooks on for so long is done through. Common practice, no source.
const broken = 10;

// "No longer pink" is done, "still pink in the middle" is not.
const doneCue =
  /clear|(?:no|not|longer|without|trace of|isn't|never) (?:any |a |more )?pink|cooked|done|falls?|falling|tender|internal|through|opaque|juices|reads?\b|no blood/i;

/**
 * Poultry, mince, pork or liver that is cooked with neither a core temperature nor a sign that it is done through. The
 * figure is the highest that the region's sheet prints for such food (UK: 75 °C for 30 seconds; FDA Food Code 3-401.11:
 * 74 °C for poultry, 68 °C for mince, 63 °C for whole pork); local codes decide.
 */
export const coreTemperatureMissing: Rule = {
  code: "core-temperature-missing",
  check: (dish, region) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || i.optional || isReadyMeat(i)) return [];
      const pork = food.hazards.includes("raw-meat") && food.diet.includes("pork");
      const hazard = risky.find((h) => food.hazards.includes(h)) ?? (pork ? "raw-meat" : undefined);
      if (hazard === undefined) return [];
      const own = actionsOn(dish, i.index);
      // Meat whose thread was lost ("the patties") is what the only heat is for, when there is no other.
      const isLost = !own.some(cooks) && rawAnimal(dish).every((other) => other === i);
      const touched = isLost ? placedActions(dish).filter((p) => own.includes(p) || isDryHeat(p)) : own;
      const cooking = touched.filter((p) => cooks(p));
      const last =
        cooking.findLast(({ action }) =>
          action.uses.some((u) => u.ingredient === i.index || u.named === i.index),
        ) ??
        cooking.at(-1) ??
        touched.findLast(coloursOnly);
      if (last === undefined) return [];
      // Where a core is told, its figure decides, whatever the colour.
      const pink = touched.some((p) => toldCore(p) !== null)
        ? undefined
        : touched.find((p) => pinkIn(p.step));
      const pinkWords = pink === undefined ? null : pinkIn(pink.step);
      if (pinkWords === null) {
        if (touched.some((p) => isShownDone(p)) || simmersLong(cooking)) return [];
        if (hazard === "raw-mince" && isBrokenUp(dish, touched)) return [];
      }
      const figure = figureFor(region, hazard);
      if (figure <= 0) return [];
      const end = last.action.span.end;
      const until = `, until the middle reads ${figure}°C`;
      return [
        makeFinding(
          "core-temperature-missing",
          dish.source,
          last.action.span,
          { name: i.name, celsius: celsius(figure) },
          {
            related: [{ source: dish.source, span: i.span }],
            fixes: [
              {
                kind: "write-temperature",
                edits: [replaceWords(pinkWords ?? { start: end, end }, until)],
              },
            ],
          },
        ),
      ];
    }),
};

// A book that names no figure for liver means it with other meat.
const figureFor = (region: Region, hazard: HazardKind): number => {
  const own = limitsFor(region, "core", [hazard]);
  const rows = own.length > 0 ? own : limitsFor(region, "core", ["raw-meat"]);
  return Math.max(0, ...rows.map((l) => l.celsius ?? 0));
};

const cooks = ({ action }: Placed): boolean =>
  action.technique !== null && techniqueById(action.technique)?.kills === true;

/** Browned or warmed: hot outside, and not for long enough to be done in the middle. */
const coloursOnly = ({ action }: Placed): boolean =>
  /^(?:brown|sear|warm|reheat)$/.test(action.technique ?? "");

/** Words that want it pink or bloody in the middle. */
const leftPink =
  /\b(?:keep|leav|still|stay|want|serv|nice|lovely|bit|little|just|pale|a touch)\w*\b[^.;]{0,30}\b(?:pink|rare|bloody|blushing)\b(?! ?(?:salt|pepper|grapefruit|lady))|\b(?:pink|rare|raw|bloody) (?:in|inside|at) ?(?:the|its)? ?(?:middle|cent(?:re|er)|inside|bone)|\bpink inside\b/i;

const notPink = /\b(?:no|not|never|without|any|trace|gone|goes|disappear\w*|vanish\w*)\b|n['’]t\b/i;
/** What is pink when it is done, or is eaten so. */
const otherPink =
  /\b(?:prawns?|shrimps?|langoustines?|lobster|salmon|onions?|rhubarb|lamb|beef|steaks?|venison|tuna)\b/i;

/** Where a step wants the middle pink, from the comma before it on; null when it does not, or says "no longer pink". */
const pinkIn = (step: Step): Span | null => {
  const found = leftPink.exec(step.text);
  if (found === null) return null;
  const before = /[^.;,]*$/.exec(step.text.slice(0, found.index))?.[0] ?? "";
  const clause = `${before}${/^[^.;,]*/.exec(step.text.slice(found.index))?.[0] ?? ""}`;
  if (notPink.test(clause) || otherPink.test(clause)) return null;
  const comma = found.index - before.length - 1;
  const from = step.text[comma] === "," ? comma : found.index;
  const length = /^[^.;,]*/.exec(step.text.slice(found.index))?.[0].length ?? found[0].length;
  return { start: step.span.start + from, end: step.span.start + found.index + length };
};

const isDryHeat = ({ action }: Placed): boolean =>
  /^(?:fry|deep-fry|grill|griddle|barbecue|roast|bake)$/.test(action.technique ?? "");

const simmersLong = (cooking: readonly Placed[]): boolean => {
  const minutes = (some: (p: Placed) => boolean): number =>
    cooking.filter(some).reduce((sum, p) => sum + (p.action.minutes?.likely ?? 0), 0);
  return (
    minutes((p) => wet.has(p.action.technique ?? "")) >= longWet ||
    minutes((p) => p.action.minutes?.assumed === false && p.action.technique === "cook") >= 2 * longWet ||
    minutes((p) => p.action.minutes?.assumed === false && p.action.station === "oven") >= longOven ||
    minutes(
      (p) => p.action.minutes?.assumed === false && p.action.station === "oven" && inPot.test(p.step.text),
    ) >= longPot
  );
};

const inPot = /\b(?:cover(?:ed)?|lid|casserole|tagine|pot)\b/i;

/** Mince that is browned in bits and then cooked on in its sauce or under its top: nothing in it is thicker than a pea. */
const isBrokenUp = (dish: Dish, touched: readonly Placed[]): boolean => {
  const shaped =
    /\b(?:patt(?:y|ies)|burgers?|meat ?balls?|balls|koftas?|loaf|cakes|rissoles|sausages?|stuff(?:ed|ing)?|fill(?:ed)?|cutlets?)\b/i;
  if (touched.some(({ step }) => shaped.test(step.text))) return false;
  const browned = touched.findIndex(
    ({ action, step }) =>
      /^(?:brown|fry|sear|saute|stir-fry|cook|sweat)$/.test(action.technique ?? "") &&
      /\bbrown|crumbl|break(?:ing)? (?:it|up)|chopping it/i.test(step.text),
  );
  if (browned < 0) return false;
  const from = touched[browned];
  const all = placedActions(dish);
  const later = from === undefined ? [] : all.slice(all.indexOf(from) + 1);
  return (
    later
      .filter(
        (p) =>
          (touched.includes(p) && (cooks(p) || p.action.station === "oven")) ||
          /^(?:simmer|stew|braise|bake)$/.test(p.action.technique ?? ""),
      )
      .reduce((sum, p) => sum + (p.action.minutes?.likely ?? 0), 0) >= broken
  );
};

const isShownDone = (placed: Placed): boolean => {
  const { action, step } = placed;
  if (toldCore(placed) !== null) return true;
  return (action.cue !== null && doneCue.test(action.cue)) || toldDone.test(step.text);
};

const toldDone =
  /cooked (?:all the way )?through|cooked until done|(?:juices?|liquid) (?:run|is|are)s? clear|no (?:longer )?pink|internal temperature|until (?:the )?(?:chicken|meat|pork|sausages?|mince|it|they)(?: is| are)? (?:well |fully )?(?:cooked|done|tender)/i;
