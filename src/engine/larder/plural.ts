const irregular: ReadonlyMap<string, string> = new Map([
  ["tomato", "tomatoes"],
  ["potato", "potatoes"],
  ["mango", "mangoes"],
  ["leaf", "leaves"],
  ["loaf", "loaves"],
  ["half", "halves"],
  ["calf", "calves"],
  ["chilli", "chillies"],
  ["chili", "chilies"],
  ["goose", "geese"],
]);

const irregularSingular: ReadonlyMap<string, string> = new Map([
  ...[...irregular].map(([one, many]): [string, string] => [many, one]),
  ["tomatos", "tomato"],
  ["potatos", "potato"],
  ["mangos", "mango"],
  ["chilis", "chili"],
  ["chiles", "chile"],
  ["chillis", "chilli"],
]);

const onLastWord = (words: string, change: (word: string) => string): string => {
  const cut = words.lastIndexOf(" ") + 1;
  return words.slice(0, cut) + change(words.slice(cut));
};

/** The plural of an English name by its last word: "bay leaf" to "bay leaves", "radish" to "radishes". */
export const regularPlural = (name: string): string =>
  onLastWord(name, (word) => {
    const known = irregular.get(word);
    if (known !== undefined) return known;
    if (/(s|x|z|ch|sh)$/i.test(word)) return `${word}es`;
    if (/[^aeiou]y$/i.test(word)) return `${word.slice(0, -1)}ies`;
    return `${word}s`;
  });

/** The singular forms that a last word ending in s could have, likeliest first; empty when it does not look plural. */
export const singularsOf = (name: string): readonly string[] => {
  const cut = name.lastIndexOf(" ") + 1;
  const head = name.slice(0, cut);
  const word = name.slice(cut);
  const known = irregularSingular.get(word);
  if (known !== undefined) return [head + known];
  if (!word.endsWith("s") || word.endsWith("ss")) return [];
  const forms = [word.slice(0, -1)];
  if (word.endsWith("ies")) forms.unshift(`${word.slice(0, -3)}y`);
  if (word.endsWith("ves")) forms.push(`${word.slice(0, -3)}f`);
  if (word.endsWith("es")) forms.push(word.slice(0, -2));
  return forms.map((form) => head + form);
};
