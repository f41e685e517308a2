import type { Code } from "../../findings/codes.ts";
import type { Example } from "./rule.ts";

/** A small stew with one line of its list left open. */
const stew = (line: string): string => `Bean stew

Serves 4

500 g tomatoes
${line}

1. Put everything in a pan and simmer for 30 minutes.
`;

const line = (written: string, says: string, better: string): Example => ({
  card: stew(written),
  says: [says],
  fixed: stew(better),
});

const whole = "500 g tomatoes\n\nSimmer the tomatoes for 30 minutes.\n";

/** Examples of what is said while a card is laid out and its lines are read; no rule of the finished dish says these. */
export const readingExamples: ReadonlyMap<Code, readonly Example[]> = new Map<Code, readonly Example[]>([
  [
    "title-missing",
    [{ card: `Serves 4\n\n${whole}`, says: [""], fixed: `Tomato sauce\n\nServes 4\n\n${whole}` }],
  ],
  [
    "yield-missing",
    [
      {
        card: `Tomato sauce\n\n${whole}`,
        says: ["Tomato sauce"],
        fixed: `Tomato sauce\n\nServes 4\n\n${whole}`,
      },
    ],
  ],
  [
    "method-missing",
    [
      {
        card: "Tomato sauce\n\nServes 4\n\n500 g tomatoes\n",
        says: ["Tomato sauce\n\nServes 4\n\n500 g tomatoes\n"],
        fixed: `Tomato sauce\n\nServes 4\n\n${whole}`,
      },
    ],
  ],
  [
    "ingredients-missing",
    [
      {
        card: "Tomato sauce\n\nServes 4\n\nSimmer the tomatoes for 30 minutes.\n",
        says: ["Tomato sauce\n\nServes 4\n\nSimmer the tomatoes for 30 minutes.\n"],
        fixed: `Tomato sauce\n\nServes 4\n\n${whole}`,
      },
    ],
  ],
  ["amount-missing", [line("haricot beans", "haricot beans", "400 g haricot beans")]],
  [
    "amount-vague",
    [
      line("a slosh of cider", "a slosh", "a slosh of cider, about 60 ml"),
      line("a knob of butter", "a knob", "20 g butter"),
      line("salt", "salt", "1 tsp salt"),
    ],
  ],
  [
    "amounts-disagree",
    [line("2.5 kg (roughly 3 lb) pork shoulder", "roughly 3 lb", "2.5 kg (about 5 1/2 lb) pork shoulder")],
  ],
  [
    "weight-assumed",
    [
      line("3 onions, sliced", "onions", "3 onions (about 400 g), sliced"),
      line("1 tin chopped tomatoes", "chopped tomatoes", "1 x 400 g tin chopped tomatoes"),
    ],
  ],
  ["weight-unknown", [line("1 box oatmeal", "oatmeal", "1 box oatmeal (500 g)")]],
  [
    "food-unknown",
    [
      line("50 g mayonaise", "mayonaise", "50 g mayonnaise"),
      line("200 g blorfberries", "blorfberries", "200 g blackberries"),
    ],
  ],
  [
    "unit-doubtful",
    [line("2 T olive oil", "2 T", "2 tbsp olive oil"), line("200 flour", "200", "200 g flour")],
  ],
  [
    "amount-doubtful",
    [
      line("1/0 g salt", "1/0 g", "10 g salt"),
      line("1e9 kg flour", "1e9 kg", "1.9 kg flour"),
      line("0 ml milk", "0 ml", "50 ml milk"),
    ],
  ],
]);
