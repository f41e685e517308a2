/** Which form of a verb a word is; "past" is the past tense and the participle ("chopped", "beaten"). */
export type VerbForm = "base" | "third" | "ing" | "past";

const irregularPast: Readonly<Record<string, readonly string[]>> = {
  beat: ["beaten", "beat"],
  bind: ["bound"],
  break: ["broken", "broke"],
  bring: ["brought"],
  build: ["built"],
  burn: ["burnt", "burned"],
  buy: ["bought"],
  choose: ["chosen"],
  come: ["came", "come"],
  cut: ["cut"],
  do: ["done"],
  draw: ["drawn"],
  eat: ["eaten"],
  feed: ["fed"],
  find: ["found"],
  freeze: ["frozen"],
  get: ["got"],
  grind: ["ground"],
  go: ["gone", "went"],
  hang: ["hung"],
  have: ["had"],
  hold: ["held"],
  keep: ["kept"],
  knead: ["kneaded"],
  lay: ["laid"],
  leave: ["left"],
  let: ["let"],
  lie: ["lain"],
  make: ["made"],
  melt: ["melted", "molten"],
  put: ["put"],
  rise: ["risen", "rose"],
  run: ["run"],
  see: ["seen"],
  send: ["sent"],
  set: ["set"],
  shake: ["shaken"],
  sit: ["sat"],
  slide: ["slid"],
  slit: ["slit"],
  spin: ["spun"],
  split: ["split"],
  spread: ["spread"],
  stand: ["stood"],
  take: ["taken", "took"],
  tear: ["torn"],
  throw: ["thrown"],
  wet: ["wet", "wetted"],
  wring: ["wrung"],
};

const doubling = /^(?:[^aeiou]*|.*[^aeiou])[aeiou][bdgklmnprt]$/;
// Stress falls before the last syllable, or the word is long: no doubling.
const single = new Set([
  "cover",
  "uncover",
  "simmer",
  "water",
  "butter",
  "flavor",
  "temper",
  "color",
  "layer",
  "season",
  "thicken",
  "soften",
  "moisten",
  "loosen",
  "sweeten",
  "sharpen",
  "blacken",
  "quarter",
  "portion",
  "filter",
  "scatter",
  "shower",
  "pepper",
  "fillet",
  "blister",
  "skewer",
  "putter",
  "murmur",
  "gather",
  "open",
  "offer",
  "pocket",
  "render",
  "clean",
  "tumble",
  "joint",
  "linger",
  "develop",
  "ferment",
  "sweat",
  "heat",
]);

const ing = (base: string): string => {
  if (/(ie)$/.test(base)) return `${base.slice(0, -2)}ying`;
  if (/[^eoy]e$/.test(base)) return `${base.slice(0, -1)}ing`;
  if (doubling.test(base) && !single.has(base)) return `${base}${base.at(-1)}ing`;
  return `${base}ing`;
};

const past = (base: string): readonly string[] => {
  const known = irregularPast[base];
  if (known !== undefined) return known;
  if (base.endsWith("e")) return [`${base}d`];
  if (/[^aeiou]y$/.test(base)) return [`${base.slice(0, -1)}ied`];
  if (doubling.test(base) && !single.has(base)) return [`${base}${base.at(-1)}ed`];
  return [`${base}ed`];
};

const third = (base: string): string => {
  if (/(s|x|z|ch|sh|o)$/.test(base)) return `${base}es`;
  if (/[^aeiou]y$/.test(base)) return `${base.slice(0, -1)}ies`;
  return `${base}s`;
};

/** Both spellings of a verb where Britain and America differ in -ise and -ize. */
export const spellings = (base: string): readonly string[] => {
  if (/[a-z]{3}ise$/.test(base)) return [base, `${base.slice(0, -3)}ize`];
  if (/[a-z]{3}ize$/.test(base)) return [base, `${base.slice(0, -3)}ise`];
  return [base];
};

/** Every form of a one-word verb; for "pan-fry" the last part is inflected. The base form comes first. */
export const verbForms = (base: string): readonly { readonly word: string; readonly form: VerbForm }[] => {
  const cut = base.lastIndexOf("-") + 1;
  const head = base.slice(0, cut);
  const verb = base.slice(cut);
  return [
    { word: base, form: "base" },
    { word: head + third(verb), form: "third" },
    { word: head + ing(verb), form: "ing" },
    ...past(verb).map((word) => ({ word: head + word, form: "past" as const })),
  ];
};
