import { styleText } from 'node:util'
import type { Severity } from '../diagnostic/index.ts'
import type { Paint } from '../proof/report/paint.ts'
import { plainPaint } from '../proof/report/paint.ts'

const colours = { error: 'red', warning: 'yellow', note: 'cyan' } as const satisfies Record<Severity, string>

/** Colours where a person looks at a terminal; none in a file or pipe, or where they are not wanted (`NO_COLOR`). */
export function paintFor(stream: NodeJS.WriteStream): Paint {
  if (!stream.isTTY || (process.env.NO_COLOR ?? '') !== '') return plainPaint
  return {
    severity: (severity, text) => styleText([colours[severity], 'bold'], text, { validateStream: false }),
    strong: (text) => styleText('bold', text, { validateStream: false }),
    faint: (text) => styleText('dim', text, { validateStream: false }),
  }
}
