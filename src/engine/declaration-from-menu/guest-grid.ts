import type { GuestVerdict } from "../model/declaration.ts";
import type { Menu, MenuDish, Version } from "../model/menu.ts";
import type { Guest } from "../model/sitting.ts";
import type { Cards } from "./entries.ts";
import { reasonsAgainst } from "./reasons-against.ts";

/** Each guest with each dish: may it be offered, and if not as written, because of what. Absence is never promised. */
export const guestGrid = (menu: Menu, cards: Cards): readonly GuestVerdict[] =>
  menu.sitting.guests.flatMap((guest) => menu.dishes.map((onMenu) => verdict(guest, onMenu, cards)));

const verdict = (guest: Guest, onMenu: MenuDish, cards: Cards): GuestVerdict => {
  const { dish } = onMenu;
  const reasons = (version: Version): GuestVerdict["because"] => reasonsAgainst(guest, dish, version, cards);
  const written = onMenu.versions.find((v) => v.swaps.length === 0) ?? null;
  const served = onMenu.versions.find((v) => v.guests.includes(guest.name)) ?? null;
  const version = served ?? written;
  const say = (
    answer: GuestVerdict["answer"],
    because: GuestVerdict["because"],
    by: Version | null,
  ): GuestVerdict => ({ guest: guest.name, dish: dish.source, version: by?.id ?? null, answer, because });

  const refused = onMenu.unserved.filter((u) => u.guest === guest.name);
  if (version === null) return say(refused.length > 0 ? "no" : "check", refusals(onMenu, refused), null);
  const against = reasons(version);
  if (against.some((r) => r.grade === "certain" || r.grade === "typical")) return say("no", against, null);
  if (against.length > 0) return say("check", against, version);
  // The menu found something against every version; its word stands even where nothing is found here.
  if (refused.length > 0 && served === null) return say("no", refusals(onMenu, refused), null);
  // A card on which no food was read says nothing for or against anybody.
  if (!dish.ingredients.some((i) => !i.equipment) && guest.needs.length > 0)
    return say("check", unread(guest, dish.title), version);
  if (version.swaps.length === 0) return say("yes", [], version);
  return say("swap", written === null ? [] : reasons(written), version);
};

const unread = (guest: Guest, title: string): GuestVerdict["because"] =>
  guest.needs.map((need) => ({ need, ingredient: null, name: title, grade: "unknown" as const }));

const refusals = (onMenu: MenuDish, refused: MenuDish["unserved"]): GuestVerdict["because"] =>
  refused.flatMap(({ need, ingredients }) =>
    (ingredients.length === 0 ? [null] : ingredients).map((ingredient) => ({
      need,
      ingredient,
      name:
        (ingredient === null ? undefined : onMenu.dish.ingredients[ingredient]?.name) ?? onMenu.dish.title,
      grade: "unknown" as const,
    })),
  );
