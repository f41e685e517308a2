import type { Food } from "../model/food.ts";

const pouring =
  /(^|-)(water|stock|broth|bouillon|dashi|milk|buttermilk|cream|juice|passata|wine|cider|beer|ale|stout)(-|$)/;

/** True for what things are cooked in and what pours: water, stock, milk, cream, wine, juice. */
export const isLiquid = (food: Food): boolean =>
  food.shelf === "drinks" || ((food.nutrients.water ?? 0) >= 50 && pouring.test(food.id));

/** True for liquids whose only part is to be the liquid, so that more or less of them changes no flavour: water and stock. */
export const isPlainLiquid = (food: Food): boolean => food.id === "water" || /(^|-)stock$/.test(food.id);
