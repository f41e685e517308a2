/**
 * Currencies whose minor unit is not a hundredth, ISO 4217 (from memory; checked against the ICU data of the
 * running Node in the test beside this file, where the two agree).
 */
const decimalsByCode: ReadonlyMap<string, number> = new Map([
  ...[
    "BIF",
    "CLP",
    "DJF",
    "GNF",
    "ISK",
    "JPY",
    "KMF",
    "KRW",
    "PYG",
    "RWF",
    "UGX",
    "VND",
    "VUV",
    "XAF",
    "XOF",
    "XPF",
  ].map((code) => [code, 0] as const),
  ...["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"].map((code) => [code, 3] as const),
]);

/** Signs that stand before an amount; other currencies are shown by their code. */
const signs: ReadonlyMap<string, string> = new Map([
  ["GBP", "£"],
  ["EUR", "€"],
  ["USD", "$"],
  ["AUD", "A$"],
  ["NZD", "NZ$"],
  ["CAD", "CA$"],
  ["JPY", "¥"],
]);

/** How many decimals the minor unit of a currency takes; 2 for codes that are not listed. */
export const currencyDecimals = (currency: string): number => decimalsByCode.get(currency) ?? 2;

/** An amount in minor units, as written on a bill: "£12.40", "SEK 120.00", "¥980". */
export const moneyText = (minor: number, currency: string): string => {
  const decimals = currencyDecimals(currency);
  const amount = (Math.abs(minor) / 10 ** decimals).toFixed(decimals);
  const sign = signs.get(currency);
  return `${minor < 0 ? "-" : ""}${sign ?? `${currency} `}${amount}`;
};
