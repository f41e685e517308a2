import { describe, expect, it } from "vitest";
import { currencyCodes } from "#wire/currency-codes.ts";
import { currencyDecimals, moneyText } from "./money-text.ts";
import { capital, countText, listText, numberText, percentText, quoted } from "./number-text.ts";
import { celsiusText, durationText, massText, rangeText } from "./quantity-text.ts";

describe("money", () => {
  // ICU follows use in shops for these, where ISO 4217 (from memory) has 2 decimals, and 3 for the dinar of Iraq.
  const cldrDiffers = new Set("AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR SOS SYP YER".split(" "));
  it("has the decimals that the running machine's ICU has, where ICU follows the standard", () => {
    const wrong = [...currencyCodes].filter((code) => {
      const icu = new Intl.NumberFormat("en", { style: "currency", currency: code }).resolvedOptions();
      return !cldrDiffers.has(code) && icu.maximumFractionDigits !== currencyDecimals(code);
    });
    expect(wrong).toEqual([]);
  });
  it("knows no code that ICU does not, and all of the usual ones", () => {
    const icu = new Set(Intl.supportedValuesOf("currency"));
    expect([...currencyCodes].filter((code) => !icu.has(code))).toEqual([]);
    expect(currencyCodes.size).toBeGreaterThan(150);
  });
  it.each([
    [1240, "GBP", "£12.40"],
    [5, "EUR", "€0.05"],
    [980, "JPY", "¥980"],
    [12_000, "SEK", "SEK 120.00"],
    [1205, "KWD", "KWD 1.205"],
    [-150, "USD", "-$1.50"],
    [0, "GBP", "£0.00"],
  ])("%i %s is %s", (minor, currency, text) => {
    expect(moneyText(minor, currency)).toBe(text);
  });
});

describe("amounts", () => {
  it.each([
    [massText(0.5), "0.5 g"],
    [massText(12.4), "12 g"],
    [massText(999), "999 g"],
    [massText(999.6), "1 kg"],
    [massText(2400), "2.4 kg"],
    [massText(12_345), "12.3 kg"],
    [durationText(0), "0 min"],
    [durationText(0.5), "30 s"],
    [durationText(90), "1 h 30 min"],
    [durationText(60), "1 h"],
    [durationText(3000), "2 days 2 h"],
    [durationText(Number.NaN), "–"],
    [celsiusText(180), "180 °C"],
    [celsiusText(63, "us"), "145 °F (63 °C)"],
    [rangeText(8, 10, "min"), "8–10 min"],
    [rangeText(8, 8, "min"), "8 min"],
    [numberText(0.1 + 0.2, 2), "0.3"],
    [numberText(1.005, 2), "1.01"],
    [numberText(-0.4), "0"],
    [numberText(Number.POSITIVE_INFINITY), "–"],
    [percentText(0.285), "28.5 %"],
    [countText(1, "dish", "dishes"), "1 dish"],
    [countText(0, "dish", "dishes"), "0 dishes"],
    [listText([]), ""],
    [listText(["a", "b", "c"]), "a, b and c"],
    [capital("éclair"), "Éclair"],
    [quoted("a\n b"), '"a b"'],
    [quoted("a\u001b[2Jb"), '"a·[2Jb"'],
  ])("%s", (text, expected) => {
    expect(text).toBe(expected);
  });
});
