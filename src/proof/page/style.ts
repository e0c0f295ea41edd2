/** The proof page carries its style with it, so that it can be sent as one file. Colours are the site's. */
export const proofStyle = `
:root { color-scheme: light dark; --paper: #f8f3ea; --raised: #fffcf6; --ink: #29241f; --soft: #645a4f; --line: #dccfba; --accent: #1d5c63; --wrong: #8c2f1b; --wash: #f6e2da; }
@media (prefers-color-scheme: dark) { :root { --paper: #191714; --raised: #23201c; --ink: #e9e1d4; --soft: #b3a797; --line: #40392f; --accent: #8fc9c5; --wrong: #f0a48f; --wash: #3a221b; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.55 "Atkinson Hyperlegible Next", system-ui, sans-serif; font-variant-numeric: tabular-nums; }
main { max-width: 78rem; margin: 0 auto; padding: 2rem clamp(1rem, 4vw, 2.5rem) 4rem; }
h1, h2, h3 { font-family: Literata, Georgia, serif; line-height: 1.25; text-wrap: balance; }
h2 { margin-top: 2.5rem; padding-top: 1.5rem; border-top: 1px solid var(--line); }
h3 { margin-bottom: .5rem; }
a { color: var(--accent); text-underline-offset: .2em; }
a:focus-visible, [tabindex]:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
nav ul { display: flex; flex-wrap: wrap; gap: .5rem 1.5rem; padding: 0; list-style: none; }
.verdict-line { font-size: 1.25rem; }
#findings ul { padding: 0; list-style: none; }
#findings li { margin: 0 0 1rem; padding: .75rem 1rem; background: var(--raised); border: 1px solid var(--line); border-inline-start: .375rem solid var(--soft); border-radius: .25rem; }
#findings li.error { border-inline-start-color: var(--wrong); }
#findings li p { margin: .25rem 0; max-width: 46rem; }
.code { color: var(--soft); }
.hint { font-style: italic; }
pre { margin: .5rem 0; overflow-x: auto; font: .9rem/1.5 ui-monospace, monospace; white-space: pre-wrap; overflow-wrap: anywhere; }
mark { background: var(--wash); color: inherit; text-decoration: underline wavy var(--wrong); text-underline-offset: .25em; }
.wide { overflow-x: auto; margin-block: 1.5rem; }
table { border-collapse: collapse; background: var(--raised); }
caption { padding: .5rem 0; text-align: start; font: 600 1.125rem Literata, Georgia, serif; }
th, td { padding: .3rem .75rem; border: 1px solid var(--line); text-align: end; vertical-align: top; white-space: nowrap; }
th:first-child, td.noun, td.verdict, .rows thead th:nth-last-child(-n + 2) { text-align: start; }
td.verdict { white-space: normal; min-width: 8rem; }
thead th { color: var(--soft); font-weight: 600; }
tr:target th, th:target { outline: 2px solid var(--accent); }
.differs { background: var(--wash); color: var(--wrong); }
@media print { body { background: #fff; color: #000; } nav { display: none; } tr { break-inside: avoid; } }
`.trim()
