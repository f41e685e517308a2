import {
  celsius,
  containerNamed,
  count,
  type Kitchen,
  type KitchenTin,
  type Minutes,
  minutes,
  rateNamed,
  type TinForm,
  tinForms,
} from "#engine/index.ts";
import { checked } from "./checked.ts";
import { makeProblem, type Problem } from "./problem.ts";
import {
  fromOne,
  fromZero,
  listOf,
  nameText,
  oneOf,
  positive,
  strictMap,
  wholeNumber,
  yesOrNo,
} from "./schema-parts.ts";
import { type Path, type YamlFile, yamlFile } from "./yaml-file.ts";

/** The keys of a kitchen file. */
const kitchenSchema = strictMap({
  name: nameText,
  burners: strictMap({ count: wholeNumber, kilowatts: positive.optional() }),
  ovens: listOf(
    strictMap({
      name: nameText,
      shelves: fromOne,
      fan: yesOrNo.optional(),
      kilowatts: positive.optional(),
    }),
  ),
  grills: wholeNumber.optional(),
  fryers: wholeNumber.optional(),
  "fridge litres": fromZero,
  "freezer litres": fromZero.optional(),
  pans: listOf(
    strictMap({ name: nameText, litres: positive, count: fromOne, "wash minutes": positive.optional() }),
  ).optional(),
  trays: wholeNumber.optional(),
  "wash minutes per tray": positive.optional(),
  carry: strictMap({ minutes: positive, plates: fromOne }).optional(),
  containers: listOf(
    strictMap({ size: nameText, count: fromOne, "wash minutes": positive.optional() }),
  ).optional(),
  tins: listOf(
    strictMap({
      name: nameText.optional(),
      shape: oneOf(tinForms, "tin-shape"),
      "wide cm": positive,
      "long cm": positive.optional(),
      count: fromOne,
      "wash minutes": positive.optional(),
    }),
  ).optional(),
  rates: listOf(
    strictMap({
      work: nameText,
      food: nameText.optional(),
      "minutes per kilo": positive.optional(),
      "minutes per piece": positive.optional(),
    }),
  ).optional(),
  machines: listOf(strictMap({ name: nameText, count: fromOne })).optional(),
  "oven minutes per 10 °C": fromZero.optional(),
  "oven tolerance": fromZero.optional(),
});

/** Put in where the file says nothing, and always said so. Common practice, no source. */
const usual = { burnerKilowatts: 2, ovenKilowatts: 3, ovenMinutesPer10C: 1, ovenTolerance: 5 } as const;

/** What a kitchen file says, with the file for its places. */
type ReadKitchen = {
  readonly kitchen: Kitchen | null;
  readonly file: YamlFile;
  readonly problems: readonly Problem[];
};

/** Reads a kitchen file. What it does not have it does not name: no grills means none. */
export const readKitchen = (name: string, text: string): ReadKitchen => {
  const file = yamlFile(name, text);
  const { value, problems } = checked(file, kitchenSchema);
  if (value === null) return { kitchen: null, file, problems };
  const notes: Problem[] = [];
  const assume = <V>(given: V | undefined, taken: V, key: string, around: Path, shown = String(taken)): V => {
    if (given !== undefined) return given;
    notes.push(makeProblem("value-assumed", file.placeOf(around), { key, taken: shown }));
    return taken;
  };
  const shelves = value.ovens.reduce((sum, oven) => sum + oven.shelves, 0);
  const kitchen: Kitchen = {
    name: value.name,
    burners: count(value.burners.count),
    burnerKilowatts: assume(value.burners.kilowatts, usual.burnerKilowatts, "kilowatts", ["burners"]),
    ovens: value.ovens.map((oven, i) => ({
      name: oven.name,
      shelves: count(oven.shelves),
      fan: assume(oven.fan, false, "fan", ["ovens", i], "no"),
      kilowatts: assume(oven.kilowatts, usual.ovenKilowatts, "kilowatts", ["ovens", i]),
    })),
    grills: count(value.grills ?? 0),
    fryers: count(value.fryers ?? 0),
    fridgeLitres: value["fridge litres"],
    freezerLitres: value["freezer litres"] ?? 0,
    pans: (value.pans ?? []).map(({ name, litres, count: many, "wash minutes": wash }) => ({
      name,
      litres,
      count: count(many),
      ...washing(wash),
    })),
    trays: count(assume(value.trays, shelves, "trays", [])),
    ...(value["wash minutes per tray"] === undefined
      ? {}
      : { trayWashMinutes: minutes(value["wash minutes per tray"]) }),
    ...(value.carry === undefined
      ? {}
      : { carry: { minutes: minutes(value.carry.minutes), plates: count(value.carry.plates) } }),
    containers: (value.containers ?? []).flatMap(({ size, count: many, "wash minutes": wash }) => {
      const known = containerNamed(size);
      return known === null ? [] : [{ ...known, count: count(many), ...washing(wash) }];
    }),
    ...(value.tins === undefined ? {} : { tins: value.tins.map(tinOf) }),
    machines: (value.machines ?? []).map((machine) => ({ name: machine.name, count: count(machine.count) })),
    ...(value.rates === undefined ? {} : { rates: ratesOf(value.rates) }),
    ovenMinutesPer10C: minutes(
      assume(value["oven minutes per 10 °C"], usual.ovenMinutesPer10C, "oven minutes per 10 °C", []),
    ),
    ovenTolerance: celsius(assume(value["oven tolerance"], usual.ovenTolerance, "oven tolerance", [])),
  };
  const strange = (value.containers ?? []).flatMap(({ size }, i) =>
    containerNamed(size) === null
      ? [
          makeProblem("value-bad", file.placeOf(["containers", i, "size"]), {
            key: "size",
            found: size,
            wanted: "container-size",
          }),
        ]
      : [],
  );
  const bad = badRates(file, value.rates ?? []);
  return {
    kitchen,
    file,
    problems: [
      ...notes,
      ...strange,
      ...bad,
      ...badTins(file, value.tins ?? []),
      ...sameNames(file, value.ovens),
    ],
  };
};

const washing = (wash: number | undefined): { readonly washMinutes?: Minutes } =>
  wash === undefined ? {} : { washMinutes: minutes(wash) };

type WrittenTin = {
  readonly name?: string | undefined;
  readonly shape: TinForm;
  readonly "wide cm": number;
  readonly "long cm"?: number | undefined;
  readonly count: number;
  readonly "wash minutes"?: number | undefined;
};

/** A tin is called by its size, unless it has a name; round and square ones are as long as they are wide. */
const tinOf = (tin: WrittenTin): KitchenTin => {
  const { shape, count: many } = tin;
  const wide = tin["wide cm"];
  const long = hasLength(shape) ? (tin["long cm"] ?? wide) : wide;
  const size = long === wide ? `${wide} cm` : `${long} × ${wide} cm`;
  const form = shape === "rectangle" ? "" : `${shape} `;
  return {
    name: tin.name ?? `${size} ${form}tin`,
    form: shape,
    wideCm: wide,
    longCm: long,
    count: count(many),
    ...washing(tin["wash minutes"]),
  };
};

const hasLength = (shape: TinForm): boolean => shape === "rectangle" || shape === "loaf";

/** A rectangle or a loaf tin without its length; one of another shape with one. */
const badTins = (file: YamlFile, tins: readonly WrittenTin[]): readonly Problem[] =>
  tins.flatMap((tin, i) =>
    hasLength(tin.shape) === (tin["long cm"] !== undefined)
      ? []
      : [
          makeProblem("value-bad", file.placeOf(["tins", i, "shape"]), {
            key: "long cm",
            found: tin["long cm"] === undefined ? "" : String(tin["long cm"]),
            wanted: "tin-length",
          }),
        ],
  );

type WrittenRate = {
  readonly work: string;
  readonly food?: string | undefined;
  readonly "minutes per kilo"?: number | undefined;
  readonly "minutes per piece"?: number | undefined;
};

const ratesOf = (rates: readonly WrittenRate[]): NonNullable<Kitchen["rates"]> =>
  rates.flatMap((rate) => {
    const { technique, food, known } = rateNamed(rate.work, rate.food ?? null);
    const kilo = rate["minutes per kilo"];
    const each = kilo ?? rate["minutes per piece"];
    if (technique === null || !known || each === undefined) return [];
    return [
      {
        technique,
        food,
        per: kilo === undefined ? ("piece" as const) : ("kilo" as const),
        minutes: minutes(each),
      },
    ];
  });

/** Work or food that is not known, and a rate that is not one. */
const badRates = (file: YamlFile, rates: readonly WrittenRate[]): readonly Problem[] =>
  rates.flatMap((rate, i) => {
    const { technique, known } = rateNamed(rate.work, rate.food ?? null);
    const bad = (key: string, found: string, wanted: "work" | "food" | "one-rate"): Problem =>
      makeProblem("value-bad", file.placeOf(["rates", i, ...(wanted === "one-rate" ? [] : [key])]), {
        key,
        found,
        wanted,
      });
    const both = (rate["minutes per kilo"] === undefined) === (rate["minutes per piece"] === undefined);
    return [
      ...(technique === null ? [bad("work", rate.work, "work")] : []),
      ...(known ? [] : [bad("food", rate.food ?? "", "food")]),
      ...(both ? [bad("rates", rate.work, "one-rate")] : []),
    ];
  });

/** Ovens are told apart by their names. */
const sameNames = (file: YamlFile, ovens: readonly { readonly name: string }[]): readonly Problem[] =>
  ovens.flatMap(({ name }, i) =>
    ovens.findIndex((oven) => oven.name === name) < i
      ? [makeProblem("name-twice", file.placeOf(["ovens", i, "name"]), { name })]
      : [],
  );
