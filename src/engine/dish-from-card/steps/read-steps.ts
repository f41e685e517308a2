import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { firstOfFoodNames, foodByName } from "../../larder/foods.ts";
import { gather } from "../../measure/gather.ts";
import type { Block, Card } from "../../model/card.ts";
import type { Action, Ingredient, Step } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import type { Words } from "../../model/span.ts";
import { act } from "./act.ts";
import { withoutAnnouncement, withoutGiving } from "./announcement.ts";
import { chooseTechnique } from "./choose-technique.ts";
import { type Clause, clausesOf } from "./clauses.ts";
import { madeBy } from "./find-products.ts";
import { furtherStretch } from "./further-stretch.ts";
import { goesOnCooking, speaksOfBefore } from "./goes-on-cooking.ts";
import { inOven } from "./in-oven.ts";
import { inTurn } from "./in-turn.ts";
import { canLend, lendHeat, lendTime } from "./lend.ts";
import { isMakeAhead } from "./make-ahead.ts";
import { withPartHints } from "./part-hints.ts";
import { shareObjects } from "./share-objects.ts";
import { countRests, newStepReader, type StepReader } from "./step-reader.ts";
import { sentencesOf, type Token, tokenise } from "./tokens.ts";

type Line = { readonly block: Block; readonly words: Words; readonly clauses: readonly Clause[] };

const isFood = (tokens: readonly Token[], i: number): boolean => {
  const one = tokens[i];
  const two = tokens[i + 1];
  const most = one?.kind === "word" ? firstOfFoodNames.get(one.text) : undefined;
  if (one === undefined || most === undefined) return false;
  if (foodByName.has(one.text)) return true;
  return most > 1 && two !== undefined && foodByName.has(`${one.text} ${two.text}`);
};

/**
 * Reads the method and the "to serve" lines of a card into steps of actions: what is done, to which ingredients and
 * earlier products, how long, how hot, and what must be done before. Never throws.
 */
export const readSteps = (
  card: Card,
  ingredients: readonly Ingredient[],
  region: Region,
): { readonly steps: readonly Step[]; readonly findings: readonly Finding[] } => {
  const reader = newStepReader(ingredients, card.title?.text ?? "");
  const lines: Line[] = [];
  for (const block of card.blocks) {
    if (block.role !== "method" && block.role !== "to-serve") continue;
    for (const words of block.lines)
      lines.push({ block, words, clauses: withPartHints(clausesOfLine(words.text, reader, region), reader) });
  }
  countRests(
    reader,
    gather(lines, (l) => l.clauses),
  );
  const steps: Step[] = [];
  const findings: Finding[] = [];
  for (const line of lines) {
    if (steps.at(-1)?.part !== line.block.part && steps.length > 0) {
      reader.kitchen.current = line.block.part === null ? reader.kitchen.current : null;
      reader.kitchen.emptied = null;
    }
    const last = steps.at(-1);
    const lent: Action[] = last === undefined ? [] : [...last.actions];
    const actions = actionsOf(reader, line, steps.length, lent);
    if (last?.actions.some((a, k) => a !== lent[k]) === true)
      steps[steps.length - 1] = { ...last, actions: lent };
    steps.push({
      index: steps.length,
      text: line.words.text,
      span: line.words.span,
      part: line.block.part,
      phase: line.block.role === "to-serve" ? "to-serve" : "method",
      actions,
    });
    for (const clause of line.clauses)
      for (const t of clause.settings)
        if (t.scaleAssumed || t.fan !== undefined) {
          const at = { start: clause.tokens[t.from]?.at ?? 0, end: clause.tokens[t.to - 1]?.end ?? 0 };
          const span = { start: line.words.span.start + at.start, end: line.words.span.start + at.end };
          const words = line.words.text.slice(at.start, at.end);
          findings.push(
            t.fan === undefined
              ? makeFinding("temperature-scale-assumed", card.source, span, { words, celsius: t.celsius })
              : makeFinding("fan-setting-raised", card.source, span, {
                  words,
                  fan: t.fan,
                  celsius: t.celsius,
                }),
          );
        }
  }
  for (const step of steps)
    for (const action of step.actions)
      if (reader.heldCold.includes(action.id))
        findings.push(
          makeFinding("fridge-assumed", card.source, action.span, {
            verb: action.verb,
            minutes: action.minutes?.likely ?? 0,
          }),
        );
  return { steps: nameParts(steps), findings };
};

/** "Make the pastry. Rub …": a sentence that only says what the others of its step make. */
const announces = (clauses: readonly Clause[]): boolean => {
  const [only] = clauses;
  return (
    clauses.length === 1 &&
    only?.hit?.technique.id === "make" &&
    only.mentions.length === 0 &&
    only.times.length === 0 &&
    only.settings.length === 0 &&
    only.tokens.filter((t) => t.kind === "word").length <= 5
  );
};

const clausesOfLine = (text: string, reader: StepReader, region: Region): readonly Clause[] => {
  let aim: string | null = null;
  const sentences = sentencesOf(text, tokenise(text)).filter((s) => s.some((t) => t.kind !== "mark"));
  return gather(sentences, (sentence, place) => {
    if (isMakeAhead(sentence)) return [];
    const shared = shareObjects(
      withoutGiving(withoutAnnouncement(clausesOf(text, sentence, place, reader.names, isFood, region))),
    );
    const read = gather(gather(shared, furtherStretch), inTurn);
    if (place < sentences.length - 1 && announces(read)) {
      aim = read[0] === undefined ? null : madeBy(read[0]);
      return [];
    }
    const [first, ...others] = read;
    if (aim === null || first === undefined) return read;
    const aimed = [{ ...first, aim: first.aim ?? aim }, ...others];
    aim = null;
    return aimed;
  });
};

/** The actions of a step. What its words state of the step before goes to `lent`, the actions of that step. */
const actionsOf = (reader: StepReader, line: Line, step: number, lent: Action[]): readonly Action[] => {
  const actions: Action[] = [];
  let before: Action | null = null;
  let sentence = -1;
  line.clauses.forEach((clause, k) => {
    if (clause.sentence !== sentence) {
      before = null;
      sentence = clause.sentence;
    }
    // "This will take about 45 minutes, but start checking after 30": it speaks of what went on before.
    const told = clause.times[0];
    if (clause.opens && told !== undefined && told.to <= clause.verbAt && speaksOfBefore(clause))
      lendTime({ ...clause, times: [told] }, actions.length > 0 ? actions : lent);
    const open = actions.length > 0 ? actions : lent;
    const cooks = goesOnCooking(reader, clause, open.at(-1));
    const said = cooks ?? clause;
    const chosen = inOven(reader, said, chooseTechnique(said, line.clauses[k + 1] ?? null), before);
    const lends = said.hit === null && chosen?.technique.id !== "preheat";
    if (
      chosen === null ||
      (lends && canLend(open.at(-1)) && (actions.length > 0 || speaksOfBefore(clause)))
    ) {
      if (actions.length > 0 || canLend(open.at(-1))) lendTime(clause, open);
      else lendHeat(clause, open);
      return;
    }
    // "Check with a probe: 75 or more": what is checked is what was cooked.
    if (chosen.technique.id === "taste" && (clause.core !== null || clause.settings.length > 0))
      lendHeat(clause, open);
    const waited = clause.times.find((t) => t.kind === "wait" && !t.long);
    let leastWait = true;
    if (waited !== undefined) {
      // "Boil fast. After 12 minutes, test it": so long it boiled, though it was told a step before.
      const last = open.at(-1);
      if (last?.minutes?.assumed === true && last.attention !== "hands") {
        open[open.length - 1] = { ...last, minutes: { ...waited.minutes, assumed: false } };
        leastWait = false;
      }
    }
    if (clause.beginsPart && before === null) reader.kitchen.current = null;
    const action = act(reader, said, chosen, {
      id: `s${step + 1}a${actions.length + 1}`,
      part: line.block.part,
      offset: line.words.span.start,
      sentence: `${step}.${clause.sentence}`,
      before,
    });
    before = leastWait ? action : { ...action, leastWait: null };
    actions.push(before);
  });
  return actions;
};

/** The last action of each named part makes that part, unless the words name what it makes. */
const nameParts = (steps: readonly Step[]): readonly Step[] => {
  const last = new Map<string, string>();
  for (const step of steps)
    for (const action of step.actions)
      if (step.part !== null && action.uses.length > 0) last.set(step.part, action.id);
  const partOf = new Map([...last].map(([part, id]) => [id, part]));
  return steps.map((step) => ({
    ...step,
    actions: step.actions.map((a) =>
      a.makes === null && partOf.has(a.id) ? { ...a, makes: partOf.get(a.id) ?? null } : a,
    ),
  }));
};
