import {
  type AdjustmentReason,
  meanOf,
  type Region,
  regularPlural,
  type Sheet,
  type SheetEquipment,
  type SheetLine,
  type SheetStep,
} from "#engine/index.ts";
import { adjustmentTexts } from "./findings/menu.ts";
import { countText, numberText, percentText } from "./number-text.ts";
import { durationText, massText } from "./quantity-text.ts";
import { usVolumeText, usWeightText } from "./us-text.ts";

/** Headings of a cook's sheet. */
export const sheetHeadings = {
  ingredients: "Weigh",
  method: "Method",
  toServe: "To serve",
  equipment: "Needs",
} as const;

/** "24 portions, 3 times the card (8)". */
export const sheetSize = ({ portions, factor, cardPortions }: Sheet): string =>
  `${countText(portions, "portion", "portions")}${
    factor === 1
      ? ", as the card has it"
      : `, ${numberText(factor, 2)} times the card (${numberText(cardPortions, 1)})`
  }`;

/** The same in the measures of a US kitchen, in brackets; empty elsewhere and for what they cannot show. */
export const usMeasureText = ({ amount }: SheetLine, region: Region): string => {
  if (amount === null || region !== "us") return "";
  const text = amount.unit === "g" ? usWeightText(amount.exact) : usVolumeText(amount.exact);
  return text === "" ? "" : ` (${text})`;
};

/** Grams that two fingers take, and what is less than scales show. Common practice, no source. */
const pinchFrom = 0.2;
const pinchTo = 0.6;

/** "1.35 kg", "850 ml", "a pinch"; a dash where the card gives no amount that weighs. */
export const amountText = ({ amount }: SheetLine): string => {
  if (amount === null) return "–";
  if (amount.unit === "g" && amount.exact < pinchTo)
    return amount.exact < pinchFrom ? "a few grains" : "a pinch";
  if (amount.unit === "g")
    return amount.value < 10 ? `${numberText(amount.value, 2)} g` : massText(amount.value);
  return amount.value >= 1000
    ? `${numberText(amount.value / 1000, 3)} l`
    : `${numberText(amount.value, 1)} ml`;
};

/** "5", "7½ medium", "about 40". */
export const piecesText = ({ pieces }: SheetLine): string => {
  if (pieces === null) return "";
  const whole = Math.floor(pieces.value);
  const half = pieces.value - whole >= 0.5 ? "½" : "";
  const figure = whole === 0 ? half : `${whole}${half}`;
  const about = Math.abs(pieces.exact - pieces.value) > 0.01 * pieces.exact ? "about " : "";
  return `${about}${figure}${pieces.name === null ? "" : ` ${measureText(pieces.name, pieces.value)}`}`;
};

const sizes = /^(?:small|medium|large|extra large|big|jumbo|heaped|rounded|level|scant)$|\d/i;

/** "cloves" for more than one; a size stays as it is. */
const measureText = (name: string, many: number): string =>
  many <= 1 || sizes.test(name) || name.endsWith("s") ? name : regularPlural(name);

/** What a line is called: "lime juice", "carrots, diced". */
export const lineName = ({ name, portion, preparation, optional }: SheetLine): string =>
  [portion === null ? name : `${name} ${portion}`, ...preparation, optional ? "optional" : ""]
    .filter((words) => words !== "")
    .join(", ");

/** Why an amount does not go in step with the portions. */
const reasonTexts: { readonly [R in AdjustmentReason]: string } = {
  "whole-pieces": "to keep step with whole eggs, leaves or tins",
  ...adjustmentTexts,
};

/** The amount before it was rounded, to four figures. */
const exactText = ({ unit, exact }: NonNullable<SheetLine["amount"]>): string => {
  const four = Number(exact.toPrecision(4));
  return four >= 1000
    ? `${numberText(four / 1000, 3)} ${unit === "g" ? "kg" : "l"}`
    : `${numberText(four, 2)} ${unit}`;
};

/** What a line in step is a share of. */
const baseTexts: { readonly [B in NonNullable<SheetLine["base"]>]: string } = {
  "liquid-left": "in step with what is left of the liquid after boiling",
  "what-it-sets": "in step with what it sets; a deep mould may want more",
  taste: "taste and adjust: beyond four times the card no reckoning knows (common practice)",
};

/** Why an amount is what it is: what was multiplied in, and how it was rounded. Empty when it is card × factor. */
export const whyText = (line: SheetLine, factor: number): readonly string[] => [
  ...line.adjusted.map(
    ({ reason, factor }) =>
      `${factor >= 1 ? "more" : "less"} by ${percentText(Math.abs(factor - 1))}: ${reasonTexts[reason]}`,
  ),
  ...(line.amount !== null && exactText(line.amount) !== amountText(line)
    ? [`rounded for the scales from ${exactText(line.amount)}`]
    : []),
  ...(line.base === null || factor === 1 || (line.base === "taste" && factor <= 4)
    ? []
    : [baseTexts[line.base]]),
  ...(line.cardText === null ? [] : [`card: ${line.cardText}`]),
];

/** "stockpot (13.6 l holds 9.2 l, 68 % full)". */
export const vesselText = (vessel: SheetStep["vessels"][number]): string => {
  const { kind, name, fillings, fill, litres, grams } = vessel;
  const what = kind === "tray" ? countText(fillings, "oven tray", "oven trays") : timesText(fillings, name);
  // Fat to fry in says nothing about the pan.
  if (fill < leastFill && fillings === 1) return what;
  const load = kind === "tray" ? massText(grams) : `${numberText(litres, 1)} l`;
  return `${what}: ${load}${fillings > 1 ? " in all" : ""}, ${percentText(fill, 0)} of what it is filled to`;
};

const leastFill = 0.05;

const timesText = (fillings: number, name: string): string =>
  fillings === 1 ? name : `${name}, ${numberText(fillings)} fillings`;

/** How long a step takes at this size, with how far its work reaches, and what its own words say. */
export const stepTimeText = (step: SheetStep): string => {
  const { minutes, cardMinutes, handsMinutes, batches, index, until } = step;
  const stated = cardMinutes === null ? null : durationText(cardMinutes.likely);
  return [
    minutes === null
      ? ""
      : `${until > index ? `steps ${index + 1}–${until + 1}: ` : ""}${durationText(meanOf(minutes))}`,
    handsMinutes >= 0.5 ? handsText(handsMinutes, minutes === null ? 0 : meanOf(minutes)) : "",
    stated !== null ? `the card says ${stated} at its size` : "",
    batches > 1 ? `in ${numberText(batches)} batches` : "",
  ]
    .filter((text) => text !== "")
    .join(", ");
};

/** How much of a step is by hand, to the minute; "all" where nothing goes by itself. */
const handsText = (hands: number, all: number): string =>
  all - hands < 0.5 ? "all of it by hand" : `${durationText(Math.max(1, Math.round(hands)))} of it by hand`;

/** "here 600 buns for \"24 buns\""; "with about 5.8 l water and 60 g salt in it". */
export const stepCountsText = ({ counts, water }: SheetStep): readonly string[] => [
  ...counts.map(({ words, here }) => `for "${words}" read ${numberText(here)}`),
  ...(water === null
    ? []
    : [
        `about ${numberText(Number(water.litres.toPrecision(2)), 1)} l water to cover it${
          water.saltGrams === null
            ? ""
            : `, with ${massText(Number(water.saltGrams.toPrecision(2)))} salt in it (10 g a litre)`
        }`,
      ]),
];

const stationNames: { readonly [K in SheetEquipment["kind"]]: readonly [string, string] } = {
  pan: ["pan", "pans"],
  tray: ["oven tray", "oven trays"],
  container: ["container", "containers"],
  oven: ["oven", "ovens"],
  burner: ["burner", "burners"],
  grill: ["grill", "grills"],
  fryer: ["fryer", "fryers"],
  tin: ["tin", "tins"],
  own: ["tin", "tins"],
};

/** "3 × stockpot (there are 2: in turns)"; where no kitchen was named, only what is needed. */
export const equipmentText = (
  { kind, name, count, has, insteadOf }: SheetEquipment,
  kitchenKnown: boolean,
): string => {
  const [one, many] = stationNames[kind];
  const what = (n: number): string => (name === "" ? countText(n, one, many) : `${numberText(n)} × ${name}`);
  const instead = insteadOf === undefined ? "" : `, which stands in for the ${insteadOf} of the card`;
  if (!kitchenKnown || has === null || has >= count) return `${what(count)}${instead}`;
  return has === 0
    ? `${what(count)} (there is none${kind === "tin" ? ", nor one whose floor is near to it" : ""})`
    : `${what(has)}, all there are, for ${countText(count, "filling", "fillings")} in turns${instead}`;
};
