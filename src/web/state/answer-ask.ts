import {
  type Food,
  firstEffort,
  readCard,
  replan,
  runEvening,
  scaleCard,
  weighPlan,
  whyPlan,
  writeUpCard,
} from "#engine/index.ts";
import { pageOfCard } from "#wire/page-of-card.ts";
import type { Problem } from "#wire/problem.ts";
import { readFoods } from "#wire/read-foods.ts";
import { type SittingFiles, sittingFromFiles } from "#wire/sitting-from-files.ts";
import { variantRow } from "#wire/variant-row.ts";
import { filesWith, type Variant } from "#wire/variants.ts";
import { sentenceOf } from "#words/en.ts";
import { problemSentence } from "#words/problems.ts";
import type {
  Ask,
  BookFile,
  EveningAnswer,
  FileRemark,
  SheetAnswer,
  Told,
  VariantAnswer,
} from "./engine-talk.ts";

/** Does what is asked. Pure: the worker around it only carries the messages. */
export const answerAsk = (ask: Ask): Told => {
  switch (ask.ask) {
    case "card": {
      const { value, findings } = readCard(ask.text, ask.source, ask.region, ownFoodsOf(ask.foods));
      return { id: ask.id, told: "card", answer: { dish: value, findings } };
    }
    case "write-up":
      return {
        id: ask.id,
        told: "write-up",
        answer: {
          html: pageOfCard(
            writeUpCard(ask.text, ask.source, ask.region, ownFoodsOf(ask.foods)).value,
            ask.region,
          ),
        },
      };
    case "foods": {
      const { problems } = readFoods(ask.list.path, ask.list.text);
      return { id: ask.id, told: "foods", answer: { remarks: problems.map((p) => remarkOf(p, "")) } };
    }
    case "sitting": {
      const { sitting, remarks, cardPaths } = readFiles(ask.sitting, ask.files);
      return { id: ask.id, told: "sitting", answer: { sitting, remarks, cardPaths } };
    }
    case "evening":
      return { id: ask.id, told: "evening", answer: eveningOf(ask.sitting, ask.files, ask.quick) };
    case "sheet":
      return { id: ask.id, told: "sheet", answer: sheetOf(ask) };
    case "variant":
      return { id: ask.id, told: "variant", answer: variantOf(ask.sitting, ask.files, ask.variant) };
    case "night": {
      const { value, findings } = replan(ask, ask.progress, nightEffort);
      return { id: ask.id, told: "night", answer: { replanned: value, findings, progress: ask.progress } };
    }
    case "why":
      return { id: ask.id, told: "why", answer: whyPlan(ask) };
  }
};

const remarkOf = (problem: Problem, folder: string): FileRemark => ({
  path: folder + problem.place.file,
  start: problem.place.start,
  end: problem.place.end,
  severity: problem.severity,
  ...problemSentence(problem),
});

// The engine knows a list again by itself: the same texts give the same list while a card is typed.
let known: { readonly texts: string; readonly foods: readonly Food[] } = { texts: "", foods: [] };

/** The foods of some lists; none of a list that cannot be used, as the sitting has it. */
const ownFoodsOf = (lists: readonly BookFile[]): readonly Food[] | undefined => {
  if (lists.length === 0) return undefined;
  const texts = lists.map((list) => list.text).join("\u0000");
  if (known.texts !== texts)
    known = { texts, foods: lists.flatMap((list) => readFoods(list.path, list.text).foods) };
  return known.foods;
};

/** The files of a book as the wire reads them: names from the sitting's own folder. */
export const filesOf = (sitting: string, files: readonly BookFile[]): SittingFiles => {
  const folder = sitting.includes("/") ? sitting.slice(0, sitting.lastIndexOf("/") + 1) : "";
  const byPath = new Map(files.map((f) => [f.path, f.text]));
  return {
    sitting: { name: sitting.slice(folder.length), text: byPath.get(sitting) ?? "" },
    read: (name) => byPath.get(folder + name) ?? null,
    list: (name) => {
      const inside = `${folder}${name.replace(/\/$/, "")}/`;
      const names = [...byPath.keys()].filter((p) => p.startsWith(inside)).map((p) => p.slice(inside.length));
      return names.length === 0 ? null : names.filter((n) => !n.includes("/"));
    },
  };
};

/** The sitting of a book and what stands against its files, with the folder that they are named from. */
const readFiles = (
  sittingPath: string,
  files: readonly BookFile[],
  change: (given: SittingFiles) => SittingFiles = (given) => given,
) => {
  const given = change(filesOf(sittingPath, files));
  const folder = sittingPath.slice(0, sittingPath.length - given.sitting.name.length);
  const { sitting, cards, problems, placeOf } = sittingFromFiles(given);
  const remarks: readonly FileRemark[] = problems.map((problem) => remarkOf(problem, folder));
  const cardPaths = cards.map((card) => [card.source, folder + card.file] as const);
  return { sitting, cards, remarks, cardPaths, folder, placeOf };
};

/** So little that the page has a plan to show before the cook looks up. */
const quickEffort = { tries: 0, proof: 200, seed: firstEffort.seed };

/** On the night nobody waits long for a plan. */
const nightEffort = { tries: 40, seed: firstEffort.seed };

const eveningOf = (sittingPath: string, files: readonly BookFile[], quick: boolean): EveningAnswer => {
  const { sitting, cards, remarks: ofFiles, cardPaths, folder, placeOf } = readFiles(sittingPath, files);
  if (sitting === null) return { evening: null, risk: null, findings: [], remarks: ofFiles, cardPaths };
  const { value, findings } = runEvening(
    sitting,
    cards.map(({ source, text }) => ({ source, text })),
    quick ? quickEffort : firstEffort,
  );
  const ofSitting = findings.flatMap((finding): FileRemark[] => {
    if (finding.source !== sitting.source || finding.path === null) return [];
    const place = placeOf(finding.path);
    return [
      {
        path: folder + place.file,
        start: place.start,
        end: place.end,
        severity: finding.severity,
        ...sentenceOf(finding),
      },
    ];
  });
  return {
    evening: value,
    risk: weighPlan(value).risk,
    findings,
    remarks: [...ofFiles, ...ofSitting],
    cardPaths,
  };
};

const sheetOf = ({
  text,
  source,
  covers,
  sitting: path,
  files,
  region,
}: Extract<Ask, { ask: "sheet" }>): SheetAnswer => {
  const sitting = path === null ? null : readFiles(path, files).sitting;
  const { value, findings } = scaleCard(
    text,
    source,
    covers,
    sitting?.kitchen ?? null,
    region,
    sitting?.foods,
  );
  return { ...value, findings, inKitchen: sitting !== null };
};

/** As the command line compares: the same effort, and work without a place counted in the figures. */
const variantOf = (sittingPath: string, files: readonly BookFile[], variant: Variant): VariantAnswer => {
  const { sitting, cards, remarks } = readFiles(sittingPath, files, (given) => filesWith(given, variant));
  if (sitting === null)
    return { row: null, stops: remarks.filter((r) => r.severity === "stop").map((r) => r.says) };
  const { value } = runEvening(
    sitting,
    cards.map((card) => ({ source: card.source, text: card.text })),
    firstEffort,
  );
  return { row: variantRow(variant.name, value), stops: [] };
};
