import type { Diagnostic, Span } from '../../diagnostic/index.ts'
import type { Content } from '../content.ts'
import type { Label } from '../label.ts'
import type { Unread } from '../reader.ts'
import type { SizeLists } from '../sizelist.ts'
import type { Stated } from '../stated/item.ts'
import type { Stitch } from '../terms/stitch.ts'
import type { Word } from '../words.ts'
import type { Wording } from './prepare.ts'

/** A row as read from the draft, before it is worked. */
export interface ReadRow {
  readonly piece: string
  /** Whether it is the first row under its heading. */
  readonly opensSection: boolean
  readonly label: Label | null
  readonly only: readonly number[] | null
  readonly at: Span
  readonly steps: Span
  readonly content: Content | null
  readonly unread: Unread | null
  /** A placeholder or a size list in it is wrong, which has been said already. */
  readonly broken: boolean
  readonly stated: Stated | null
  /** A count for each row of a range, where there are several; else empty. */
  readonly run: readonly Stated[]
  readonly lists: SizeLists['lists']
  readonly words: readonly Word[]
  /** Something else than rows stands between it and the row before: what follows may count anew. */
  readonly afterBreak: boolean
  /** The yarn has been cut before it, in words of their own. */
  readonly afterEnd: boolean
  /** It stands in the draft once, but is worked again between other rows. */
  readonly again: boolean
}

/** What grows while a draft is cut into rows. */
export interface Cutter extends Wording {
  readonly rows: ReadRow[]
  readonly prose: string[]
  readonly found: Diagnostic[]
  stitch: Stitch | null
}
