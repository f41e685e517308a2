// generated from data/work-rates.csv by scripts/build-tables.ts
import type { RatePer } from "../../model/food.ts";

/** Technique, food, what it is counted by, and least, likely and most minutes of one. */
export const workRateRows: readonly (readonly [string, string, RatePer, number, number, number])[] = [
  ["peel","potato","kilo",4,5.5,7.5],
  ["peel","carrot","kilo",4.5,6,9],
  ["peel","onion","kilo",4.5,6,9],
  ["peel","shallot","kilo",14,18,25],
  ["peel","garlic","kilo",30,40,55],
  ["trim","green-bean","kilo",12,15,20],
  ["pod","broad-bean","kilo",15,20,30],
  ["dice","onion","kilo",9,12,20],
  ["dice","shallot","kilo",12,15,25],
  ["dice","red-pepper","kilo",7,9.1,14],
  ["julienne","red-pepper","kilo",5,6.1,10],
  ["slice","button-mushroom","kilo",2.5,3.3,6],
  ["slice","chestnut-mushroom","kilo",2.5,3.3,6],
  ["slice","tomato","kilo",8,12,18],
  ["dice","tomato","kilo",12,16.2,24],
  ["devein","oyster","piece",0.65,0.8,1],
  ["devein","scallop","piece",1.2,1.5,2],
];
