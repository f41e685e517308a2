const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/).filter((w) => w !== ""));

/** What has been done to a food before it is weighed or after: "chopped". They stand before the food or after it. */
export const preparationWords = words(`
  chopped diced cubed sliced minced grated shredded crushed peeled unpeeled cored deseeded de-seeded seeded stoned
  pitted destoned halved quartered trimmed topped tailed topped-and-tailed picked torn crumbled flaked mashed puréed pureed blended beaten whisked
  whipped sifted sieved rinsed washed scrubbed drained soaked squeezed strained zested juiced julienned slivered
  shaved pounded ground toasted roasted blanched boiled poached steamed fried sautéed sauteed browned grilled
  caramelised caramelized skinned skinless boned boneless bone-in skin-on filleted butterflied jointed split scored
  segmented separated shelled unshelled podded hulled husked snipped pressed bruised smashed cracked broken shucked
  deveined de-veined cleaned gutted scaled debearded de-bearded spiralised riced chiffonade brunoise cut carved
  trussed marinated cured stewed seasoned grounded grinded hard-boiled soft-boiled dressed scalded heated pulped reserved divided packed heaped levelled sieved creamed dissolved
  defrosted thawed tied scraped stemmed de-stemmed destemmed destalked stripped wiped patted desalted pricked
  sharpened rolled flattened tenderised shaken stirred crumbed parboiled par-boiled pre-cooked precooked unwashed
  melted clarified softened reconstituted rehydrated hydrated`);

// Words that end like something done and are not.
const notDone = words(
  "loose-bottomed sized recommended preferred suggested needed required desired advised called based used red seed seeds weed feed need bleed linseed aniseed flaxseed rapeseed seaweed poppyseed breed mixed assorted unsalted salted",
);

/** True for a word that says what was done to a food, listed or by its ending ("scalded"). */
export const isDoneWord = (word: string): boolean =>
  preparationWords.has(word) ||
  (/^[a-z-]{3,}ed$/.test(word) &&
    !notDone.has(word) &&
    !otherFoodWords.has(word) &&
    !/seed$|weed$/.test(word));

/** Foods that mean their dried or ground form when a teaspoon of them is asked for and nothing says fresh; common practice. */
export const driedByTheSpoon: ReadonlyMap<string, string> = new Map([
  ["coriander", "coriander-seed"],
  ["ginger", "ground-ginger"],
  ["thyme", "dried-thyme"],
  ["fresh-oregano", "dried-oregano"],
  ["basil", "dried-basil"],
  ["rosemary", "dried-rosemary"],
  ["sage", "dried-sage"],
  ["tarragon", "dried-tarragon"],
  ["dill", "dried-dill"],
]);

/** How warm, fresh or firm a food is when it goes in. */
export const stateWords = words(`
  cold warm hot boiling lukewarm tepid chilled iced ice-cold frozen fresh ripe overripe over-ripe unripe cooked
  uncooked raw leftover left-over stale soft soften firm-ripe day-old melted softened defrosted thawed chilled
  hand-hot blood-warm simmering freshly-boiled cooled dried dry`);

/** Words that say how something was done, or how good it is; no food is named by them. */
export const qualityWords = words(`
  finely roughly coarsely thinly thickly freshly lightly very well fairly quite gently loosely firmly tightly
  carefully evenly diagonally lengthways lengthwise crosswise crossways neatly newly freshly-ground
  good best nice quality good-quality high-quality fine decent proper favourite favorite organic free-range unwaxed
  assorted additional extra more of the your my our any other optional approx plump young tender enough some lean firm
  untreated unflavored unflavoured unsweetened tough sweet spicy mild hot-or-mild cut each mixed
  homemade home-made shop-bought store-bought bought quick-cook handful
  sized medium-sized good-sized bite-sized bite-size thick thin heaped prepared prepped
  non-uht uht long-life farmhouse country homestyle everyday breakfast stoneground stone-ground assorted seasonal local real pure plain-old ready-made pre-made ready-to-eat`);

/** Words after a food's name that name no other food: cuts, shapes and forms. */
export const formWords = words(`
  leaf leaves sprig sprigs fillet fillets filet filets piece pieces chunk chunks slice slices cube cubes strip strips
  half halves quarter quarters wedge wedges ring rings round rounds stick sticks stalk stalks stem stems spear spears
  frond fronds floret florets head heads bulb bulbs clove cloves bunch bunches root roots flesh meat whole steak steaks joint
  joints portion portions bits shavings curls ribbons batons matchsticks segments tips tip tops crowns
  bone bones bone-in boneless skinless skin skin-on kernels seeds-in pods pod pulp powder-fine powder
  can tin tins cans jar thread threads strand strands bag bags sheet sheets ball balls link links rasher rashers
  cutlet cutlets chop chops loin loins tail tails side sides breast breasts thigh thighs drumstick drumsticks wings
  nests flakes crumbs granules liquid concentrate pellets hearts heart rib ribs blade blades grains coins mix
  variety varieties brand style type size one ones part parts only`);

/** Words that end a food's name: what follows is a purpose, a choice, a remark. */
export const tailWords = words(`
  for to or plus at with without from in into until till if such like about approx approximately as per
  depending enough preferably ideally but more including on than that which when optional roughly around
  weighing from each left leaving used using you q mixed - e.g eg i.e ie not is are should will works divided`);

/** Words of colour and cut that stand before a food and, apart from it, name none. */
export const bareAdjectives = words(`
  red green yellow white black brown purple light dark bone-in skin-on skinless boneless long short sour
  salted unsalted smoked unsmoked plain full low high half-fat lean unsweetened unflavored unflavoured active
  self-raising strong wholemeal whole large small medium big`);

/** Words that only say again what kind of thing a food is: a Tabasco sauce is Tabasco. The shelves they may stand for. */
export const kindWords: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ["bread", words("bread")],
  ["loaf", words("bread")],
  ["loaves", words("bread")],
  ["roll", words("bread")],
  ["rolls", words("bread")],
  ["cheese", words("dairy")],
  ["pasta", words("dry")],
  ["noodles", words("dry")],
  ["rice", words("dry")],
  ["sauce", words("oils tins other")],
  ["wine", words("drinks")],
  ["fish", words("fish")],
  ["herb", words("herbs")],
  ["herbs", words("herbs")],
  ["spice", words("spices")],
  ["sausage", words("meat")],
  ["sausages", words("meat")],
  ["ham", words("meat")],
  ["mushroom", words("vegetables")],
  ["mushrooms", words("vegetables")],
  ["salad", words("vegetables")],
]);

/** Modifiers that turn a food into another which it must not be taken for. */
export const otherFoodWords = words(`
  vegan vegetarian plant-based plant dairy-free non-dairy nondairy gluten-free wheat-free egg-free nut-free lactose-free
  soya soy oat rice almond coconut cashew hemp mock imitation artificial substitute alternative replacement flavoured
  flavored flavour flavor flavouring flavoring alcohol-free non-alcoholic sugar-free meatless meat-free eggless
  veggie quorn dairy`);

/** Heads that make a new food with the food before them: an apple butter is no butter. */
export const compoundHeads = words(`
  butter milk cream cheese flour oil sauce paste powder vinegar juice syrup stock broth sugar seed seeds bread cake
  cakes jam spread salt pepper soup salad pie pudding biscuit biscuits ice jelly tea wine liqueur dressing
  mustard essence extract chips crisps pastry dough noodles dumplings ketchup chutney relish curd`);

/** Heads that name a food of their own after any noun: nobody knows what is in an unknown one. */
export const strangeHeads = words(
  "pepper peppers butter milk flour paste powder syrup jam spread extract essence sauce",
);

/** Things on a list that nobody eats. */
export const equipmentWords = words(`
  tin tins ring rings parchment foil skewer skewers toothpick toothpicks string twine muslin cheesecloth clingfilm cling film
  ramekin ramekins bag-for cocktail-stick cocktail-sticks paper cases liners liner wrap plank flask flasks thermometer
  bowl pan pot oven wok grill smoker knife board spatula whisk mixer blender processor tray tin-foil
  greaseproof tongs cutter cutters ladle sieve rolling-pin syringe cooker skillet jar jars bottle bottles mould moulds
  nozzle nozzles marble marbles charcoal stone dish dishes thermos chips-wood tray trays pot pots`);

/** Parts of a whole that a line may ask for by its count. */
export const portionWords: ReadonlyMap<string, string> = new Map([
  ["juice", "juice"],
  ["juices", "juice"],
  ["zest", "zest"],
  ["rind", "zest"],
  ["peel", "zest"],
  ["yolk", "yolk"],
  ["yolks", "yolk"],
  ["white", "white"],
  ["whites", "white"],
  ["egg-yolk", "yolk"],
  ["egg-yolks", "yolk"],
  ["egg-white", "white"],
  ["egg-whites", "white"],
]);

/** Verbs after "to" that make a purpose ("to serve"). */
export const purposeVerbs = words(`
  serve garnish taste finish decorate drizzle dust grease cover coat fry season top sprinkle glaze brush scatter
  dress accompany fill line roll thicken thin deglaze adjust cook make sweeten moisten prevent bind marinate baste
  shallow shallow-fry deep deep-fry pan-fry stir-fry dip toss add mix knead blend soak poach boil roast bake plate spread sauté saute your preference`);
