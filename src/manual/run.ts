import type { Beside } from '../../plugins/read-beside.ts'
import { type ReadDraft, readDraft } from '../../plugins/read-draft.ts'
import { fromBytes } from '../cli/draft-file.ts'
import type { Solver } from '../formula/index.ts'
import type { FileBeside } from '../grading/index.ts'
import type { SampleDraft, WrittenSample } from './sample.ts'
import { textOf } from './sample.ts'

function besideSample({ beside = {} }: WrittenSample): Beside {
  const textOf = (path: string) => beside[path.replace(/^\.\//, '')]
  return {
    readBeside: (path): FileBeside => {
      const text = textOf(path)
      return text === undefined ? { kind: 'missing' } : { kind: 'text', text }
    },
    lookBeside: (path) => {
      const text = textOf(path)
      return text === undefined ? 'missing' : text.startsWith('\u0089PNG') ? 'picture' : 'other'
    },
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
