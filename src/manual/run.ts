import { type ReadDraft, readDraft } from '../../plugins/read-draft.ts'
import { fromBytes } from '../cli/draft-file.ts'
import type { Solver } from '../formula/index.ts'
import type { FileBeside, ReadBeside } from '../grading/index.ts'
import type { SampleDraft, WrittenSample } from './sample.ts'
import { textOf } from './sample.ts'

function besideSample({ beside = {} }: WrittenSample): ReadBeside {
  return (path): FileBeside => {
    const text = beside[path.replace(/^\.\//, '')]
    return text === undefined ? { kind: 'missing' } : { kind: 'text', text }
  }
}

const givesUp: Solver = () => ({ kind: 'undecided' })

/** Reads and works a sample as the command would a draft that lies in a file. */
export function runSample(draft: SampleDraft, solver: Solver): ReadDraft {
  const text = textOf(draft) ?? ''
  if ('file' in draft)
    return fromBytes('mat.md', typeof draft.file === 'string' ? new TextEncoder().encode(text) : draft.file)
  const solvers = { missing: null, 'gives up': givesUp, usual: solver }
  return readDraft('mat.md', 'mat', text, solvers[draft.solver ?? 'usual'], besideSample(draft))
}
