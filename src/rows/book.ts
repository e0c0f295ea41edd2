import type { Diagnostic, Span } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'
import type { Kinds } from './fabric.ts'
import { createKinds } from './fabric.ts'
import type { Departure, Habits } from './habits.ts'
import type { LedgerRow } from './ledger.ts'
import type { FabricRow } from './past.ts'
import type { Piece } from './piece.ts'
import type { Choices } from './readings.ts'
import type { Names, Reporting } from './report.ts'
import type { Evidence } from './stated/rule.ts'
import type { Counting, Step } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import type { OpeningRules } from './work/state.ts'
import type { Settings } from './written.ts'

/** What grows while the rows are worked. */
export interface Book {
  readonly settings: Settings
  readonly reporting: Reporting
  readonly kinds: Kinds
  readonly said: Map<number, Counting>
  readonly rules: OpeningRules
  readonly habits: Habits
  /** Habits that came up, with how many ways each can be taken, and the rows that come out another way only. */
  readonly met: Map<string, number>
  readonly departures: Departure[]
  /** Rows as written that do not come out. */
  wrong: number
  /** Whether some row was worked and does not come out. */
  faulty: boolean
  /** How the steps of a row have been read, for other rows that repeat them. */
  readonly kept: WeakMap<readonly Step[], Choices>
  readonly rows: LedgerRow[]
  readonly fabric: PerSize<FabricRow | null>[]
  /** For each written row its first entry and the one after its last. */
  readonly entries: (readonly [number, number])[]
  readonly found: Diagnostic[]
  /** The rows that state a count. */
  readonly evidence: Evidence[]
  piece: Piece | null
  /** All pieces begun so far. */
  readonly pieces: Piece[]
  /** The order of the next row that begins a piece of its own. */
  order: number
}

/**
 * @param words the draft's own words at a place
 * @param names the special stitches of the draft
 */
export function createBook(
  settings: Settings,
  dictionary: Dictionary,
  rules: OpeningRules,
  words: (at: Span) => string,
  names: Names,
  habits: Habits,
): Book {
  return {
    settings,
    reporting: { sizes: settings.sizes, dictionary, words, names },
    kinds: createKinds(),
    said: new Map(rules.said),
    rules,
    habits,
    met: new Map(),
    departures: [],
    wrong: 0,
    faulty: false,
    kept: new WeakMap(),
    rows: [],
    fabric: [],
    entries: [],
    found: [],
    evidence: [],
    piece: null,
    pieces: [],
    order: 0,
  }
}
