const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter((w) => w !== ""));

/** Words between two clauses. */
export const joints = set(', and then or & : ( ) - – — / but so plus [ ] • + " “ ”');

/** Words that a cook puts before the verb and that say nothing about it. */
export const openers = set(
  `now then next finally meanwhile afterwards lastly first firstly secondly also just again please always simply once-more
  immediately carefully gently slowly quickly lightly roughly finely thinly thickly gradually well evenly thoroughly
  coarsely briefly generously liberally loosely tightly firmly vigorously constantly continuously occasionally
  optionally alternatively ideally preferably okay ok right so basically quickly partially completely fully very
  still only rough to-serve twice repeatedly neatly softly tenderly together separately easily i'd either`,
);

/** Words after which a base form is an order or a plan: "you can add", "I'm going to sweat". */
export const modals = set(
  "can could should will would must may might you we i they you'll we'll i'll let's 'll gonna wanna please i'd we'd you'd 'd do'",
);

/** Words after which "to" and a verb is a plan: "going to fry", "you want to stir". */
export const planners = set(
  "going want wants need needs have has got like start begin starting beginning continue continued try ready remember sure wanting need'",
);

/** Forms of "be" and its like, before a participle. */
export const beings = set("is are be been being get gets was were it's they're i'm that's");

/** Words that open a condition or a cue; the verbs behind them are not orders. */
export const subordinators = set(
  "until till when once if as while whilst that which where because since so-that unless whenever before after who whether than how what why just-until 'til til lest",
);

/** Prepositions and the like with which a sentence may open before its verb. */
export const prepositions = set(
  "in with using on over for at from into under to by without inside onto through off along beside per of",
);

/** Before a noun. */
export const determiners = set(
  "the a an your each both some any all this that these those its their my our every another half one two three four five six eight ten more other it them remaining rest most",
);

/** Verbs that are as often a noun; they are orders only when a determiner, a number or a known food follows. */
export const nounVerbs = set(
  `lard level dry crisp casserole barbecue griddle microwave wok butter oil flour salt cream ice juice zest bread rice sauce dish plate pot can jar bottle bag box spice dress pepper
  seed stone bone skin shell string sugar foil water top use sauce core pit pod ball joint fillet press place
  form measure scale cure smoke heat cover crumb frost stud cap tent weight run hand hold raise double test look watch
  charge present box load pack tie set share cut pair score label salt season stock color colour pickle brine rub
  roll shower crown glaze flame work dust finish splash fold pop process turn return do make feed spin box try mature gel
  stick open proof lower change rest dip mix ground lay  grill steam stew roast toast mash 
  brown slice cube dice mince peel chop     shake   broil    `,
);

/** Of those, the ones that are orders at the start of a sentence whatever follows. */
export const usuallyVerbs = set(
  `dry crisp season place roll press form measure heat cover rub cut set hold test turn return make finish fold work process pack
  lay boil grill steam stew roast toast mash cook brown slice cube dice mince peel chop grate crush stir sweat shake
  poach simmer broil blend whip puree shape mix rest dip use top pop do run present load tie share score dust glaze
  splash splatter try look watch open lower change proof raise double feed pickle spin present hand colour color charge dress`,
);

/** Verbs that say little; they count only when the sentence has no other. */
export const weakVerbs = set(
  "use have get see try look need find choose procure select do ensure buy check watch smell make-sure develop age mature stay offer present",
);

/** Verbs that bring something to what is already there. */
export const joiningTechniques = set(
  `add pour season sprinkle drizzle top garnish fold deglaze put layer fill dress spread brush arrange baste fill-glass
  thicken stir toss ice stud salt serve plate feed temper rub-in wrap dip bread`,
);

/** Techniques that take nothing up and hold nothing: they steer heat, tools or the oven. */
export const steeringTechniques = set("preheat adjust-heat taste use run-machine warm-plates");

/** Words for what the cook has in hand. */
export const pronouns = set("it them this these that those everything they lot");

/** Words that name a product only when one by that name was made; else they are a food or a vessel. */
export const borrowedNouns = set(
  `white yolk meat fish vegetable veg potato rice pasta noodle bird joint leaf liquid stock bread powder rub
  seasoning pot tin tray pan dish bowl mould ramekin piece slice spread dip curd whey`,
);

/** What the mixture may be called though nobody named it. */
export const productNouns: ReadonlySet<string> = new Set([
  ...set(
    `mixture mix batter dough sauce filling pastry soup stew marinade dressing syrup custard paste meringue glaze
    icing crumble topping base stuffing puree broth patty dumpling ball ganache frosting caramel jam jelly curry
    gravy crust ragu risotto salad slaw crumb roux liquor juice brine cake loaf bun roll biscuit cookie scone
    tart pie pudding mousse omelette pancake crepe fritter burger meatball casserole gratin compote chutney
    pickle relish salsa pesto vinaigrette mayonnaise hummus starter sponge leaven pizza flatbread tortilla log
    sausage kebab skewer parcel square disc round shape content lot foam fat fond cutlet croquette schnitzel
    muffin brownie bar shortbread wedge chunk mash porridge oatmeal cream roast blend coating wash remainder
    rest dripping case`,
  ),
  ...borrowedNouns,
]);

/** Vessels that stand on a burner. */
export const pans = set("pan saucepan pot skillet wok casserole");

/** Vessels that food is put into and taken out of. */
export const vessels: ReadonlySet<string> = new Set([
  ...pans,
  "bowl",
  "tin",
  "dish",
  "basin",
  "tray",
  "mould",
]);

/** Vessels and tools, by which a stretch of words is known to be no food. */
export const tools = set(
  `pan saucepan pot skillet wok casserole bowl dish tin tray sheet rack board oven jug blender processor mixer sieve
  colander masher knife press squeezer cooker peeler slicer spoon cutter plate ramekin mould mold brush whisk fork
  grater mill grinder pin paper foil bag jar glass cloth towel lid ladle spatula thermometer machine maker steamer dutch
  bench counter worktop surface freezer fridge refrigerator grill griddle barbecue hob stove fryer microwave kettle cup liner`,
);

/** Stations where food is cooked in the open. */
export const burners: ReadonlySet<string> = new Set(["burner", "grill", "fryer"]);

/** Techniques that make one mixture of several things. */
export const mixes: ReadonlySet<string> = new Set(
  "mix whisk beat cream blend stir toss knead rub-in mash fold whisk-whites whip-cream".split(" "),
);

/** Names of what only seasons or coats. */
export const seasoning =
  /\b(salt|pepper|peppercorns?|cayenne|nutmeg|mace|paprika|seasoning|sugar|vinegar|lemon|lime|soy|sauce|spices?|cumin|chilli|powder|mustard|herbs?|thyme|oil|egg|milk|flour|breadcrumbs)\b/;

/** Words that mean all that was got ready. */
export const several = new Set("these them those everything".split(" "));

/** Words that mean all bowls together. */
export const allOfThem = new Set("everything together mixtures both".split(" "));

/** What is done to food before it goes into the pan. */
export const gotReady =
  "shape chill season marinate bread dip roll-out pat-dry salt rub brush truss cut slice fillet split".split(
    " ",
  );

/** Techniques that carry food into the pot. */
export const carriers = new Set(
  "add put pour fold stir toss deglaze sprinkle top garnish drizzle".split(" "),
);

/** Techniques that are done to the food that is named, beside the pot. */
export const onObject = new Set("season salt dip bread dress".split(" "));
