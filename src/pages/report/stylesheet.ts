import { sha256 } from '../../kernel/index.js';

/**
 * Style rules of every page: system fonts, black on white, A4 when printed. On paper a table stands
 * beside its chart, so that three indicators share a page; on screen it stands above.
 */
export const STYLE_RULES = `
:root { color-scheme: light; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem; font: 1rem/1.45 system-ui, sans-serif;
  color: #000000; background: #ffffff; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 0.5rem; }
h2 { font-size: 1.3rem; margin: 2rem 0 0.5rem; border-bottom: 2px solid #000000; }
h3 { font-size: 1.08rem; margin: 1.5rem 0 0.3rem; }
p, ul, ol { margin: 0.4rem 0; }
h1, h2, h3, li, td, th, p, dd { overflow-wrap: anywhere; }
dl { display: grid; grid-template-columns: minmax(6rem, max-content) 1fr; gap: 0.15rem 1rem;
  margin: 0.6rem 0; }
dt { font-weight: bold; overflow-wrap: anywhere; }
dd { margin: 0; }
small { font-size: 0.8em; }
.note { border: 2px solid #000000; padding: 0.5rem 0.8rem; margin: 0.8rem 0; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-size: 0.9rem; margin: 0.6rem 0; }
caption { text-align: left; font-weight: bold; padding: 0.2rem 0; }
th, td { border-bottom: 1px solid #767676; padding: 0.25rem 0.5rem; text-align: left;
  vertical-align: top; overflow-wrap: break-word; }
tbody th { font-weight: normal; }
td p { margin: 0 0 0.2rem; }
thead th { border-bottom: 2px solid #000000; vertical-align: bottom; }
td.number { white-space: nowrap; }
.number { text-align: right; font-variant-numeric: tabular-nums; }
.part { font-style: italic; font-weight: normal; }
figure { margin: 0.8rem 0; }
svg { display: block; width: 100%; height: auto; max-width: 38rem; }
a { color: #000000; }
:focus-visible { outline: 3px solid #0072b2; outline-offset: 2px; }
.skip { position: absolute; left: -100vw; padding: 0.5rem; background: #ffffff; }
.skip:focus { left: 0; top: 0; }
@media (max-width: 40rem) {
  body { padding: 0.75rem; }
  dl { grid-template-columns: 1fr; gap: 0; }
  dd { margin-bottom: 0.4rem; }
  table { min-width: 32rem; }
}
@media print {
  body { max-width: none; padding: 0; font-size: 8.5pt; line-height: 1.3; }
  h1 { font-size: 16pt; }
  h2 { font-size: 12.5pt; margin: 5mm 0 1.5mm; }
  h3 { font-size: 10pt; margin: 3mm 0 0.5mm; }
  p, ul, ol { margin: 0.8mm 0; orphans: 3; widows: 3; }
  h1, h2, h3, caption, .lead { break-after: avoid; }
  dl { gap: 0 4mm; margin: 2mm 0; grid-template-columns: max-content 1fr; }
  .note { padding: 1mm 2mm; margin: 2mm 0; border-width: 1px; }
  .note, .left-out, .lead, ol { font-size: 8pt; }
  .left-out, ol { columns: 2; column-gap: 6mm; }
  table { font-size: 7.5pt; line-height: 1.2; margin: 1mm 0; }
  th, td { padding: 0.4mm 1.2mm; }
  th:first-child { padding-left: 0; }
  thead { display: table-header-group; }
  thead, tbody th[scope="rowgroup"] { break-after: avoid; }
  tbody:first-of-type tr:first-child { break-before: avoid; }
  td:has(> p) { width: 50%; }
  td p { margin: 0; }
  tr, figure, .note, .whole, li, dl { break-inside: avoid; }
  .scroll { overflow: visible; }
  figure { margin: 0; }
  svg { max-width: 90mm; }
  .beside { display: grid; grid-template-columns: minmax(0, 1fr) 78mm; column-gap: 3mm;
    grid-auto-flow: dense; align-items: start; }
  .beside > h2, .beside > h3, .beside > p { grid-column: 1 / -1; }
  .beside > .scroll { grid-column: 1; }
  .beside > figure { grid-column: 2; grid-row: span 2; }
  .beside:not(:has(> figure)) { display: block; }
  .beside caption { font-size: 0; padding: 0; }
  .beside th, .beside td, .pairs th, .pairs td { padding-inline: 0.6mm; }
  .beside thead th { font-size: 7pt; line-height: 1.15; }
  .beside tbody th, .pairs tbody th { min-width: 18mm; overflow-wrap: anywhere; }
  .beside h2 { font-size: 11pt; margin: 3mm 0 1mm; border-bottom-width: 1px; }
  .pairs .scroll { break-inside: avoid; }
  .remark { font-size: 6pt; }
  abbr { text-decoration: none; }
  .pairs { display: grid; grid-template-columns: 1fr 1fr; column-gap: 4mm; align-items: start; }
  .pairs > .wide { grid-column: 1 / -1; display: grid; grid-template-columns: 1fr 1fr;
    column-gap: 4mm; }
  .wide > :not(figure) { grid-column: 1 / -1; }
  a { text-decoration: none; }
  nav, .skip { display: none; }
}
@page { size: A4; margin: 12mm 14mm 15mm;
  @bottom-right { content: counter(page) " / " counter(pages); font: 7pt sans-serif; } }
`;

/** Words at the foot of each printed page, where the browser prints any. */
export const footRules = (words: string): string =>
  `@page { @bottom-left { content: "${cssText(words)}"; font: 7pt sans-serif; } }`;

/** Directives of a page that has these style elements and nothing else, neither script nor picture. */
export const policyOf = (styles: readonly string[]): string =>
  `default-src 'none'; style-src ${styles.map(sourceOf).join(' ')}; ` +
  `base-uri 'none'; form-action 'none'`;

/** The source of a style element with these rules, as Content Security Policy 3 names it. */
const sourceOf = (rules: string): string =>
  `'sha256-${Buffer.from(sha256(new TextEncoder().encode(rules)), 'hex').toString('base64')}'`;

/**
 * Text inside a string of CSS: all but plain letters and digits stand as their code point.
 *
 * Source: CSS Syntax Module Level 3, section 4.3.7 (escaped code points).
 */
const cssText = (words: string): string =>
  words.replace(
    /[^A-Za-z0-9 ,.-]/gu,
    (letter) => `\\${(letter.codePointAt(0) ?? 0).toString(16)} `,
  );
