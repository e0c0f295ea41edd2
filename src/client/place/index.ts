import type { ReaderData } from '../../html/reader-data.ts'
import type { Memory } from '../memory.ts'
import { fromOlder, isPlaceOf, type Kept, stepped, steppedBack } from './keep.ts'
import { placeNotice } from './notice.ts'
import { ownSize } from './own-size.ts'
import { nothingDone, withDone } from './place.ts'
import { placeLine } from './place-line.ts'
import { addControls, focusRow, type RowControls, revealRow } from './row-controls.ts'
import type { WorkRow } from './rows.ts'
import { currentOf, lineWords, moved, openSession, placeOf, reopened, type Session, saidNext } from './session.ts'

/**
 * Lets rows be ticked off, and remembers how far a reader has come, for each size and edition. What comes back hands it
 * other numbers, and rows that were put into the page anew.
 */
export function startPlace(published: ReaderData, memory: Memory): (data: ReaderData) => void {
  let data = published
  let session: Session | null = null
  let controls: RowControls | null = null
  const line = placeLine({
    jump: () => focusRow(current()?.row ?? null),
    done: () => {
      const own = current()
      if (own !== null) set(own.row, own.done + 1)
      revealRow(current()?.row ?? null)
    },
    undo: () => session !== null && move(steppedBack(session.kept)),
  })
  const notice = placeNotice(({ place }) => session !== null && move(stepped(session.kept, place)))
  const startOver = document.querySelector<HTMLElement>('.start-over')
  const current = () => (session === null ? null : currentOf(session))

  function set(row: WorkRow, count: number): void {
    if (session !== null) move(stepped(session.kept, withDone(session.work, placeOf(session), row, count)))
  }

  function move(kept: Kept): void {
    if (session === null) return
    session = moved(session, kept, memory)
    show()
    line?.say(saidNext(session))
  }

  function show(): void {
    const words = session === null ? null : lineWords(session)
    if (session !== null) controls?.show(placeOf(session), current()?.row ?? null)
    line?.show(words)
    notice.show(session === null ? 'choose' : words === null ? fromOlder(memory, session.whose) : null)
    if (startOver !== null) startOver.hidden = words === null
  }

  /** With the size that is in view now. */
  function open(): void {
    const size = ownSize(data, memory)
    if (session !== null && session.size === size && session.of === data) return
    controls?.remove()
    session = size === null ? null : openSession(data, size, memory)
    controls = session === null ? null : addControls(session.work, set)
    show()
  }

  document.querySelector('[data-choice=size]')?.addEventListener('change', open)
  startOver?.addEventListener('click', () => {
    if (session !== null) move(stepped(session.kept, nothingDone))
  })
  addEventListener('storage', ({ key }) => {
    if (session === null || !isPlaceOf(key, session.whose)) return
    session = reopened(session, memory)
    show()
  })
  open()
  return (next) => {
    data = next
    open()
  }
}
