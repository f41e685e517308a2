import { cardFromText } from "./card-from-text/card-from-text.ts";
import { brokenFindings } from "./check-from-plan/broken-findings.ts";
import { checkFromPlan } from "./check-from-plan/check-from-plan.ts";
import { checkNight } from "./check-from-plan/check-night.ts";
import { costFromPurchase } from "./cost-from-purchase/cost-from-purchase.ts";
import { declarationFromMenu } from "./declaration-from-menu/declaration-from-menu.ts";
import { declareDish } from "./declaration-from-menu/declare-dish.ts";
import { dishFromCard } from "./dish-from-card/dish-from-card.ts";
import { combineFindings } from "./findings/combine.ts";
import type { Finding } from "./findings/finding.ts";
import { withFoods } from "./larder/foods.ts";
import { loadFromPlan } from "./load-from-plan/load-from-plan.ts";
import { type Count, count } from "./measure/units.ts";
import { menuFromDishes } from "./menu-from-dishes/menu-from-dishes.ts";
import type { Declaration, DishDeclaration } from "./model/declaration.ts";
import type { Dish } from "./model/dish.ts";
import type { Food } from "./model/food.ts";
import type { Load } from "./model/load.ts";
import type { Menu } from "./model/menu.ts";
import type { Outcome } from "./model/outcome.ts";
import type { Plan } from "./model/plan.ts";
import type { Prep, TaskId } from "./model/prep.ts";
import type { Cost, Purchase } from "./model/purchase.ts";
import {
  allowances,
  type Moved,
  type Overrun,
  type Overtime,
  type Progress,
  type Rest,
  type Stuck,
} from "./model/rest.ts";
import type { Risk } from "./model/risk.ts";
import type { SafetySheet } from "./model/safety.ts";
import type { Sheet } from "./model/sheet.ts";
import type { Kitchen, Region, Sitting } from "./model/sitting.ts";
import type { SourceId } from "./model/span.ts";
import type { WriteUp } from "./model/write-up.ts";
import { type ExplainEffort, explainPlan } from "./plan-from-prep/explain-plan.ts";
import { followPlan, planOfPlaces } from "./plan-from-prep/follow-plan.ts";
import type { PlanEffort } from "./plan-from-prep/plan-effort.ts";
import { planFromPrep, planWork } from "./plan-from-prep/plan-from-prep.ts";
import { planWithSpare } from "./plan-from-prep/plan-with-spare.ts";
import { prepFromMenu } from "./prep-from-menu/prep-from-menu.ts";
import { washingAfter } from "./prep-from-menu/washing-after.ts";
import { purchaseFromMenu } from "./purchase-from-menu/purchase-from-menu.ts";
import { asNeeded, overtimeOf } from "./rest-from-plan/as-needed.ts";
import { changesBetween } from "./rest-from-plan/changes-between.ts";
import { isOfSafety, nightFindings } from "./rest-from-plan/night-findings.ts";
import { restFromPlan } from "./rest-from-plan/rest-from-plan.ts";
import { stuckTasks } from "./rest-from-plan/stuck.ts";
import { waitsOver } from "./rest-from-plan/waits-over.ts";
import { type RiskEffort, riskFromPlan } from "./risk-from-plan/risk-from-plan.ts";
import { safetyFromPlan } from "./safety-from-plan/safety-from-plan.ts";
import { sheetFromPrep } from "./sheet-from-prep/sheet-from-prep.ts";
import { sittingOfOne } from "./writeup-from-menu/sitting-of-one.ts";
import { writeUpFromDish } from "./writeup-from-menu/write-up-from-dish.ts";

/** A card's text and the name it goes by. */
export type CardText = { readonly source: SourceId; readonly text: string };

/** Proves a plan against its prep, apart from the planner. */
export const checkPlan = checkFromPlan;

/** Everything that follows from the cards and the sitting. */
export type Evening = {
  readonly dishes: readonly Dish[];
  readonly menu: Menu;
  readonly purchase: Purchase;
  readonly cost: Cost;
  readonly declaration: Declaration;
  readonly prep: Prep;
  readonly plan: Plan;
  readonly safety: SafetySheet;
};

/**
 * Words in, dish out. Any text gives a dish; what is wrong with it is in the findings. Foods of the cook's own are read
 * beside those of the table.
 */
export const readCard = (
  text: string,
  source: SourceId,
  region: Region = "uk",
  ownFoods?: readonly Food[],
): Outcome<Dish, Finding> =>
  withFoods(ownFoods, () => {
    const card = cardFromText(text, source);
    const dish = dishFromCard(card.value, region);
    return { value: dish.value, findings: combineFindings(card.findings, dish.findings) };
  });

/** One card as a document, and what is declared of it as written. */
export type CardWriteUp = {
  readonly dish: Dish;
  readonly declaration: DishDeclaration | null;
  readonly writeUp: WriteUp;
};

/** Words in, document out: the card by itself, in the amounts it gives. */
export const writeUpCard = (
  text: string,
  source: SourceId,
  region: Region = "uk",
  ownFoods?: readonly Food[],
): Outcome<CardWriteUp, Finding> => withFoods(ownFoods, () => documentOf(text, source, region));

const documentOf = (text: string, source: SourceId, region: Region): Outcome<CardWriteUp, Finding> => {
  const read = readCard(text, source, region);
  const dish = read.value;
  const [onMenu] = menuFromDishes(sittingOfOne(dish, region), [dish]).value.dishes;
  const [version] = onMenu?.versions ?? [];
  const declared = version === undefined ? null : declareDish(dish, version, new Map());
  return {
    value: {
      dish,
      declaration: declared?.value ?? null,
      writeUp: writeUpFromDish(dish, declared?.value ?? null),
    },
    findings: combineFindings(read.findings, declared?.findings ?? []),
  };
};

/** One card at another size. */
export type ScaledCard = { readonly dish: Dish; readonly sheet: Sheet | null };

/**
 * Words in, cook's sheet out: the card as written for so many covers (null: its own number), in the pans of this kitchen. The sheet is null when
 * nothing is to be made.
 */
export const scaleCard = (
  text: string,
  source: SourceId,
  covers: number | null,
  kitchen: Kitchen | null,
  region: Region = "uk",
  ownFoods?: readonly Food[],
): Outcome<ScaledCard, Finding> => withFoods(ownFoods, () => scaled(text, source, covers, kitchen, region));

const scaled = (
  text: string,
  source: SourceId,
  covers: number | null,
  kitchen: Kitchen | null,
  region: Region,
): Outcome<ScaledCard, Finding> => {
  const read = readCard(text, source, region);
  const dish = read.value;
  const card = sittingOfOne(dish, region);
  const inKitchen: Sitting = kitchen === null ? card : { ...card, kitchen };
  const wanted = covers === null ? card.covers : count(Math.max(1, Math.floor(covers)));
  const menuFor = (many: Count) => menuFromDishes({ ...inKitchen, covers: many }, [dish]);
  const asked = menuFor(wanted);
  // A card that is silent on how many it feeds has the number that the menu takes it to have.
  const silent = asked.findings.find((finding) => finding.code === "portions-assumed");
  const menu =
    covers === null && silent?.code === "portions-assumed"
      ? menuFor(count(Math.max(1, Math.round(silent.facts.portions))))
      : asked;
  const prep = prepFromMenu(menu.value);
  const [sheet = null] = sheetFromPrep(menu.value, prep.value);
  return {
    value: { dish, sheet },
    findings: combineFindings(
      read.findings,
      menu.findings,
      // Where no kitchen was named, nothing is missing in it.
      prep.findings.filter((finding) => kitchen !== null || finding.code !== "station-missing"),
    ),
  };
};

/** The cook's sheets of an evening, one for each version of each dish. */
export const sheetsOf = ({ menu, prep }: Pick<Evening, "menu" | "prep">): readonly Sheet[] =>
  withFoods(menu.sitting.foods ?? [], () => sheetFromPrep(menu, prep));

/** How hard the first plan is looked for, and proved; a face may ask for more. */
export const firstEffort: PlanEffort = { tries: 80, proof: 4_000, seed: 1 };

/** A plan for what is left of a night. */
export type Replanned = {
  /** The work that is left, and its plan. */
  readonly prep: Prep;
  readonly plan: Plan;
  /** What stands otherwise than before, in order of time. */
  readonly changes: readonly Moved[];
  /** What waits longer than its limit. */
  readonly overruns: readonly Overrun[];
  /** Who is needed after the end of the shift. */
  readonly overtime: readonly Overtime[];
  /** Work that has no place whatever is moved, and why. */
  readonly stuck: readonly Stuck[];
  /** Running work that cannot go on at once. */
  readonly held: readonly TaskId[];
};

/**
 * Plans the rest of a night from how far it is: always all of it, unless what it needs is gone. The plan's own order is
 * kept and pushed as far as it must be. First every limit is kept; where that cannot be, food that is cooked or cooking
 * waits beyond its limit, which is told, rather than that its course does not go; then cooks stay on. What has not begun
 * keeps its limits: nothing is cooked to be spoiled. Where a course is then late, a better plan is looked for, `effort.tries`
 * long: first with fewer minutes over a limit of safety, then with guests waiting less, then with food waiting less.
 */
export const replan = (
  { prep, plan }: Pick<Evening, "prep" | "plan">,
  progress: Progress,
  effort: PlanEffort = firstEffort,
): Outcome<Replanned, Finding> => {
  const priced = (rest: Rest, own: Prep, found: Plan) => {
    const overruns = waitsOver(prep, progress, found.placed);
    const broken = checkFromPlan(own, found).length;
    return { rest, prep: own, plan: found, overruns, price: [broken, ...nightPrice(found, overruns)] };
  };
  type Night = ReturnType<typeof priced>;
  /** The better of the plan's own order, pushed, and of what can stay put in with the rest around it. */
  const atOnce = (rest: Rest): Night => {
    const own = asNeeded(rest, rest.pushed);
    const pushed = priced(rest, own, planOfPlaces(own, rest.pushed).value);
    if (noTrouble(pushed.price)) return pushed;
    // Where a course is asked for at another time, the best is often that little else moves.
    const moved = (progress.asked ?? []).length > 0;
    const around = (moved ? [rest.pushed, rest.asBefore] : [rest.pushed]).map((places) => {
      const { value } = followPlan(rest.prep, places, { ...effort, tries: 0 });
      return priced(rest, asNeeded(rest, value.placed), value);
    });
    return around.reduce((found, next) => (cheaper(next.price, found.price) ? next : found), pushed);
  };
  let best = atOnce(restFromPlan(prep, plan, progress));
  for (const allow of allowances.slice(1)) {
    if ((best.price[0] ?? 0) + (best.price[1] ?? 0) === 0) break;
    const next = atOnce(restFromPlan(prep, plan, progress, allow));
    if (cheaper(next.price, best.price)) best = next;
  }
  if (effort.tries > 0 && !noTrouble(best.price)) {
    // No limit gives more than it has to already.
    const { rest, prep: own, plan: pushed } = best;
    for (const { value } of [
      followPlan(own, pushed.placed, effort),
      followPlan(rest.prep, rest.asBefore, effort),
      planFromPrep(rest.prep, effort),
    ]) {
      const other = priced(rest, asNeeded(rest, value.placed), value);
      if (cheaper(other.price, best.price)) best = other;
    }
  }
  const violations = [...checkFromPlan(best.prep, best.plan), ...checkNight(prep, progress, best)];
  const stuck = stuckTasks(best.prep, best.plan.unplaced);
  const overtime = overtimeOf(best.prep, best.rest.crew);
  const night = { overruns: best.overruns, overtime, stuck, held: best.rest.held };
  return {
    value: {
      ...night,
      prep: best.prep,
      plan: { ...best.plan, violations },
      changes: changesBetween(plan, best.plan, progress),
    },
    findings: combineFindings(nightFindings(prep, best.plan, progress, night), brokenFindings(violations)),
  };
};

/** What a plan of a rest is compared by, the weightiest first. */
const nightPrice = (plan: Plan, overruns: readonly Overrun[]): readonly number[] => {
  const over = (safety: boolean): number =>
    overruns.reduce((sum, { kind, by }) => sum + (isOfSafety(kind) === safety ? by : 0), 0);
  const late = plan.courses.reduce((sum, course) => sum + course.lateMinutes, 0);
  return [plan.unplaced.length, over(true), late, over(false)];
};

const noTrouble = (price: readonly number[]): boolean => price.every((part) => part === 0);

const cheaper = (a: readonly number[], b: readonly number[]): boolean => {
  const differs = a.findIndex((value, i) => value !== b[i]);
  return differs >= 0 && (a[differs] ?? 0) < (b[differs] ?? 0);
};

/** Minutes late in all; a task without a place weighs more than any lateness. */
const troubleOf = (plan: Plan): number =>
  plan.unplaced.length * 100_000 + plan.courses.reduce((sum, course) => sum + course.lateMinutes, 0);

/** How many nights are run to say how sure a plan is. */
export const usualNights: RiskEffort = { runs: 1000, seed: 1 };

/** Work begun sooner by this much is what is tried, to tell what it buys; minutes. */
const spareTried = 15;

/** How sure a plan is, and how its hands are loaded; apart from the evening, since nobody waits for it. */
export const weighPlan = (
  { prep, plan }: Pick<Evening, "prep" | "plan">,
  nights: RiskEffort = usualNights,
): { readonly risk: Risk; readonly load: Load } => ({
  risk: riskFromPlan(prep, plan, nights, {
    minutes: spareTried,
    plan: planWithSpare(prep, plan, spareTried),
  }),
  load: loadFromPlan(prep, plan),
});

/** How hard it is looked for what stands in the way of a plan, by default. */
export const usualWhy: ExplainEffort = { conflicts: 8_000, tries: 20, seed: 1 };

/** The plan with what stands in its way and what would free it; apart from the evening, since nobody waits for it. */
export const whyPlan = (
  { prep, plan }: Pick<Evening, "prep" | "plan">,
  effort: ExplainEffort = usualWhy,
): Plan => explainPlan(prep, plan, effort);

/** Plans a problem that is given as data, and proves the plan against it. */
export const solvePrep = (prep: Prep, effort: PlanEffort): Outcome<Plan, Finding> => {
  const planned = planFromPrep(prep, effort);
  const violations = checkFromPlan(prep, planned.value);
  return {
    value: { ...planned.value, violations },
    findings: combineFindings(planned.findings, brokenFindings(violations)),
  };
};

/** The whole line, from cards and sitting to plan and safety. */
export const runEvening = (
  sitting: Sitting,
  cards: readonly CardText[],
  effort: PlanEffort = firstEffort,
): Outcome<Evening, Finding> => withFoods(sitting.foods ?? [], () => eveningOf(sitting, cards, effort));

/**
 * The work and its plan. Waits that take no hands are counted at their longest, so that they are begun in time; where
 * that makes a course late or leaves work without a place, the mean is counted, as for all other work.
 */
const plannedWork = (menu: Menu, effort: PlanEffort) => {
  const prep = prepFromMenu(menu);
  const planned = planWork(prep.value, effort);
  const trouble = troubleOf(planned.value.plan);
  const longWaits = prep.findings.some(({ code }) => code === "wait-counted-long");
  if (trouble === 0 || !longWaits) return { prep, planned };
  const bare = prepFromMenu(menu, false);
  // Only where the waits make a difference to a first plan is a whole one looked for without them.
  const first = ({ value }: typeof prep): number =>
    troubleOf(planFromPrep(value, { tries: 0, seed: effort.seed }).value);
  if (first(bare) >= first(prep)) return { prep, planned };
  const sooner = planWork(bare.value, effort);
  return troubleOf(sooner.value.plan) < trouble ? { prep: bare, planned: sooner } : { prep, planned };
};

const eveningOf = (
  sitting: Sitting,
  cards: readonly CardText[],
  effort: PlanEffort,
): Outcome<Evening, Finding> => {
  const read = cards.map((card) => readCard(card.text, card.source, sitting.region));
  const dishes = read.map((r) => r.value);
  const menu = menuFromDishes(sitting, dishes);
  const purchase = purchaseFromMenu(menu.value);
  const cost = costFromPurchase(menu.value, purchase.value);
  const declaration = declarationFromMenu(menu.value);
  const work = plannedWork(menu.value, effort);
  const { planned } = work;
  const prep = {
    value: planned.value.prep,
    findings: washingAfter(work.prep.findings, sitting, planned.value.left),
  };
  const plan: Plan = { ...planned.value.plan, violations: checkFromPlan(prep.value, planned.value.plan) };
  const safety = safetyFromPlan(menu.value, prep.value, plan);
  return {
    value: {
      dishes,
      menu: menu.value,
      purchase: purchase.value,
      cost: cost.value,
      declaration: declaration.value,
      prep: prep.value,
      plan,
      safety: safety.value,
    },
    findings: combineFindings(
      ...read.map((r) => r.findings),
      menu.findings,
      purchase.findings,
      cost.findings,
      declaration.findings,
      prep.findings,
      planned.findings,
      brokenFindings(plan.violations),
      safety.findings,
    ),
  };
};
