/** Minutes, attention, and what is in use: [resource, amount, °C]. */
type Stretch = readonly [number, string, ...(readonly [string, number, number?])[]];

/** A piece of work, what it is followed by (the next step when not said), and how long it keeps until then. */
type Step = {
  readonly name: string;
  readonly segments: readonly Stretch[];
  readonly finishing?: boolean;
  readonly to?: number;
  readonly least?: number;
  readonly most: number | null;
};

/** The work of one thing on a plate, in order; the last step is followed by the plate. */
export type Chain = {
  readonly hot: boolean;
  readonly weight: number;
  /** Minutes the last step keeps until the plate. */
  readonly keeps: number;
  readonly steps: readonly Step[];
};

const hands = "handsOn";
const mind = "minded";
const alone = "unattended";
const burner = ["burner", 1] as const;
const fridge = ["fridge", 1] as const;
const oven = (shelves: number, celsius: number) => ["oven", shelves, celsius] as const;

/** Invented dishes with lengths as kitchens have them: common practice, no source. */
export const chains: readonly Chain[] = [
  {
    hot: true,
    weight: 2,
    keeps: 10,
    steps: [
      { name: "tie the saddle", segments: [[18, hands]], most: 1440 },
      {
        name: "roast the saddle",
        segments: [
          [8, hands, burner],
          [1, hands],
          [55, alone, oven(1, 190)],
          [2, hands],
        ],
        least: 15,
        most: 40,
      },
      { name: "slice the saddle", segments: [[7, hands]], finishing: true, most: null },
    ],
  },
  {
    hot: true,
    weight: 3,
    keeps: 5,
    steps: [
      { name: "skin the trout", segments: [[14, hands]], most: 600 },
      { name: "fry the trout", segments: [[8, hands, ["burner", 2]]], finishing: true, most: null },
    ],
  },
  {
    hot: true,
    weight: 1,
    keeps: 35,
    steps: [
      { name: "cut leeks", segments: [[15, hands]], most: 1440 },
      {
        name: "sweat and simmer leeks",
        segments: [
          [12, mind, burner],
          [25, alone, burner],
        ],
        most: 20,
      },
      { name: "blend leeks", segments: [[10, hands, ["blender", 1]]], most: 1440 },
      { name: "warm leek soup", segments: [[10, mind, burner]], finishing: true, most: null },
    ],
  },
  {
    hot: true,
    weight: 1,
    keeps: 25,
    steps: [
      { name: "layer celeriac", segments: [[24, hands]], most: 600 },
      {
        name: "bake celeriac",
        segments: [
          [1, hands],
          [50, alone, oven(1, 170)],
          [1, hands],
        ],
        finishing: true,
        most: null,
      },
    ],
  },
  {
    hot: true,
    weight: 1,
    keeps: 30,
    steps: [
      { name: "cut root vegetables for the pot", segments: [[16, hands]], to: 2, most: 1440 },
      { name: "colour shin", segments: [[20, hands, burner]], most: 30 },
      {
        name: "stew shin",
        segments: [
          [3, hands],
          [160, alone, oven(1, 145)],
          [2, hands],
        ],
        most: 20,
      },
      { name: "cool shin", segments: [[60, alone, ["chiller", 1]]], most: 2880 },
      { name: "glaze shin", segments: [[14, mind, burner]], finishing: true, most: null },
    ],
  },
  {
    hot: true,
    weight: 2,
    keeps: 6,
    steps: [
      { name: "bag the pork", segments: [[10, hands]], most: 1440 },
      {
        name: "bathe the pork",
        segments: [
          [1, hands],
          [110, alone, ["bath", 1]],
          [2, hands],
        ],
        most: 20,
      },
      { name: "crisp the pork", segments: [[7, hands, burner]], finishing: true, most: null },
    ],
  },
  {
    hot: true,
    weight: 2,
    keeps: 5,
    steps: [
      { name: "top and tail beans", segments: [[12, hands]], most: 1440 },
      {
        name: "scald beans",
        segments: [
          [7, hands, burner],
          [8, alone],
        ],
        most: 1440,
      },
      { name: "toss beans in butter", segments: [[4, hands, burner]], finishing: true, most: null },
    ],
  },
  {
    hot: true,
    weight: 1,
    keeps: 30,
    steps: [
      {
        name: "brown bones",
        segments: [
          [5, hands],
          [40, alone, oven(1, 215)],
          [2, hands],
        ],
        most: 60,
      },
      {
        name: "draw stock",
        segments: [
          [8, mind, burner],
          [150, alone, burner],
          [8, hands, burner],
        ],
        most: 1440,
      },
      { name: "boil stock down", segments: [[28, mind, burner]], most: 2880 },
      { name: "mount gravy", segments: [[8, hands, burner]], finishing: true, most: null },
    ],
  },
  { hot: false, weight: 2, keeps: 420, steps: [{ name: "wash cress", segments: [[13, hands]], most: null }] },
  {
    hot: false,
    weight: 2,
    keeps: 200,
    steps: [{ name: "spread toasts", segments: [[22, hands]], most: null }],
  },
  {
    hot: false,
    weight: 1,
    keeps: 700,
    steps: [
      {
        name: "souse onions",
        segments: [
          [14, hands],
          [7, mind, burner],
        ],
        least: 600,
        most: 2880,
      },
      { name: "drain onions", segments: [[6, hands]], most: null },
    ],
  },
  {
    hot: false,
    weight: 2,
    keeps: 420,
    steps: [
      {
        name: "knead rolls",
        segments: [
          [5, hands],
          [10, alone, ["mixer", 1]],
          [2, hands],
          [80, alone],
        ],
        most: 20,
      },
      {
        name: "shape rolls",
        segments: [
          [13, hands],
          [40, alone],
        ],
        most: 15,
      },
      {
        name: "bake rolls",
        segments: [
          [2, hands],
          [20, alone, oven(2, 225)],
          [1, hands],
          [20, alone],
        ],
        most: null,
      },
    ],
  },
  {
    hot: false,
    weight: 1,
    keeps: 2160,
    steps: [
      {
        name: "cook lemon cream",
        segments: [
          [15, hands, burner],
          [5, hands],
        ],
        most: 12,
      },
      { name: "set lemon cream", segments: [[200, alone, fridge]], most: null },
    ],
  },
  {
    hot: false,
    weight: 1,
    keeps: 2880,
    steps: [
      { name: "cook plum ice", segments: [[16, hands, burner]], most: 20 },
      { name: "chill plum ice", segments: [[120, alone, fridge]], most: 1440 },
      {
        name: "freeze plum ice",
        segments: [
          [3, hands],
          [30, alone, ["churn", 1]],
          [4, hands],
        ],
        most: 0,
      },
      { name: "firm plum ice", segments: [[180, alone]], most: null },
    ],
  },
  {
    hot: false,
    weight: 2,
    keeps: 420,
    steps: [
      {
        name: "rub in short crust",
        segments: [
          [12, hands, ["mixer", 1]],
          [60, alone, fridge],
        ],
        most: 1440,
      },
      {
        name: "line flan rings",
        segments: [
          [16, hands],
          [30, alone, fridge],
        ],
        most: 700,
      },
      {
        name: "bake flan rings",
        segments: [
          [2, hands],
          [26, alone, oven(1, 180)],
          [2, hands],
          [25, alone],
        ],
        most: 700,
      },
      { name: "fill flans", segments: [[12, hands]], most: null },
    ],
  },
  {
    hot: false,
    weight: 1,
    keeps: 1440,
    steps: [
      { name: "whip almond batter", segments: [[9, hands, ["mixer", 1]]], most: 6 },
      {
        name: "bake almond slab",
        segments: [
          [1, hands],
          [30, alone, oven(1, 175)],
          [1, hands],
          [45, alone],
        ],
        most: 1440,
      },
      { name: "cut almond slab", segments: [[11, hands]], most: null },
    ],
  },
  {
    hot: false,
    weight: 1,
    keeps: 1440,
    steps: [
      { name: "shave pears", segments: [[14, hands]], most: 120 },
      {
        name: "dry pears",
        segments: [
          [1, hands],
          [170, alone, oven(1, 90)],
          [1, hands],
        ],
        most: null,
      },
    ],
  },
];
