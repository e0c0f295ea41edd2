/**
 * The core of sizewright, for people who have a site or a tool of their own: a draft goes in, a pattern with
 * every number settled and every row worked comes out, with what was found on the way. No file is read and
 * nothing is printed; `sizewright/remark` and `sizewright/markdown` are the ways in from Markdown.
 */
export type { Code, Diagnostic, Outcome, Severity, Source, Span } from './diagnostic/index.ts'
export { catalogue, createSource, placeOf } from './diagnostic/index.ts'
export type { FileBeside, ReadBeside } from './grading/index.ts'
export type { Segment, Value } from './measure/index.ts'
export { textForAll, textForSize } from './measure/index.ts'
export type { LookBeside } from './pattern/checks/pictures.ts'
export type { Block, Inline } from './pattern/node.ts'
export type { Pattern, ValueNode } from './pattern/pattern.ts'
export { type DraftText, resolveDraft } from './pattern/resolve.ts'
export { countsCsv } from './proof/counts.ts'
export { type ProofDocument, proofDocument } from './proof/document.ts'
export { proofText } from './proof/text.ts'
export type { Ledger, LedgerRow } from './rows/ledger.ts'
