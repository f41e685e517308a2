import type {
  AllergenGrade,
  AllergenGroup,
  Attention,
  GuestVerdict,
  HazardKind,
  LagReason,
  SafetyPoint,
  Shelf,
  Station,
} from "#engine/index.ts";

/** Names of the stations. */
export const stationLabels: { readonly [S in Station]: string } = {
  hands: "hands",
  bench: "bench",
  burner: "burner",
  oven: "oven",
  grill: "grill",
  fryer: "fryer",
  fridge: "fridge",
  freezer: "freezer",
  "ice-bath": "ice bath",
  machine: "machine",
};

/** What each kind of attention asks of a cook. */
export const attentionLabels: { readonly [A in Attention]: string } = {
  hands: "hands on",
  mind: "keep an eye on it",
  none: "goes alone",
};

/** Aisles of a purchase list, in the order they are walked. */
export const shelfLabels: { readonly [S in Shelf]: string } = {
  vegetables: "Vegetables",
  fruit: "Fruit",
  herbs: "Herbs",
  meat: "Meat",
  poultry: "Poultry",
  fish: "Fish and shellfish",
  dairy: "Dairy",
  eggs: "Eggs",
  bread: "Bread",
  dry: "Dry goods",
  tins: "Tins and jars",
  oils: "Oils and vinegars",
  spices: "Spices and salt",
  baking: "Baking",
  sweet: "Sweet things",
  frozen: "Frozen",
  drinks: "Drinks",
  other: "Other",
};

/** The groups of Regulation (EU) 1169/2011, Annex II, in everyday words. */
export const allergenLabels: { readonly [G in AllergenGroup]: string } = {
  gluten: "cereals with gluten",
  crustaceans: "crustaceans",
  eggs: "eggs",
  fish: "fish",
  peanuts: "peanuts",
  soya: "soya",
  milk: "milk",
  nuts: "nuts",
  celery: "celery",
  mustard: "mustard",
  sesame: "sesame",
  sulphites: "sulphites",
  lupin: "lupin",
  molluscs: "molluscs",
};

/** How sure a statement is. */
export const gradeLabels: { readonly [G in AllergenGrade | "unknown"]: string } = {
  certain: "holds it",
  typical: "holds it in most products",
  check: "read the label",
  unknown: "not understood, could hold anything",
};

/** How surely something stands against a guest's need; nothing is added to what is certain. */
export const againstLabels: { readonly [G in AllergenGrade | "unknown"]: string } = {
  certain: "",
  typical: "in most products",
  check: "to be asked or read",
  unknown: "not understood, could be anything",
};

/** Stands before the dishes in whose words nothing was found against a guest's needs. */
export const nothingFoundIn = "nothing found in the words of";

/** Answers of the guest-by-dish grid. None of them is a promise. */
export const answerLabels: { readonly [A in GuestVerdict["answer"]]: string } = {
  yes: "nothing found",
  swap: "swap",
  check: "ask",
  no: "not this",
};

/** What can go wrong with a food. */
export const hazardLabels: { readonly [H in SafetyPoint["hazard"]]: string } = {
  "raw-egg": "raw or soft egg",
  "raw-poultry": "raw poultry",
  "raw-meat": "raw meat",
  "raw-mince": "minced meat",
  "raw-fish": "raw fish",
  "raw-shellfish": "raw shellfish",
  liver: "liver",
  "raw-milk": "unpasteurised milk",
  "soft-cheese": "soft cheese",
  "cooked-rice": "cooked rice",
  "raw-beans": "raw beans",
  "raw-flour": "raw flour",
  "smoked-fish": "smoked fish",
  "high-mercury-fish": "fish with much mercury",
  "cured-meat": "cured meat",
  sprouts: "sprouts",
  choking: "choking",
  "wild-mushroom": "wild mushrooms",
  "slow-cooling": "cooling",
  "hot-holding": "holding hot",
  reheating: "reheating",
  "cold-holding": "holding cold",
  "cross-contact": "traces from other dishes",
};

/** What is usually said about each hazard where there is no figure to give. Common practice, no source. */
export const hazardCautions: { readonly [H in HazardKind | "cross-contact"]: string } = {
  "raw-egg": "Raw and soft egg can carry salmonella; pasteurised egg is the usual way round it.",
  "raw-poultry": "Keep it apart from what is eaten raw, and wash hands, boards and knives after it.",
  "raw-meat": "Keep it apart from what is eaten raw, and wash hands, boards and knives after it.",
  "raw-mince": "What was on the outside is now inside: cook it through.",
  "raw-fish": "Fish eaten raw is usually frozen first against parasites; ask the supplier.",
  "raw-shellfish":
    "Raw shellfish is a known cause of illness; buy it from a supplier who can say where it grew.",
  liver: "Cook it through; it is usually advised against in pregnancy for its vitamin A.",
  "raw-milk":
    "Unpasteurised milk is usually advised against for the young, the old, the ill and in pregnancy.",
  "soft-cheese":
    "Soft and blue cheeses are usually advised against in pregnancy unless cooked until steaming.",
  "cooked-rice": "Spores outlive the boiling: cool it fast, keep it cold, and do not keep it long.",
  "raw-beans": "Kidney beans and their kin hold a poison that only a full boil breaks down.",
  "raw-flour": "Flour is a raw food: do not eat the dough or batter uncooked.",
  "smoked-fish":
    "Cold- and hot-smoked fish can carry listeria; it is usually advised against in pregnancy unless cooked until steaming.",
  "high-mercury-fish": "Usually limited or left out in pregnancy and for children.",
  "cured-meat": "Cured meat that is not cooked is usually advised against in pregnancy.",
  sprouts: "Sprouted seeds are a known cause of illness eaten raw; cooking them through is the usual advice.",
  choking: "Small, hard or round pieces can choke a young child.",
  "wild-mushroom": "Only what an expert has named should be cooked.",
  "cross-contact":
    "Make this version first, on washed kit, and keep it covered and named until it is served.",
};

/**
 * Why one task is tied to another, before the other's name: when the other comes after it, and when the other came
 * before it.
 */
export const lagLabels: { readonly [R in LagReason]: { readonly after: string; readonly before: string } } = {
  "uses-product": { after: "what it makes goes into", before: "it uses what is made by" },
  "method-order": { after: "the method puts it before", before: "the method puts it after" },
  "stated-wait": { after: "the card has it wait before", before: "the card has it wait after" },
  "hold-limit": { after: "it may not be held longer before", before: "it may be held only so long after" },
  "fridge-limit": { after: "it may not be kept longer before", before: "it may be kept only so long after" },
  "serve-soon": { after: "it is served soon after, with", before: "it is served soon after" },
  preheat: { after: "it makes the heat ready for", before: "it needs the heat from" },
  "wash-before": { after: "it frees the vessel for", before: "it needs the vessel from" },
  "plate-together": { after: "it lands on the same plates as", before: "it lands on the same plates as" },
};
