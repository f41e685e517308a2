import type { Placed } from "./dish-graph.ts";

const inMiddle =
  /\b(\d{2,3})(\s*(?:°|degrees?)?\s*F\b)?\s*(?:°|degrees?)?\s*C?\s*(?:or so|or more|or over|at least)?\s*\b(?:in|at) (?:the|its) (?:very |dead )?(?:middle|cent(?:re|er)|deepest|thickest|core|bone|thigh|heart)\b(?! of the oven)/i;
const ofMiddle =
  /\b(?:filling|stuffing|meat|middle|cent(?:re|er)|inside|chicken|turkey|pork|mince|burgers?|meatballs?|sausages?|patties)\s+(?:is|are|reads?|comes? to|hits?|gets? to|reach(?:es)?)\s+(?:at\s+|up to\s+)?(\d{2,3})(\s*(?:°|degrees?)?\s*F\b)?(?!\s*(?:min|hour|sec|g\b|kg|cm|%))/i;
// No core is over the boil, so a figure above it is in Fahrenheit.
const boil = 110;

/** The core temperature of an action, °C: as it was read, or as its step tells it of the middle; null when neither says any. */
export const toldCore = ({ action, step }: Placed): number | null => {
  if (action.core !== null) return action.core;
  const found = inMiddle.exec(step.text) ?? ofMiddle.exec(step.text);
  if (found === null) return null;
  const figure = Number(found[1]);
  return found[2] !== undefined || figure > boil ? ((figure - 32) * 5) / 9 : figure;
};
