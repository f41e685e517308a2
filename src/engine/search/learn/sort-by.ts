/**
 * Puts the first `count` items of an order by their rising keys. Insertion sort: between two looks at a search the
 * order of the time before is nearly right.
 */
export const sortBy = (order: Int32Array, key: Int32Array, count: number): void => {
  for (let i = 1; i < count; i++) {
    const item = order[i] as number;
    const value = key[item] as number;
    let j = i - 1;
    while (j >= 0 && (key[order[j] as number] as number) > value) {
      order[j + 1] = order[j] as number;
      j--;
    }
    order[j + 1] = item;
  }
};
