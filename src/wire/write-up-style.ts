/** Print and screen style of a card: black on white (contrast 21 : 1), 12 points on paper, nothing torn across pages. */
export const writeUpStyle = `
@page { size: A4; margin: 16mm 18mm; }
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 1.125rem/1.45 Georgia, "Times New Roman", serif; }
main { max-width: 44rem; margin: 0 auto; padding: 1.5rem; }
h1 { font-size: 2rem; line-height: 1.15; margin: 0 0 .25rem; }
h2 { font-size: 1.3rem; margin: 1.4rem 0 .4rem; border-bottom: 1px solid #000; break-after: avoid; }
h3 { font-size: 1.1rem; margin: .9rem 0 .3rem; break-after: avoid; }
p { margin: .4rem 0; }
ul, ol { margin: .3rem 0; padding-left: 1.6rem; }
li { margin: .35rem 0; break-inside: avoid; }
small, .small { font-size: .9rem; color: #333; }
.facts { font-style: italic; }
.allergens { border: 2px solid #000; padding: .1rem .9rem .5rem; margin: 1rem 0; break-inside: avoid; }
.allergens h2 { border: 0; margin: .5rem 0 .2rem; }
table { border-collapse: collapse; break-inside: avoid; }
th, td { padding: .15rem .8rem .15rem 0; text-align: left; border-bottom: 1px solid #777; }
td { text-align: right; font-variant-numeric: tabular-nums; }
@media print { body { font-size: 12pt; } main { max-width: none; padding: 0; } }
`.trim();
