import { readDraft } from '../../plugins/read-draft.ts'
import { proofDocument } from '../../src/proof/document.ts'
import { proofText } from '../../src/proof/text.ts'
import { generateDraft } from './generate.ts'
const text = generateDraft(1)
const n = Number(process.argv[2] ?? 300)
for (let i = 0; i < n; i++) {
  const { source, outcome } = readDraft('draft.md', 'draft', text)
  proofText(proofDocument(source, outcome.value, outcome.diagnostics))
}
