import { celsius, count, minutes, moment, share } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Region, Sitting } from "../model/sitting.ts";

/** A sitting that asks for one dish in the portions of its card and nothing else, so that amounts stay as written. */
export const sittingOfOne = (dish: Dish, region: Region): Sitting => ({
  source: dish.source,
  title: dish.title,
  date: "",
  place: "",
  region,
  currency: "",
  covers: count(Math.max(1, Math.round(dish.portions?.likely ?? 1))),
  guests: [],
  courses: [{ name: "", at: moment(0), dishes: [dish.source] }],
  crew: [],
  kitchen: {
    name: "",
    burners: count(0),
    burnerKilowatts: 0,
    ovens: [],
    grills: count(0),
    fryers: count(0),
    fridgeLitres: 0,
    freezerLitres: 0,
    pans: [],
    trays: count(0),
    containers: [],
    machines: [],
    ovenMinutesPer10C: minutes(0),
    ovenTolerance: celsius(0),
  },
  packs: [],
  spare: share(0),
  foodCostTarget: share(0),
  taxRate: share(0),
});
