/** What the line about a reader's place says. */
export interface PlaceWords {
  /** `Rnd 9, 4 of 16` */
  readonly row: string
  /** `34 % done, 1,240 stitches left` */
  readonly progress: string
  readonly percent: number
  readonly canUndo: boolean
  readonly allDone: boolean
}

/** The line in the bar that says where its reader was, and its buttons. */
export interface PlaceLine {
  /** Null before a reader has begun. */
  readonly show: (words: PlaceWords | null) => void
  /** Says something to those who hear the page, when it suits. */
  readonly say: (words: string) => void
}

export interface PlaceActions {
  /** To the row in hand. */
  readonly jump: () => void
  /** The row in hand is done. */
  readonly done: () => void
  readonly undo: () => void
}

/** Null on a page that has no such line. */
export function placeLine(actions: PlaceActions): PlaceLine | null {
  const line = document.querySelector<HTMLElement>('.place')
  const [jump, undo, done] = line?.querySelectorAll('button') ?? []
  const [row, progress] = jump?.querySelectorAll('span') ?? []
  const meter = line?.querySelector('progress')
  const status = document.querySelector<HTMLElement>('.place-said')
  if (!line || !jump || !undo || !done || !row || !progress || !meter || !status) return null
  jump.addEventListener('click', actions.jump)
  done.addEventListener('click', actions.done)
  undo.addEventListener('click', () => undo.ariaDisabled !== 'true' && actions.undo())
  return {
    show: (words) => {
      line.hidden = words === null
      line.parentElement?.classList.toggle('bar-with-place', !line.hidden)
      if (words === null) return
      row.textContent = words.row
      progress.textContent = words.progress
      meter.value = words.percent
      undo.ariaDisabled = String(!words.canUndo)
      done.hidden = words.allDone
    },
    say: (words) => {
      status.textContent = words
    },
  }
}
