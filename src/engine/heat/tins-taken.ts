import { metres } from "../measure/heat-units.ts";
import type { Kitchen, KitchenTin } from "../model/sitting.ts";
import type { CardTins } from "./card-tins.ts";
import { sameTin, type Tin, tinArea } from "./tins.ts";

/** The tins that a card is baked in at a size, in a kitchen. */
export type TinsTaken = {
  readonly tins: number;
  readonly tin: Tin;
  /** How much deeper it stands in them than on the card. */
  readonly deeper: number;
  /** Those of the kitchen; null where it lists no tins, or has none that would do. */
  readonly here: KitchenTin | null;
  /** Of the card's own size and form. */
  readonly same: boolean;
};

/** A floor up to so much smaller or larger than the card's does instead. Common practice, no source. */
const smallest = 0.6;
const largest = 1.7;

/** A tin of the kitchen as a floor. */
export const floorOfTin = ({ form, wideCm, longCm }: KitchenTin): Tin =>
  form === "round"
    ? { form: "round", diameter: metres(wideCm / 100) }
    : { form: "rectangle", long: metres(longCm / 100), wide: metres(wideCm / 100) };

/** As many whole tins of one floor as come nearest, and how much deeper it then stands in them than on the card. */
const howMany = (floors: number): { readonly tins: number; readonly deeper: number } => {
  const tins = Math.max(1, Math.round(floors));
  return { tins, deeper: floors / tins };
};

/**
 * The tins that so many times a card is baked in: the card's own where the kitchen has them or lists none, else those
 * whose floor is nearest to theirs. A loaf is baked in loaf tins, and nothing else is.
 */
export const tinsTaken = (card: CardTins, factor: number, kitchen: Pick<Kitchen, "tins">): TinsTaken => {
  const own = { ...howMany(card.count * factor), tin: card.tin, here: null, same: true };
  if (kitchen.tins === undefined) return own;
  const area = tinArea(card.tin);
  const able = kitchen.tins.filter((tin) => tin.count > 0 && (tin.form === "loaf") === card.loaf);
  const alike = able.find((tin) => sameTin(floorOfTin(tin), card.tin));
  if (alike !== undefined) return { ...own, tin: floorOfTin(alike), here: alike };
  const apart = (tin: KitchenTin): number => Math.abs(Math.log(tinArea(floorOfTin(tin)) / area));
  const [near] = able
    .filter((tin) => {
      const ratio = tinArea(floorOfTin(tin)) / area;
      return ratio >= smallest && ratio <= largest;
    })
    .toSorted((a, b) => apart(a) - apart(b));
  if (near === undefined) return { ...own, same: false };
  const floor = floorOfTin(near);
  return {
    ...howMany((card.count * factor * area) / tinArea(floor)),
    tin: floor,
    here: near,
    same: false,
  };
};
