import type { Celsius, Grams, Minutes, Share } from "../measure/units.ts";

/** The name of a row of the food table: kebab-case English ("spring-onion"). */
export type FoodId = string;

/** The 14 groups of Regulation (EU) 1169/2011, Annex II, in its order. */
export const allergenGroups = [
  "gluten",
  "crustaceans",
  "eggs",
  "fish",
  "peanuts",
  "soya",
  "milk",
  "nuts",
  "celery",
  "mustard",
  "sesame",
  "sulphites",
  "lupin",
  "molluscs",
] as const;
/** One of the 14 groups. */
export type AllergenGroup = (typeof allergenGroups)[number];

/** How sure the table is: in the food itself; in most products sold as it; read the label of the one you buy. */
export type AllergenGrade = "certain" | "typical" | "check";

/** An allergen of a food, by its group and how sure the table is. */
export type FoodAllergen = {
  readonly group: AllergenGroup;
  /** The cereal, the nut, the fish where the law wants it named ("wheat", "hazelnut"); null otherwise. */
  readonly kind: string | null;
  readonly grade: AllergenGrade;
};

/** Facts that diets turn on. Present means the food is or holds it. */
export const dietFacts = [
  "meat",
  "pork",
  "beef",
  "poultry",
  "fish",
  "shellfish",
  "dairy",
  "egg",
  "honey",
  "gelatine",
  "animal-rennet",
  "alcohol",
  "caffeine",
] as const;
/** One of the facts that diets turn on. */
export type DietFact = (typeof dietFacts)[number];

/** What can go wrong with a food in the kitchen; the safety stage holds what follows from each. */
export const hazardKinds = [
  "raw-egg",
  "raw-poultry",
  "raw-meat",
  "raw-mince",
  "raw-fish",
  "raw-shellfish",
  "liver",
  "raw-milk",
  "soft-cheese",
  "cooked-rice",
  "raw-beans",
  "raw-flour",
  "smoked-fish",
  "high-mercury-fish",
  "cured-meat",
  "sprouts",
  "choking",
  "wild-mushroom",
] as const;
/** One of the hazards of foods. */
export type HazardKind = (typeof hazardKinds)[number];

/** Grams in 100 g of the edible food, unless said. null is unknown, never zero. Source: USDA SR28 where ndb is set. */
export type Nutrients = {
  readonly water: number | null;
  /** As SR28 gives it; the label's own energy is computed from its factors. */
  readonly kcal: number | null;
  readonly protein: number | null;
  readonly fat: number | null;
  readonly saturates: number | null;
  /** By difference, fibre included (the US meaning). The EU's is this less fibre. */
  readonly carbohydrate: number | null;
  readonly sugars: number | null;
  readonly fibre: number | null;
  /** Milligrams. */
  readonly sodium: number | null;
  readonly ash: number | null;
  /** Ethanol; SR28's short table has no such column, so it is known only where the food table states it. */
  readonly alcohol: number | null;
};

/** The weight of one piece, edible portion: "medium" onion, "clove", "stick", "leaf", "bunch", "slice". */
export type Piece = { readonly name: string; readonly grams: Grams };

/** The aisles that foods are bought from; purchase lists are grouped by them. */
export const shelves = [
  "vegetables",
  "fruit",
  "herbs",
  "meat",
  "poultry",
  "fish",
  "dairy",
  "eggs",
  "bread",
  "dry",
  "tins",
  "oils",
  "spices",
  "baking",
  "sweet",
  "frozen",
  "drinks",
  "other",
] as const;
/** One of the aisles. */
export type Shelf = (typeof shelves)[number];

/** One food of the table. */
export type Food = {
  readonly id: FoodId;
  /** UK name, singular, as it is printed. */
  readonly name: string;
  readonly plural: string;
  /** US name where it differs, else null. */
  readonly nameUs: string | null;
  /** Other names that cooks write, lower case, singular and plural. */
  readonly aliases: readonly string[];
  readonly shelf: Shelf;
  /** USDA SR28 food number the composition comes from; null when there is none. */
  readonly ndb: string | null;
  readonly nutrients: Nutrients;
  /** Grams a millilitre as spooned or poured; null when unknown. */
  readonly density: number | null;
  /** The piece that a bare count means ("2 onions") comes first. */
  readonly pieces: readonly Piece[];
  /** Edible portion ÷ as purchased when prepared the usual way (peeled, cored, boned): 1 when nothing is lost. */
  readonly trim: Share;
  readonly allergens: readonly FoodAllergen[];
  readonly diet: readonly DietFact[];
  /** Of the food as it is bought. A compound has its own, not those of what went into it: baked bread is not raw flour. */
  readonly hazards: readonly HazardKind[];
  /** Days it keeps in the fridge from purchase; null when it needs none or is unknown. */
  readonly fridgeDays: number | null;
  /** Foods that a compound is made of, most first, as its label would list them ("mayonnaise"); empty for a simple food. */
  readonly madeOf: readonly string[];
  readonly note: string;
  readonly source: string;
};

/** A kitchen verb in the technique table: kebab-case ("sweat", "bring-to-boil"). */
export type TechniqueId = string;

/** hands: one pair, all the time. mind: a share of one pair. none: it goes alone. */
export const attentions = ["hands", "mind", "none"] as const;
/** One of the three kinds of attention. */
export type Attention = (typeof attentions)[number];

/** Where work is done. */
export const stations = [
  "hands",
  "bench",
  "burner",
  "oven",
  "grill",
  "fryer",
  "fridge",
  "freezer",
  "ice-bath",
  "machine",
] as const;
/** One of the places where work is done. */
export type Station = (typeof stations)[number];

/** Stations that give heat. */
export const hotStations: ReadonlySet<Station> = new Set<Station>(["burner", "oven", "grill", "fryer"]);

/** Heat as a word: a burner's level, or that of the oven; none for cold work. */
export const heats = ["low", "medium", "high", "oven", "none"] as const;

/** How the length of a technique follows the amount of food. */
export const timeLaws = [
  /** The same for any amount (bake, simmer, prove). */
  "fixed",
  /** Set-up and then so many minutes a kilo (peel, chop). */
  "per-kilo",
  /** Set-up and then so many minutes a piece or portion (shape, fill, plate). */
  "per-piece",
  /** Once for each batch that the vessel holds (fry, sear). */
  "per-batch",
  /** With the mass to be heated (bring to the boil). */
  "heating",
] as const;

/** What a time that a card states grows with when there is more of the food, or less. */
export const growths = [
  /** The same for any amount (prove, infuse). */
  "none",
  /** Beyond the set-up, with the pieces or portions. */
  "pieces",
  /** Beyond the set-up, with the mass. */
  "mass",
  /** With the batches. */
  "batches",
  /** With the mass on each burner. */
  "power",
  /** With the thickest piece, or the size of the pot (roast, cool). */
  "thickness",
  /** With how deep it stands under its surface (reduce). */
  "surface",
] as const;

/** What a rate of hand work is counted by. */
export const ratePers = ["kilo", "piece"] as const;
/** One of the two. */
export type RatePer = (typeof ratePers)[number];

/** What a technique does to the mass of the food. */
export const massEffects = [
  "none",
  /** Water is lost to the air. */
  "evaporates",
  /** Water or fat is taken up. */
  "absorbs",
  /** A part is thrown away. */
  "trims",
  /** Liquid is poured off. */
  "drains",
] as const;

/** What a verb means in a kitchen: where, who, how hot, how long, and what it does to the food. */
export type Technique = {
  readonly id: TechniqueId;
  /** Verb forms that cooks write, lower case, base form ("sweat", "soften"). */
  readonly verbs: readonly string[];
  readonly station: Station;
  readonly attention: Attention;
  /** What is meant when the card names no heat. */
  readonly heat: (typeof heats)[number];
  readonly law: (typeof timeLaws)[number];
  readonly grows: (typeof growths)[number];
  /** Least, likely, most minutes when the words state none: whole for "fixed", per unit for the other laws. */
  readonly minutes: { readonly low: Minutes; readonly likely: Minutes; readonly high: Minutes };
  /** Minutes that do not grow with the amount. */
  readonly setUp: Minutes;
  /** Minutes of one pair of hands to start and to end it, when it then goes alone (load and unload an oven). */
  readonly handling: Minutes;
  readonly mass: (typeof massEffects)[number];
  /** Part of the mass lost (trims, drains, evaporates) or gained (absorbs) in the usual time; 0 when none. */
  readonly massShare: number;
  /** True when it cooks a raw animal food through, done as usual. */
  readonly kills: boolean;
  /** Lowest and highest sensible setting, °C; null when it has none. */
  readonly celsius: { readonly low: Celsius; readonly high: Celsius } | null;
  /** Work that belongs before the method (peel, chop, weigh). */
  readonly miseEnPlace: boolean;
  readonly source: string;
};
