import type { Span } from '../../diagnostic/index.ts'
import type { Kinds, Row } from '../fabric.ts'
import type { LoopCode, Past } from '../past.ts'
import type { Counting, StepOf, Target } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import type { Freedom } from './place.ts'
import type { Tally } from './tally.ts'

/** Why a row can't be worked further. */
export type Stop =
  | { readonly why: 'too few'; readonly at: Span; readonly wanted: string; readonly there: number }
  | { readonly why: 'no such place'; readonly at: Span; readonly wanted: string }
  | {
      readonly why: 'repeat'
      readonly at: Span
      /** Whole repeats that fit, and stitches that are left for the next one. */
      readonly done: number
      readonly asked: number | null
      readonly left: number
      /** Stitches that one repeat uses; 0 when unknown. */
      readonly uses: number
    }
  | { readonly why: 'goes nowhere'; readonly at: Span }
  /** Words that only the rows before could give a meaning to. */
  | { readonly why: 'unread'; readonly at: Span; readonly expected: string }
  | { readonly why: 'too many'; readonly at: Span; readonly most: number }
  | { readonly why: 'below zero'; readonly at: Span; readonly number: number }
  | { readonly why: 'nothing there'; readonly at: Span }

/** Bounds that no written pattern comes near; a slip of the pen may. */
export const mostStitches = 20_000
export const mostSteps = 100_000

/** What a row is made of so far. `groups` and `loops` may be shorter than `places`: the rest belongs to none, and takes both loops. */
export interface Made {
  readonly places: number[]
  readonly groups: number[]
  readonly names: string[]
  /** For each place the position in the row below that it goes into, -1 for none. */
  readonly bases: number[]
  /** Further positions that stitches worked together go into, in the order of the places made. */
  readonly again: { readonly made: number; readonly base: number }[]
  readonly loops: LoopCode[]
  /** Picots, by how many places are made before each, with their chains; kept only where the row is traced. */
  readonly picots: { readonly after: number; readonly chains: number }[]
}

/** An opening chain, before it is known whether it counts. */
export interface Opening {
  readonly at: Span
  readonly chains: number
  readonly counting: Counting | null
}

/** What decides between readings of the same words; `usual` is the one that is taken first, 0 where none is given. */
export type Choose = (key: string, options: number, usual?: number) => number

/** How the pattern's opening chains count, as far as it has been said or found. */
export interface OpeningRules {
  readonly said: ReadonlyMap<number, Counting>
  /** What some row says of its own opening chain, by length, where no row says otherwise. */
  readonly elsewhere: ReadonlyMap<number, Counting>
  /** Chains into whose top later rows work, and chains into whose space they do. */
  readonly topsUsed: ReadonlySet<number>
  readonly spacesUsed: ReadonlySet<number>
}

/** A row with stitches that were left on purpose, as the hook last saw it. */
export interface Resting {
  readonly row: Row
  /** The first place that has not been used. */
  readonly cursor: number
}

/** A piece made before, as its last row lies. */
export interface Finished {
  readonly name: string
  readonly row: Row
  /** The row in the making stands on it. */
  readonly here: boolean
}

/** A stretch of the places below that the row has turned away from. */
export interface Stretch {
  readonly key: string
  readonly cursor: number
  readonly end: number
}

/** One row in the making, for one size. */
export interface Work {
  readonly kinds: Kinds
  readonly size: number
  readonly choose: Choose
  readonly rules: OpeningRules
  readonly style: 'flat' | 'round' | null
  /** The first stitch of the row's words: what an opening chain stands for. */
  readonly rowStitch: Stitch | null
  /** A long chain that opens the row leads to a low stitch further on. */
  readonly leadsOn: boolean
  readonly makesSpaces: boolean
  /** The row's words name the turning chain, so that `each st` leaves it for them. */
  readonly namesTurningChain: boolean
  /** All stitches that the row's words go into or skip. */
  readonly stitchesNamed: Target
  /** All spaces that the row's words go into or skip. */
  readonly spacesNamed: Target
  /** The row goes along edges of the piece: at a corner it turns from one to the next. */
  readonly alongEdges: boolean
  /** All its places are in one row further down. */
  readonly goesDeep: boolean
  /** The order of the row further down that it goes into; -1 for none. */
  deepIn: number
  /** Rows with stitches left, by number; the last one is last. */
  readonly resting: ReadonlyMap<number, Resting>
  /** How freely the row's nouns are taken; null before it has been asked. */
  freedom: Freedom | null
  /** The number of the resting row that this row has gone back to. */
  resumed: number | null
  /** Pieces that the row may join. */
  readonly finished: readonly Finished[]
  /** The row joins pieces by chains, which are worked into from both sides. */
  readonly bridges: boolean
  /** Chains of a spoke that are still to be worked down. */
  spoke: number
  /** Chains between pieces, made so far. */
  bridge: number
  /** The piece that the row goes along, and those it has turned away from. */
  stretch: string
  stretches: readonly Stretch[]
  below: Row | null
  cursor: number
  /** Chains used of a space that is worked chain by chain. */
  sub: number
  /** Places from here on are not for the step at hand. */
  end: number
  /** The place used last, -1 for none. */
  last: number
  /** Places at the end that slip stitches passed at the beginning. */
  passed: number
  /** Whether the row below ends in a joined round. */
  joinedBelow: boolean
  opening: Opening | null
  /** Chains that the row has opened with, or has passed from the hook in its foundation; 0 for none. */
  opened: number
  /** The rows before, and those that this row has begun on. */
  past: Past | null
  /** What the next row of the fabric is numbered by, in order of working. */
  order: number
  /** Whether what each stitch goes into is written down. */
  readonly traces: boolean
  /** The positions that the phrase at hand goes into, where they are written down. */
  into: number[]
  /** The loop that the step at hand works into. */
  loop: LoopCode
  readonly made: Made
  readonly tally: Tally
  readonly inside: Tally
  stitches: number
  slips: number
  /** Yarn has been joined in the place used last. */
  yarnJoined: boolean
  /** The first place of a foundation chain that is worked into. */
  begunAt: number
  /** What the row is said to come to; null where that is not said. */
  readonly statedTotal: number | null
  /** Stitches along an edge whose number follows from what the row comes to. */
  leftOpen: StepOf<'pickUp'> | null
  /** Some number in the row is left to the eye, and was estimated. */
  byEye: boolean
  /** Positions of what has been made that markers hang in. */
  marks: readonly number[]
  /** The position of the row below whose marker has been passed last, -1 for none. */
  markPassed: number
  /** All that the row makes goes into its ring. */
  intoRing: boolean
  /** The row goes around the end of its chain, or around an opening. */
  around: boolean
  /** The positions that slip stitches went into. */
  readonly slippedInto: number[]
  /** How many places were made before each of them. */
  readonly slippedAfter: number[]
  turningStitches: number
  /** What the last skip has passed over and nothing has gone back to: from here up to there. */
  skippedFrom: number
  skippedTo: number
  /** Passed over without being said. */
  unsaid: number
  /** Of these, spaces of a kind that the row goes into. */
  spacesPassed: number
  /** The first place has been gone into as the next one: a round that comes back to it ends before it. */
  firstTaken: boolean
  /** Where words that skip have led; -1 before there were any. */
  skipped: number
  leaveSaid: boolean
  /** How many the words say are left; null where they give no number. */
  leaveCount: number | null
  joined: boolean
  /** The last loop of the round was closed by a stitch: the next round begins in it. */
  closedInLoop: boolean
  turnSaid: boolean | null
  turnedBefore: boolean
  fastened: boolean
  /** The step that used a place last, to tell what was left of its kind. */
  lastTarget: Target | null
  /** The last repeat that went to the end, what one pass of it uses, what had been passed over by then, and where it ended. */
  endless: {
    readonly at: Span
    readonly done: number
    readonly uses: number
    readonly passed: number
    readonly cursor: number
  } | null
  steps: number
  /** `5 ch, miss 3, …`: the words skip right after an opening chain, and whether that counts the stitch under it. */
  readonly skipsAfterChain: boolean
  countsFirst: boolean
  /** Places that each pass of the last repeat begins by skipping. */
  skipsFirst: number
  /** Where words that go into each place of a kind have come to; -1 where none have been worked. */
  swept: number
  /** Where the row, or this pass of a repeat, began in the row below. */
  passStart: number
  /** Repetitions around the step at hand: a chain in one is no opening chain. */
  loops: number
}
