import { useEffect, useId, useRef, useState } from "preact/hooks";
import { allergenGroups, dietFacts } from "#engine/index.ts";
import { allergenLabels } from "#words/labels.ts";
import type { OwnFoodEntry } from "./own-foods.ts";

/** Nothing is told, none of them is in it, or those that are ticked. */
type Told = "not-told" | "none" | "these";

const toldList = (told: Told, ticked: ReadonlySet<string>): readonly string[] | null =>
  told === "not-told" ? null : told === "none" ? [] : [...ticked];

const Choice = ({
  legend,
  silence,
  none,
  items,
  told,
  ticked,
  onTold,
  onTick,
}: {
  legend: string;
  silence: string;
  none: string;
  items: readonly (readonly [id: string, label: string])[];
  told: Told;
  ticked: ReadonlySet<string>;
  onTold: (told: Told) => void;
  onTick: (ticked: ReadonlySet<string>) => void;
}) => {
  const name = useId();
  const ways: readonly (readonly [Told, string])[] = [
    ["not-told", silence],
    ["none", none],
    ["these", "These:"],
  ];
  const tick = (id: string, on: boolean) => {
    onTick(new Set(items.map(([key]) => key).filter((key) => (key === id ? on : ticked.has(key)))));
    if (on) onTold("these");
  };
  return (
    <fieldset>
      <legend>{legend}</legend>
      {ways.map(([id, label]) => (
        <label key={id}>
          <input type="radio" name={name} checked={told === id} onChange={() => onTold(id)} /> {label}
        </label>
      ))}
      <div class="ticks">
        {items.map(([id, label]) => (
          <label key={id}>
            <input
              type="checkbox"
              checked={told === "these" && ticked.has(id)}
              onChange={(e) => tick(id, e.currentTarget.checked)}
            />{" "}
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
};

const allergens = allergenGroups.map((id) => [id, allergenLabels[id]] as const);
const diets = dietFacts.map((id) => [id, id.replaceAll("-", " ")] as const);

/** Asks what a food of the cook's own is. Nothing is filled in for them but its name. `save` says what is wrong, or null. */
export const OwnFoodForm = ({
  name: found,
  save,
  close,
}: {
  name: string;
  save: (entry: OwnFoodEntry) => Promise<string | null>;
  close: () => void;
}) => {
  const [name, setName] = useState(found);
  const [like, setLike] = useState("");
  const [density, setDensity] = useState("");
  const [by, setBy] = useState("");
  const [told, setTold] = useState<Told>("not-told");
  const [held, setHeld] = useState<ReadonlySet<string>>(new Set());
  const [dietTold, setDietTold] = useState<Told>("not-told");
  const [diet, setDiet] = useState<ReadonlySet<string>>(new Set());
  const [wrong, setWrong] = useState<string | null>(null);
  const first = useRef<HTMLInputElement>(null);
  const trouble = useId();
  useEffect(() => first.current?.focus(), []);

  const faultOf = (entry: OwnFoodEntry): string | null => {
    if (entry.name === "") return "Write its name.";
    if (density.trim() !== "" && !(Number(density.replace(",", ".")) > 0))
      return "Write the grams in a millilitre as a figure, such as 1.03, or leave it out.";
    if (told === "these" && held.size === 0) return "Tick the allergens that it holds.";
    if (dietTold === "these" && diet.size === 0) return "Tick what it is made of.";
    if (entry.like === null && entry.diet === null)
      return "Write a food that it counts like, or say what it is made of.";
    return null;
  };

  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    const entry: OwnFoodEntry = {
      name: name.trim(),
      like: like.trim() === "" ? null : like.trim(),
      density: density.trim() === "" ? null : Number(density.replace(",", ".")),
      allergens: toldList(told, held),
      diet: toldList(dietTold, diet),
      by: by.trim() === "" ? null : by.trim(),
    };
    const fault = faultOf(entry) ?? (await save(entry));
    setWrong(fault);
    if (fault === null) close();
  };

  return (
    <form class="own-food" aria-label={`A food of my own: ${found}`} onSubmit={submit} noValidate>
      <label>
        <span>Name</span>
        <input ref={first} type="text" value={name} onInput={(e) => setName(e.currentTarget.value)} />
      </label>
      <label>
        <span>Counts like (a food of the table, such as plain yogurt)</span>
        <input type="text" value={like} onInput={(e) => setLike(e.currentTarget.value)} />
      </label>
      <label>
        <span>Grams in a millilitre (to weigh spoons and cups of it)</span>
        <input
          type="text"
          inputMode="decimal"
          value={density}
          onInput={(e) => setDensity(e.currentTarget.value)}
        />
      </label>
      <Choice
        legend="Allergens"
        silence={
          like.trim() === "" ? "Not told: each of the 14 is to be asked about" : `Those of ${like.trim()}`
        }
        none="None of the 14"
        items={allergens}
        told={told}
        ticked={held}
        onTold={setTold}
        onTick={setHeld}
      />
      <Choice
        legend="Is or holds"
        silence={like.trim() === "" ? "Not told" : `As ${like.trim()}`}
        none="None of these"
        items={diets}
        told={dietTold}
        ticked={diet}
        onTold={setDietTold}
        onTick={setDiet}
      />
      <label>
        <span>Who says so, and from where (shown wherever it is declared)</span>
        <input type="text" value={by} onInput={(e) => setBy(e.currentTarget.value)} />
      </label>
      <p id={trouble} role="alert" class="own-food-trouble">
        {wrong}
      </p>
      <p class="buttons">
        <button type="submit" class="fix" aria-describedby={trouble}>
          Add to my foods
        </button>
        <button type="button" onClick={close}>
          Not now
        </button>
      </p>
    </form>
  );
};
