// The front door: what the faces may use, by name.
export { type LabelRow, labelRows } from "./declaration-from-menu/label-rows.ts";
export { type Code, codes, type FactsOf, severityOf } from "./findings/codes.ts";
export { combineFindings } from "./findings/combine.ts";
export type { DeclarationFacts } from "./findings/declaration-facts.ts";
export type { Edit, Finding, Fix, FixKind, Related } from "./findings/finding.ts";
export { makeFinding } from "./findings/make-finding.ts";
export type { MenuFacts } from "./findings/menu-facts.ts";
export type { PlanFacts } from "./findings/plan-facts.ts";
export type { ReadingFacts } from "./findings/reading-facts.ts";
export type { Severity } from "./findings/severity.ts";
export { containerNamed } from "./larder/containers.ts";
export { type OwnFoodFacts, type OwnFoodTrouble, ownFoods } from "./larder/own-foods.ts";
export { regularPlural } from "./larder/plural.ts";
export { rateNamed } from "./larder/work-rates.ts";
export { compareText } from "./measure/compare-text.ts";
export { addEstimates, between, type Estimate, exactly, meanOf, scaleEstimate } from "./measure/estimate.ts";
export type { LabelFigure } from "./measure/label-figure.ts";
export {
  type Celsius,
  type Count,
  celsius,
  count,
  type Grams,
  grams,
  type Millilitres,
  type Minor,
  type Minutes,
  type Moment,
  millilitres,
  minor,
  minutes,
  moment,
  type Share,
  share,
} from "./measure/units.ts";
export { type UsVolume, usVolume, usWeight } from "./measure/us-measures.ts";
export type { Block, BlockRole, Card } from "./model/card.ts";
export type { Clash, ClashDemand, Easing, WayOut } from "./model/clash.ts";
export type {
  AllergenPath,
  AllergenStatement,
  Declaration,
  DishDeclaration,
  GuestVerdict,
  KnownSum,
  ListedIngredient,
  NutritionFacts,
} from "./model/declaration.ts";
export type {
  Action,
  ActionMinutes,
  Alternative,
  Amount,
  Dish,
  Ingredient,
  Keeping,
  Step,
  Swap,
  Use,
  Yield,
} from "./model/dish.ts";
export {
  type AllergenGrade,
  type AllergenGroup,
  type Attention,
  allergenGroups,
  type DietFact,
  dietFacts,
  type Food,
  type FoodAllergen,
  type FoodId,
  type HazardKind,
  hazardKinds,
  type Nutrients,
  type Shelf,
  type Station,
  shelves,
  type Technique,
  type TechniqueId,
} from "./model/food.ts";
export type { Load } from "./model/load.ts";
export type {
  Adjustment,
  AdjustmentReason,
  Batches,
  BatchReason,
  Component,
  Measured,
  Menu,
  MenuDish,
  Version,
  VesselUse,
} from "./model/menu.ts";
export type { Outcome } from "./model/outcome.ts";
export type { Cause, CourseLanding, LevelValue, Placed, Plan, Violation } from "./model/plan.ts";
export {
  type CourseGoal,
  type CrewMember,
  type FreeFrom,
  type GoalLevel,
  goalLevels,
  type Hold,
  type Lag,
  type LagReason,
  type OvenResource,
  type Prep,
  type Resource,
  type Segment,
  type StationUse,
  type Task,
  type TaskId,
  type TaskKind,
  type VesselStay,
} from "./model/prep.ts";
export type {
  Cost,
  Demand,
  DishCost,
  PackCount,
  PartOver,
  Purchase,
  PurchaseLine,
} from "./model/purchase.ts";
export type {
  Moved,
  Overrun,
  OverrunKind,
  Overtime,
  Progress,
  Stuck,
  Told,
} from "./model/rest.ts";
export type { CourseRisk, Risk, WatchedTask } from "./model/risk.ts";
export type { CriticalLimit, SafetyPoint, SafetySheet } from "./model/safety.ts";
export type { Sheet, SheetAmount, SheetEquipment, SheetLine, SheetPieces, SheetStep } from "./model/sheet.ts";
export {
  type Cook,
  type Course,
  type Guest,
  type Kitchen,
  type KitchenContainer,
  type KitchenTin,
  type NeedId,
  type Oven,
  type Pack,
  type Pan,
  type Region,
  regions,
  type Shift,
  type Sitting,
  type TinForm,
  tinForms,
} from "./model/sitting.ts";
export type { SourceId, Span, Words } from "./model/span.ts";
export type { TimeReason } from "./model/time-reason.ts";
export type { WriteUp, WriteUpLine } from "./model/write-up.ts";
export {
  type CardText,
  type CardWriteUp,
  checkPlan,
  type Evening,
  firstEffort,
  type Replanned,
  readCard,
  replan,
  runEvening,
  type ScaledCard,
  scaleCard,
  sheetsOf,
  solvePrep,
  usualNights,
  usualWhy,
  weighPlan,
  whyPlan,
  writeUpCard,
} from "./pipeline.ts";
export { type CourseChain, chainOf, courseChains, type Link } from "./plan-from-prep/chain.ts";
export type { ExplainEffort } from "./plan-from-prep/explain-plan.ts";
export type { PlanEffort, PlanProgress } from "./plan-from-prep/plan-effort.ts";
export { planTaken } from "./rest-from-plan/plan-taken.ts";
export { progressAt } from "./rest-from-plan/progress-at.ts";
export type { RiskEffort } from "./risk-from-plan/risk-from-plan.ts";
export type { Project, ProjectAnswer, ProjectEffort, ProjectStatus } from "./search/project/project.ts";
export { solveProject } from "./search/project/solve-project.ts";
