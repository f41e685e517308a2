import { expect, it } from "vitest";
import { joinSpans, startsInside } from "./start-sets.ts";

const all = [{ from: 0, to: 1000 }];
const shifts = [
  { from: 100, to: 200 },
  { from: 300, to: 400 },
];

const cases: readonly [
  what: string,
  stretches: readonly { offset: number; length: number }[],
  expected: unknown,
][] = [
  [
    "work of 30 ends by the end of a shift",
    [{ offset: 0, length: 30 }],
    [
      { from: 100, to: 170 },
      { from: 300, to: 370 },
    ],
  ],
  [
    "work as long as the shift has one start",
    [{ offset: 0, length: 100 }],
    [
      { from: 100, to: 100 },
      { from: 300, to: 300 },
    ],
  ],
  ["longer work has none", [{ offset: 0, length: 101 }], []],
  [
    "two stretches may lie in two shifts",
    [
      { offset: 0, length: 10 },
      { offset: 200, length: 10 },
    ],
    [{ from: 100, to: 190 }],
  ],
];
for (const [what, stretches, expected] of cases) {
  it(what, () => expect(startsInside(stretches, shifts, all)).toEqual(expected));
}

it("joins shifts that touch or overlap, and keeps a pause", () => {
  const spans = [
    { from: 300, to: 400 },
    { from: 0, to: 100 },
    { from: 100, to: 150 },
    { from: 350, to: 360 },
  ];
  expect(joinSpans(spans)).toEqual([
    { from: 0, to: 150 },
    { from: 300, to: 400 },
  ]);
});
