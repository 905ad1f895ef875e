import { sha256 } from '../../kernel/index.js';

/** All style rules of the report: system fonts, black on white, A4 pages when printed. */
export const STYLE_RULES = `
:root { color-scheme: light; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem; font: 1rem/1.45 system-ui, sans-serif;
  color: #000000; background: #ffffff; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 0.5rem; }
h2 { font-size: 1.3rem; margin: 2rem 0 0.5rem; border-bottom: 2px solid #000000; }
h3 { font-size: 1.08rem; margin: 1.5rem 0 0.3rem; }
p, ul, ol { margin: 0.4rem 0; }
li, td, th, p { overflow-wrap: break-word; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0.15rem 1rem; margin: 0.6rem 0; }
dt { font-weight: bold; }
dd { margin: 0; }
.note { border: 2px solid #000000; padding: 0.5rem 0.8rem; margin: 0.8rem 0; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-size: 0.9rem; margin: 0.6rem 0; }
caption { text-align: left; font-weight: bold; padding: 0.2rem 0; }
th, td { border-bottom: 1px solid #767676; padding: 0.25rem 0.5rem; text-align: left;
  vertical-align: top; }
tbody th { font-weight: normal; }
td p { margin: 0 0 0.2rem; }
thead th { border-bottom: 2px solid #000000; vertical-align: bottom; }
td.number { white-space: nowrap; }
.number { text-align: right; font-variant-numeric: tabular-nums; }
.part { font-style: italic; font-weight: normal; }
figure { margin: 0.8rem 0; }
svg { display: block; width: 100%; height: auto; max-width: 45rem; }
a { color: #000000; }
@media print {
  body { max-width: none; padding: 0; font-size: 9.5pt; }
  h1 { font-size: 17pt; } h2 { font-size: 13pt; } h3 { font-size: 11pt; }
  h2, h3, caption { break-after: avoid; }
  table { font-size: 8.5pt; line-height: 1.25; margin: 2mm 0; }
  th, td { padding: 0.7mm 1.5mm; }
  thead { display: table-header-group; break-after: avoid; }
  tbody:first-of-type tr:first-child { break-before: avoid; }
  tr, figure, .note, .whole, .scroll, li { break-inside: avoid; }
  .scroll { overflow: visible; }
  svg { max-width: 150mm; }
  a { text-decoration: none; }
  nav { display: none; }
}
@page { size: A4; margin: 16mm 14mm 18mm;
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
`;

/** The source of a style element with these rules, as Content Security Policy 3 names it. */
const STYLE_SOURCE = `'sha256-${toBase64(sha256(new TextEncoder().encode(STYLE_RULES)))}'`;

const ALLOWED = `default-src 'none'; style-src ${STYLE_SOURCE}; base-uri 'none'; form-action 'none'`;

/** The policy as the report says it of itself, for a copy that was saved. */
export const SAVED_POLICY = ALLOWED;

/**
 * Value of the header Content-Security-Policy to send with the report: the rules above, and
 * nothing else, neither script nor picture nor anything from elsewhere.
 */
export const QUALITY_REPORT_POLICY = `${ALLOWED}; frame-ancestors 'none'`;

function toBase64(hex: string): string {
  return Buffer.from(hex, 'hex').toString('base64');
}
