import { density, type SquareMetres, squareMetres } from "../measure/heat-units.ts";
import type { Grams } from "../measure/units.ts";
import { jointOf } from "./bodies.ts";

/** A tray that fits an oven's runners: GN 1/1, 530 × 325 mm (EN 631-1). */
const tray = squareMetres(0.53 * 0.325);
/** Meat, kg/m³ (Choi and Okos, 1986, lean beef at 20 °C: 1053). */
const meat = density(1050);
/** Air that the oven needs around a piece to brown it, metres between two. Common practice, no source. */
const apart = 0.05;

/** The floor that a joint or a bird takes on a tray, with the air around it. */
export const floorOf = (weight: Grams): SquareMetres => {
  const body = jointOf(weight, meat);
  if (body.kind !== "cylinder" || body.length === null) return tray;
  return squareMetres((body.diameter + apart) * (body.length + apart));
};

/** Less than this share beside the pieces lies under and between them. Common practice, no source. */
const between = 0.1;

/** Trays, in parts, of so many pieces, and of what lies around them where a tray takes so many grams of it in a layer. */
export const traysOfPieces = (each: Grams, many: number, all: Grams, inALayer: Grams): number => {
  const around = all - each * many;
  return many / piecesATray(each) + (around > between * each * many ? around / inALayer : 0);
};

/** How many joints or birds of this weight one tray takes beside each other; a large one has a tray of its own. */
export const piecesATray = (weight: Grams): number =>
  weight > 0 ? Math.max(1, Math.floor(tray / floorOf(weight))) : 1;
