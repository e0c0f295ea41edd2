import type { Span } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'
import type { Count } from './count.ts'
import type { LoopCode } from './past.ts'
import type { Stitch } from './terms/stitch.ts'

/** Which places of the row below a phrase means. */
export type Accepts =
  /** Any stitch. `said` is false where the phrase names no noun: `sk 2`, `5 sc`. */
  | { readonly kind: 'stitch'; readonly said: boolean }
  | { readonly kind: 'named'; readonly stitch: Stitch }
  /** A special stitch or a group in one place, by its name; `member` where one place of it is named: `3rd dc of next shell`. */
  | { readonly kind: 'special'; readonly name: string; readonly size?: number; readonly member?: Member }
  /** A chain space; `chains` null for any. A `loop` may be a stitch where there are no spaces. */
  | { readonly kind: 'space'; readonly chains: number | null; readonly loop?: true }
  | { readonly kind: 'chain' }
  | { readonly kind: 'corner' }
  /** The space between two neighbours: `sp between groups`, `between next 2 dc` */
  | { readonly kind: 'gap'; readonly between: 'groups' | 'stitches' | 'any' }
  /** The stitch or space that a marker hangs in. */
  | { readonly kind: 'marked' }
  /** The end of a row, along the side of the piece. */
  | { readonly kind: 'rowEnd' }
  /** One of so many stitches side by side: `in the middle one of the 5 tr`; `nth` null for the middle one. */
  | { readonly kind: 'run'; readonly nth: number | null; readonly of: number; readonly stitch: Stitch | null }
  /** The middle of a group of three or more in one place: `in the centre of each scallop` */
  | { readonly kind: 'middle' }
  /** The middle stitch of the whole row */
  | { readonly kind: 'center' }

/** A place of a group: its middle, its first or last, or the one with this number. */
export type Member = 'middle' | 'first' | 'last' | number

/** `each st and ch-1 sp`: whatever one of them accepts. */
export type Target = readonly Accepts[]

export type Until =
  | { readonly kind: 'end' }
  /** `to last 3 sts` */
  | { readonly kind: 'leaving'; readonly count: Count; readonly of: Target }
  /** `to next corner sp`; `before`: `to 1 st before marker` */
  | { readonly kind: 'reaching'; readonly of: Target; readonly before?: Count }

/** A row further down than the one below: so many rows, or the one with a number. */
export type Depth = { readonly kind: 'rows' | 'row'; readonly number: Count }

/** Every nth place, so many of them before the first. */
export interface Interval {
  readonly every: Count
  readonly before: Count
}

/** Where a stitch or a group goes. */
export type Where =
  /**
   * `bare`: no word says that it is the next; at the beginning it may be the one that the hook stands on. `each`: the
   * words say `each of next 2`.
   */
  | {
      readonly kind: 'next'
      readonly count: Count
      readonly of: Target
      readonly depth?: Depth
      readonly bare?: boolean
      /** The noun is left out: `in the next` after a loop is the next loop. */
      readonly elliptic?: true
      readonly each?: true
    }
  | {
      readonly kind: 'each'
      readonly of: Target
      readonly until: Until
      readonly depth?: Depth
      /** Not all of them: `in every other st` */
      readonly interval?: Interval
    }
  /** `in skipped st`: back to what the row has just passed over. */
  | { readonly kind: 'skipped'; readonly count: Count }
  /** Into a row further down, past the stitch in front of it, which is skipped by name. */
  | { readonly kind: 'aside' }
  | { readonly kind: 'first'; readonly count: Count; readonly of: Target }
  | { readonly kind: 'last'; readonly count: Count; readonly of: Target }
  /** The nth place from the beginning of the row or of this pass of a repeat: `in the third`. */
  | { readonly kind: 'nth'; readonly nth: Count; readonly of: Target }
  /** The place used last; at the start of a row the first one. `start`: `in same st as beg ch-3`. */
  | { readonly kind: 'same'; readonly start: boolean; readonly noun?: Target }
  /** `in 2nd ch from hook`; `said` is false for `in the 2nd ch`, which may be the second of those ahead. */
  | { readonly kind: 'fromHook'; readonly nth: Count; readonly counting: Counting | null; readonly said: boolean }
  /** `magic`: the words make the ring by naming it. */
  | { readonly kind: 'ring'; readonly magic: boolean }
  /**
   * `in top of turning ch`; `space`: `in turning ch sp`, where it has one. `loop`: chains of a loop that the words may
   * mean as well, as in `3rd of 5 ch`.
   */
  | { readonly kind: 'turningChain'; readonly space: boolean; readonly loop?: number | null }

/** Where a row goes that does not, or not only, go into the row below. */
export type Source =
  /** Stitches that were left unworked: of the row with this number, null for the last such row. */
  | { readonly kind: 'unworked'; readonly row: Count | null }
  /** The free side of the chain that the piece was begun on. */
  | { readonly kind: 'otherSide' }
  /** Loops that a row worked into one loop only has left free; `row` null for the last row that has some. */
  | { readonly kind: 'freeLoops'; readonly row: Count | null }
  /** All stitches of an earlier row, as behind petals. */
  | { readonly kind: 'row'; readonly row: Count }
  /** Another piece: `first leg`, `leg 2`, `the other half`; `which` counts from 1. */
  | { readonly kind: 'piece'; readonly which: number | 'other' | 'same'; readonly noun: string }
  /** Stitches that were passed over, and the chains that bridge them: an armhole, a thumb hole. */
  | { readonly kind: 'opening'; readonly from: 'stitches' | 'chain' | 'middle' }

/** What goes into one place. */
export type Part =
  | { readonly kind: 'stitch'; readonly stitch: Stitch; readonly count: Count }
  | { readonly kind: 'chain'; readonly count: Count }
  | { readonly kind: 'special'; readonly special: Special; readonly count: Count }
  /** Stitches begun in the one place and closed as one: `dc5tog in next st`. */
  | {
      readonly kind: 'together'
      readonly stitch: Stitch
      readonly name: string | null
      readonly legs: Count
      readonly count: Count
    }
  | { readonly kind: 'picot' }

/** A named stitch of the pattern's own. */
export interface Special {
  readonly name: string
  /** Other spellings, in lower case. */
  readonly also: readonly string[]
  /** What it makes in one place, or steps that use several. */
  readonly makes: readonly Part[] | { readonly steps: readonly Step[] } | 'one stitch'
  /** The words that define it; null for one that is known by name only. */
  readonly at: Span | null
  readonly meaning: string
}

export type Times =
  /** `(…) 4 times`: four in all */
  | { readonly kind: 'exactly'; readonly count: Count }
  /** `rep from * 4 more times`: five in all */
  | { readonly kind: 'more'; readonly count: Count }
  /** `rep from * 4 times`: five by the rule, four as often meant */
  | { readonly kind: 'said'; readonly count: Count }
  | { readonly kind: 'until'; readonly until: Until }
  /** `until there are 12 tr in all`: as often as it takes for the row to have so many; null for stitches of any kind */
  | { readonly kind: 'made'; readonly count: Count; readonly stitch: Stitch | null }

/** Whether an opening chain counts, as far as the words say it. */
/** `space`: it counts as a space of so many chains. */
export type Counting =
  | { readonly counts: false; readonly space?: number }
  | { readonly counts: true; readonly as: Stitch | null }

/** What goes into each place of a kind. */
export interface Sweeping {
  readonly at: Span
  readonly parts: readonly Part[]
  readonly where: Where & { readonly kind: 'each' }
}

/** Where a marker is hung: in the next place, the last or the first, or the middle of the last group or its space. */
export type MarkerPlace = 'here' | 'passed' | 'last' | 'middle' | 'space' | 'first'

/** One step of a row, as read. `loop`: the loop that it is worked into, where the words name one. */
export type Step = {
  readonly at: Span
  readonly loop?: LoopCode
} /** `between`: said to lie between the stitches before it, which are in their own places or all in this one. */ & (
  | {
      readonly kind: 'chain'
      readonly count: Count
      readonly counting: Counting | null
      readonly between?: Where | 'places'
      /** `3 ch`, not `ch 3`: so handbooks write. */
      readonly numberFirst?: true
    }
  | { readonly kind: 'work'; readonly parts: readonly Part[]; readonly where: Where }
  /** Stitches worked together; `times` of them for `next`, or as many as go in for `each`. */
  | {
      readonly kind: 'together'
      readonly stitch: Stitch
      /** How the draft names it: `sc2tog`; null for `dec`. */
      readonly name: string | null
      readonly legs: Count
      readonly where: Where
    }
  /** `sc in each dc, (sc, ch 2, sc) in each ch-2 sp around`: each place as it comes. */
  | { readonly kind: 'sweep'; readonly works: readonly Sweeping[] }
  /** `counting`: what chains skipped at the beginning of a foundation count as. */
  | { readonly kind: 'skip'; readonly where: Where; readonly counting?: Counting }
  /** `yarn`: where yarn is joined, which the row then begins in. */
  | { readonly kind: 'slip'; readonly where: Where; readonly yarn?: true }
  | { readonly kind: 'join' }
  /** `all`: the stitches that follow go into it, too, though they do not say so. */
  | { readonly kind: 'ring'; readonly all?: true }
  | { readonly kind: 'turn'; readonly turns: boolean }
  /** `count`: how many stitches the words say are left. */
  | { readonly kind: 'leave'; readonly count?: Count }
  /**
   * `stop`: the last pass ends before this step. `ending`: it ends with these in place of its last
   * step, as in `ending last rep with 3 dc in last sc`.
   */
  | {
      readonly kind: 'repeat'
      /** `inc x 6`: a number of times behind a single item, without brackets. */
      readonly ofItem?: true
      readonly body: readonly Step[]
      readonly stop: number | null
      readonly ending: readonly Step[] | null
      /** The step from which on `ending` stands instead; the last one where it is left out. */
      readonly endingAt?: number
      readonly times: Times
    }
  /** `rep across` without a mark: the body is found by what comes out. */
  | { readonly kind: 'repeatAll'; readonly body: readonly Step[]; readonly times: Times }
  | { readonly kind: 'sequence'; readonly body: readonly Step[] }
  /** A comma list that ends in a place: the last item goes there, or the whole list; the likelier first. */
  | { readonly kind: 'either'; readonly options: readonly (readonly Step[])[]; readonly about: string }
  /** A shaping phrase that reads differently by size. */
  | { readonly kind: 'bySize'; readonly options: PerSize<readonly Step[]> }
  /**
   * `inc 6 evenly`, `dec 1 st at each end`: only the number of stitches is settled. `over` null: the
   * rest of the row, or, where the row has been worked to its end already, the row as it stands.
   */
  | {
      readonly kind: 'evenly'
      readonly change: 1 | -1
      readonly count: Count
      readonly over: Count | null
      readonly stitch: Stitch
    }
  /** `46 sc evenly along edge`: stitches into an edge whose row ends are not counted; null where the number is left open. */
  | { readonly kind: 'pickUp'; readonly stitch: Stitch; readonly count: Count | null }
  /** Two layers closed: a stitch for each pair of places; `count` null for as many as there are. */
  | { readonly kind: 'layers'; readonly stitch: Stitch; readonly count: Count | null }
  /** From here on the row goes into other places than those of the row below. */
  | { readonly kind: 'source'; readonly source: Source }
  /** A marker is hung in a place that has been made or in the next one, or passed. */
  | { readonly kind: 'marker'; readonly place: MarkerPlace }
  | { readonly kind: 'fastenOff' }
  /** Words that make nothing: colours, markers, remarks. `counting` speaks of the opening chain. */
  | { readonly kind: 'remark'; readonly counting: Counting | null }
)

export type StepOf<K extends Step['kind']> = Extract<Step, { readonly kind: K }>
