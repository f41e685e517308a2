import { type YamlFile, yamlFile } from "./yaml-file.ts";

/** Reads JSON; the places of its parts are only looked up when something is wrong with it. */
export const jsonFile = (file: string, text: string): YamlFile => {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return yamlFile(file, text);
  }
  let marked: YamlFile | null = null;
  const marks = (): YamlFile => {
    marked ??= yamlFile(file, text);
    return marked;
  };
  return {
    value,
    placeOf: (path) => marks().placeOf(path),
    placeOfKey: (path, key) => marks().placeOfKey(path, key),
    problems: [],
  };
};
