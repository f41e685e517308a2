import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Body } from "#engine/heat/bodies.ts";
import { compositionFrom, moistFood } from "#engine/heat/composition.ts";
import { type Exposure, heatFlowed, minutesToMiddle, temperatureAfter } from "#engine/heat/conduction.ts";
import { heatToWarm, iceToCool, minutesToGive } from "#engine/heat/energy.ts";
import { potSurface, simmerLoss } from "#engine/heat/evaporation.ts";
import { freezingMinutes, thawingMinutes } from "#engine/heat/freezing.ts";
import { minutesInOven } from "#engine/heat/oven-load.ts";
import { type Shape, seriesOf, shapes } from "#engine/heat/series.ts";
import { partFrozen, thermalProperties } from "#engine/heat/thermal-properties.ts";
import { celsius, grams, minutes, share } from "#engine/index.ts";
import {
  conductivity,
  diffusivity,
  kilowatts,
  metres,
  specificHeat,
  transfer,
} from "#engine/measure/heat-units.ts";

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** Dimensionless temperature left at the middle by explicit finite differences: nodes from the middle to the surface. */
const stepped = (shape: Shape, biot: number, fourier: number): number => {
  const nodes = 24;
  const dx = 1 / nodes;
  const power = shape === "slab" ? 0 : shape === "cylinder" ? 1 : 2;
  const dt = 0.2 * Math.min(dx * dx, dx / Math.max(1, biot));
  let left = new Array<number>(nodes + 1).fill(1);
  const face = (i: number): number => ((i + 0.5) * dx) ** power;
  const volume = (i: number): number => {
    const from = Math.max(0, (i - 0.5) * dx);
    const to = Math.min(1, (i + 0.5) * dx);
    return (to ** (power + 1) - from ** (power + 1)) / (power + 1);
  };
  const faces = left.map((_, i) => face(i));
  const volumes = left.map((_, i) => volume(i));
  for (let t = 0; t < fourier; t += dt) {
    const step = Math.min(dt, fourier - t);
    left = left.map((at, i) => {
      const inward = i === 0 ? 0 : (faces[i - 1]! * (left[i - 1]! - at)) / dx;
      const outward = i === nodes ? -biot * at : (faces[i]! * (left[i + 1]! - at)) / dx;
      return at + (step * (inward + outward)) / volumes[i]!;
    });
  }
  return left[0]!;
};

const aBody: fc.Arbitrary<Body> = fc.oneof(
  between(0.002, 0.2).map((t): Body => ({ kind: "slab", thickness: metres(t) })),
  between(0.002, 0.2).map((d): Body => ({ kind: "sphere", diameter: metres(d) })),
  fc.tuple(between(0.005, 0.2), fc.option(between(0.01, 0.5), { nil: null })).map(
    ([d, l]): Body => ({
      kind: "cylinder",
      diameter: metres(d),
      length: l === null ? null : metres(l),
    }),
  ),
  fc
    .tuple(between(0.005, 0.2), between(0.005, 0.2), between(0.005, 0.2))
    .map(([a, b, c]): Body => ({ kind: "brick", sides: [metres(a), metres(b), metres(c)] })),
);

const larger = (body: Body, by: number): Body => {
  switch (body.kind) {
    case "slab":
      return { kind: "slab", thickness: metres(body.thickness * by) };
    case "sphere":
      return { kind: "sphere", diameter: metres(body.diameter * by) };
    case "cylinder":
      return {
        kind: "cylinder",
        diameter: metres(body.diameter * by),
        length: body.length === null ? null : metres(body.length * by),
      };
    case "brick":
      return {
        kind: "brick",
        sides: [metres(body.sides[0] * by), metres(body.sides[1] * by), metres(body.sides[2] * by)],
      };
  }
};

const anExposure: fc.Arbitrary<Exposure> = fc
  .record({ body: aBody, h: between(5, 1500), k: between(0.2, 0.7), alpha: between(1e-7, 1.8e-7) })
  .map(({ body, h, k, alpha }) => ({
    body,
    conductivity: conductivity(k),
    diffusivity: diffusivity(alpha),
    transfer: transfer(h),
    start: celsius(5),
    medium: celsius(100),
  }));

const aComposition = fc
  .record({
    water: between(0.02, 1),
    protein: between(0, 0.4),
    fat: between(0, 0.9),
    carbohydrate: between(0, 0.9),
  })
  .map((parts) => compositionFrom(parts) ?? moistFood);

describe("conduction", () => {
  it("agrees with a reckoning step by step, one term or many", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...shapes),
        between(0.15, 60),
        between(0.02, 1.5),
        (shape, biot, fourier) => {
          const found = seriesOf(shape, biot).left(fourier);
          // One term is within 2 % by its own claim; the steps are 24 to the half thickness.
          expect(Math.abs(found - stepped(shape, biot, fourier))).toBeLessThan(0.025);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("never leaves the bounds of start and medium, and goes one way", () => {
    fc.assert(
      fc.property(anExposure, between(0.1, 500), between(1, 3), (exposure, after, by) => {
        const early = temperatureAfter(exposure, minutes(after));
        const late = temperatureAfter(exposure, minutes(after * by));
        expect(early).toBeGreaterThanOrEqual(5 - 1e-9);
        expect(late).toBeLessThanOrEqual(100 + 1e-9);
        // Where one term takes over from many the step is below 2 %.
        expect(late).toBeGreaterThanOrEqual(early - 2);
        const flowed = heatFlowed(exposure, minutes(after));
        expect(flowed).toBeGreaterThanOrEqual(-1e-9);
        expect(flowed).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });

  it("takes no less time for a thicker piece of the same form", () => {
    fc.assert(
      fc.property(anExposure, between(1, 3), between(20, 95), (exposure, by, target) => {
        const small = minutesToMiddle(exposure, celsius(target))!;
        const large = minutesToMiddle({ ...exposure, body: larger(exposure.body, by) }, celsius(target))!;
        expect(large).toBeGreaterThanOrEqual(small * (1 - 0.02));
      }),
    );
  });

  it("finds the time that gives the temperature back, and none for what never comes", () => {
    fc.assert(
      fc.property(anExposure, between(20, 95), (exposure, target) => {
        const time = minutesToMiddle(exposure, celsius(target))!;
        expect(Math.abs(temperatureAfter(exposure, time) - target)).toBeLessThan(2);
        expect(minutesToMiddle(exposure, celsius(101))).toBeNull();
        expect(minutesToMiddle(exposure, celsius(100))).toBeNull();
        expect(minutesToMiddle(exposure, celsius(5))).toBe(0);
      }),
    );
  });
});

describe("heat", () => {
  it("takes longer for more, and for a weaker burner", () => {
    fc.assert(
      fc.property(between(1, 1e5), between(1, 5), between(0.5, 10), (mass, by, power) => {
        const to = (g: number) => heatToWarm(grams(g), specificHeat(3900), celsius(10), celsius(100));
        const time = (g: number, kW: number) => minutesToGive(to(g), kilowatts(kW), share(0.4));
        expect(time(mass * by, power)).toBeGreaterThanOrEqual(time(mass, power));
        expect(time(mass, power / by)).toBeGreaterThanOrEqual(time(mass, power));
        const ice = (g: number) => iceToCool(grams(g), specificHeat(3900), celsius(90), celsius(5));
        expect(ice(mass * by)).toBeGreaterThanOrEqual(ice(mass));
      }),
    );
  });

  it("of a mixture lies between its parts; ice is made of its water and of nothing else", () => {
    fc.assert(
      fc.property(aComposition, between(-35, 140), (composition, at) => {
        const frozen = partFrozen(composition, celsius(at));
        expect(frozen.ice + frozen.water).toBeCloseTo(composition.water, 12);
        expect(frozen.water).toBeGreaterThanOrEqual(0);
        const p = thermalProperties(frozen, celsius(at));
        expect(p.density).toBeGreaterThan(780);
        expect(p.density).toBeLessThan(1700);
        expect(p.specificHeat).toBeGreaterThan(1100);
        expect(p.specificHeat).toBeLessThan(4400);
        expect(p.conductivitySeries).toBeLessThanOrEqual(p.conductivity * (1 + 1e-9));
        expect(p.holds).toBe(true);
      }),
    );
  });

  it("out of and into the freezer takes longer for what is thicker", () => {
    fc.assert(
      fc.property(between(0.005, 0.15), between(1, 3), (thick, by) => {
        const slab = (t: number): Body => ({ kind: "slab", thickness: metres(t) });
        const freeze = (t: number) =>
          freezingMinutes(slab(t), moistFood, transfer(15), celsius(10), celsius(-25))!;
        const thaw = (t: number) =>
          thawingMinutes(slab(t), moistFood, transfer(8), celsius(-18), celsius(4))!;
        expect(freeze(thick * by)).toBeGreaterThanOrEqual(freeze(thick));
        expect(thaw(thick * by)).toBeGreaterThanOrEqual(thaw(thick));
        expect(freezingMinutes(slab(thick), moistFood, transfer(15), celsius(10), celsius(-10))).toBeNull();
        expect(thawingMinutes(slab(thick), moistFood, transfer(8), celsius(-18), celsius(-5))).toBeNull();
      }),
    );
  });

  it("boils away in step with less than the amount: a bigger pot has less surface a litre", () => {
    fc.assert(
      fc.property(between(0.2, 50), between(1, 5), (litres, by) => {
        const loss = (l: number) => simmerLoss(potSurface(l), false).likely;
        expect(loss(litres * by)).toBeGreaterThanOrEqual(loss(litres));
        expect(loss(litres * by) / (litres * by)).toBeLessThanOrEqual((loss(litres) / litres) * (1 + 1e-9));
        expect(simmerLoss(potSurface(litres), true).high).toBeLessThan(loss(litres));
      }),
    );
  });

  it("of an oven: never sooner than asked, never sooner with more in it", () => {
    const inOven = (kilos: number, asked: number, kW = 3) =>
      minutesInOven(
        {
          power: kilowatts(kW),
          efficiency: share(0.6),
          setting: celsius(180),
          start: celsius(8),
          end: celsius(80),
          capacity: kilos * 3.5,
          steam: 1,
        },
        minutes(asked),
      );
    fc.assert(
      fc.property(between(0.1, 30), between(1, 4), between(5, 180), (kilos, by, asked) => {
        expect(inOven(kilos, asked)).toBeGreaterThanOrEqual(asked);
        expect(inOven(kilos * by, asked)).toBeGreaterThanOrEqual(inOven(kilos, asked));
      }),
    );
  });
});
