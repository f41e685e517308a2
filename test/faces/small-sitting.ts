/** A small sitting in memory, for the tests of the faces: lunch for four, two dishes, one cook. */
export const smallSitting: Readonly<Record<string, string>> = {
  "sitting.yaml": `title: Lunch in the potting shed
date: 2026-05-09
place: Potting shed
region: uk
currency: GBP
covers: 4
spare: 0
food cost target: 30 %
tax: 20 %
kitchen: kitchen.yaml
prices: [shop.csv]
courses:
  - name: Soup
    at: "13:00"
    dishes: [nettle-soup]
  - name: Rice
    at: "13:40"
    dishes: [lemon-rice]
guests:
  - name: Ada
    needs: [vegan]
crew:
  - name: Bea
    shifts: [2026-05-09 09:00-14:30]
spare time: 10
`,
  "kitchen.yaml": `name: Potting shed
burners:
  count: 2
  kilowatts: 2
ovens: []
fridge litres: 100
pans:
  - name: large pan
    litres: 6
    count: 2
trays: 2
machines:
  - name: stick blender
    count: 1
oven minutes per 10 °C: 1
oven tolerance: 5
`,
  "shop.csv": `supplier,item,food,size,unit,price
Corner shop,Onions 1 kg,onion,1,kg,1.20
Corner shop,"Butter, salted 250 g",butter,250,g,2.10
Corner shop,Long grain rice 1 kg,long-grain rice,1,kg,2.40
Corner shop,Lemon,lemon,1,piece,0.45
`,
  "cards/nettle-soup.txt": `Nettle soup

Serves 4

2 onions, sliced
50 g butter
1 litre water
300 g potatoes, peeled and diced
200 g spinach

1. Melt the butter and sweat the onions for 10 minutes.
2. Add the potatoes and the water and simmer for 20 minutes.
3. Add the spinach, cook for 3 minutes and blend for 2 minutes.

Swaps

Vegan: replace the butter with 40 g olive oil.
`,
  "cards/lemon-rice.txt": `Lemon rice

Serves 4

300 g long-grain rice
600 ml water
1 lemon
10 g salt

Simmer the rice in the water with the salt for 12 minutes. Leave it to stand for 5 minutes. Stir in the juice of the lemon.
`,
};

/** The sitting with some files changed; null takes one away. */
export const changed = (files: Readonly<Record<string, string | null>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries({ ...smallSitting, ...files }).filter(
      (entry): entry is [string, string] => entry[1] !== null,
    ),
  );

/** Names in a folder of the files; null when there is no such folder. */
export const listIn = (
  files: Readonly<Record<string, unknown>>,
  folder: string,
): readonly string[] | null => {
  const head = `${folder.replace(/\/$/, "")}/`;
  const names = Object.keys(files)
    .filter((name) => name.startsWith(head))
    .map((name) => name.slice(head.length))
    .filter((name) => !name.includes("/"));
  return names.length === 0 ? null : names;
};
