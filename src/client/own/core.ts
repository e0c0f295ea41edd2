import type { Changes } from '../../pattern/own/changes.ts'
import type { Adjustable, Pattern } from '../../pattern/pattern.ts'
import { askWorker } from '../ask-worker.ts'
import type { Question, Reply } from './messages.ts'

export type Worked = Extract<Reply, { kind: 'worked' }>

/** The pattern that was worked last, with a reader's own numbers; null where there is none. */
export type OwnPattern = () => Promise<Pattern | null>

/** The core in its worker. What it can't answer, for one without a connection, comes back as null. */
export interface Core {
  readonly adjustables: readonly Adjustable[]
  readonly work: (changes: Changes) => Promise<Worked | null>
  readonly pattern: OwnPattern
}

/** Loads the core and the recipe at the address. */
export async function loadCore(recipe: string): Promise<Core | null> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  const first = await ask(worker, { kind: 'open', recipe })
  if (first.kind !== 'open') {
    worker.terminate()
    return null
  }
  // One after the other: the answers come in the order of the questions.
  let last: Promise<unknown> = Promise.resolve()
  const inTurn = (question: Question): Promise<Reply> => {
    const next = last.then(() => ask(worker, question))
    last = next
    return next
  }
  return {
    adjustables: first.adjustables,
    work: async (changes) => {
      const reply = await inTurn({ kind: 'work', changes })
      return reply.kind === 'worked' ? reply : null
    },
    pattern: async () => {
      const reply = await inTurn({ kind: 'pattern' })
      return reply.kind === 'pattern' ? reply.pattern : null
    },
  }
}

function ask(worker: Worker, question: Question): Promise<Reply> {
  return askWorker<Question, Reply>(worker, question, { kind: 'failed' })
}
