import type { Accepts, Step, StepOf, Target, Where } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import { stitchOfParts } from './work/from-hook.ts'

function stitchOfStep(step: Step): Stitch | null {
  switch (step.kind) {
    case 'work':
      return stitchOfParts(step.parts)
    case 'sweep':
      return stitchOfParts(step.works[0]?.parts ?? [])
    case 'together':
    case 'evenly':
    case 'pickUp':
    case 'layers':
      return step.stitch
    case 'repeat':
    case 'repeatAll':
    case 'sequence':
      return firstStitch(step.body)
    case 'either':
      return firstStitch(step.options[0] ?? [])
    default:
      return null
  }
}

function firstStitch(steps: readonly Step[]): Stitch | null {
  for (const step of steps) {
    const stitch = stitchOfStep(step)
    if (stitch !== null && stitch.base !== 'slipStitch') return stitch
  }
  return null
}

/** Whether some step of the row goes into the turning chain of the row below. */
function namesTurningChain(steps: readonly Step[]): boolean {
  return steps.some((step) => {
    if (step.kind === 'work' || step.kind === 'together' || step.kind === 'skip')
      return step.where.kind === 'turningChain'
    if (step.kind === 'repeat') return namesTurningChain([...step.body, ...(step.ending ?? [])])
    if (step.kind === 'sequence') return namesTurningChain(step.body)
    return (
      step.kind === 'either' &&
      (step.about === 'tail' || step.about === 'ending') &&
      step.options.some(namesTurningChain)
    )
  })
}

const byStitch = new Set<Accepts['kind']>(['stitch', 'named', 'chain', 'rowEnd'])

/** Whether a phrase goes from one stitch to the next, not to places between which others lie. */
export function goesByStitch(target: Target): boolean {
  return target.every((accept) => byStitch.has(accept.kind))
}

function goesBySpace(target: Target): boolean {
  return target.every((accept) => accept.kind === 'space' || accept.kind === 'corner')
}

function* targetsOf(step: Step): Generator<Target> {
  if (step.kind === 'repeat' || step.kind === 'repeatAll' || step.kind === 'sequence') yield* targets(step.body)
  else if (step.kind === 'either') yield* targets(step.options[0] ?? [])
  else if (step.kind === 'sweep') yield* step.works.map((work) => work.where.of)
  else if ('where' in step && 'of' in step.where) yield step.where.of
}

/** Where steps go, as their words name it. */
function targets(steps: readonly Step[]): Target[] {
  return steps.flatMap((step) => [...targetsOf(step)])
}

function isEdge(step: Step): boolean {
  if (step.kind === 'source' || step.kind === 'pickUp') return true
  if (step.kind === 'repeat' || step.kind === 'sequence') return step.body.some(isEdge)
  if (step.kind === 'either') return step.options.some((option) => option.some(isEdge))
  return step.kind === 'work' && 'of' in step.where && step.where.of.some((accepts) => accepts.kind === 'rowEnd')
}

function namesPiece(step: Step): boolean {
  return step.kind === 'source' && step.source.kind === 'piece'
}

function intoChain(step: Step): boolean {
  return step.kind === 'work' && 'of' in step.where && step.where.of.some((accepts) => accepts.kind === 'chain')
}

const works = new Set<Step['kind']>(['work', 'layers', 'sweep', 'together', 'repeat', 'either'])
const quiet = new Set<Step['kind']>(['remark', 'turn', 'fastenOff'])

/** Where the row begins, not what is made there. */
function opensElsewhere(step: Step): boolean {
  return step.kind === 'source' || (step.kind === 'either' && step.about === 'begins')
}

function opensWithChain(steps: readonly Step[]): boolean {
  return steps.find((step) => !(quiet.has(step.kind) || opensElsewhere(step)))?.kind === 'chain'
}

/** A chain after the row is joined or before it is turned is the next row's opening. */
function splitPending(steps: readonly Step[]): { own: readonly Step[]; pending: StepOf<'chain'> | null } {
  let at = steps.length - 1
  let turns = false
  while (at > 0 && quiet.has(steps[at]?.kind ?? 'chain')) {
    turns ||= steps[at]?.kind === 'turn'
    at -= 1
  }
  const chain = steps[at]
  const before = steps[at - 1]
  const ends = turns || before?.kind === 'join' || before?.kind === 'turn' || before?.kind === 'slip'
  if (chain?.kind !== 'chain' || !ends || at === 0) return { own: steps, pending: null }
  if (!steps.slice(0, at).some((step) => works.has(step.kind))) {
    return { own: steps, pending: null }
  }
  return { own: steps.toSpliced(at, 1), pending: chain }
}

function intoSpace(step: Step): boolean {
  return step.kind === 'work' && 'of' in step.where && step.where.of.every((accepts) => accepts.kind === 'space')
}

/** `5 ch, 1 dc in the first loop`: from low stitch to low stitch a long chain leads on, it stands for none. */
function leadsOn(steps: readonly Step[]): boolean {
  const [first] = steps.filter((step) => !(quiet.has(step.kind) || step.kind === 'chain'))
  if (first?.kind === 'repeat' || first?.kind === 'repeatAll' || first?.kind === 'sequence') return leadsOn(first.body)
  if (first?.kind === 'either') return leadsOn(first.options[0] ?? [])
  return first?.kind === 'skip' || (first !== undefined && intoSpace(first))
}

function skipsAfterChain(steps: readonly Step[]): boolean {
  const first = steps.find((step) => !(quiet.has(step.kind) || step.kind === 'chain'))
  return first?.kind === 'skip' && first.where.kind === 'next' && first.where.count.some((count) => (count ?? 0) > 1)
}

/** What the words of a row say by themselves, the same for every size. */
export interface RowWords {
  /** The steps without a chain at their end that belongs to the next row. */
  readonly own: readonly Step[]
  readonly pending: StepOf<'chain'> | null
  readonly opensWithChain: boolean
  /** The first stitch of the row: what an opening chain stands for. */
  readonly stitch: Stitch | null
  readonly namesTurningChain: boolean
  /** All stitches that its words go into or skip, by any name. */
  readonly stitchesNamed: Target
  /** All spaces and corners that it goes into, by any name. */
  readonly spacesNamed: Target
  /** More than one stitch is skipped right after the chain that opens it, or right at its beginning. */
  readonly skipsAfterChain: boolean
  /** A long chain that opens it leads to a low stitch further on. */
  readonly leadsOn: boolean
  /** It goes along edges of the piece: at a corner it turns from one to the next. */
  readonly alongEdges: boolean
  /** It names other pieces, to join them. */
  readonly joinsPieces: boolean
  /** Chains between the pieces are worked into in the same row. */
  readonly bridges: boolean
  /** All its places are in one row further down, as behind petals. */
  readonly goesDeep: boolean
  /** Chains are made between its stitches again and again. */
  readonly makesSpaces: boolean
}

/** The places of all steps that have some, repeats and groups taken apart. */
function placesOf(steps: readonly Step[]): readonly Where[] {
  return steps.flatMap((step) => {
    if (step.kind === 'repeat' || step.kind === 'sequence') return placesOf(step.body)
    if (step.kind === 'either') return placesOf(step.options[0] ?? [])
    // A slip stitch that only joins is in no row further down.
    if (step.kind === 'slip') return 'depth' in step.where ? [step.where] : []
    return step.kind === 'work' || step.kind === 'together' || step.kind === 'skip' ? [step.where] : []
  })
}

function goesDeep(steps: readonly Step[]): boolean {
  const places = placesOf(steps)
  return places.length > 0 && places.every((where) => 'depth' in where && where.depth?.kind === 'row')
}

const known = new WeakMap<readonly Step[], RowWords>()

/** Found once for each list of steps, for all sizes and readings. */
export function wordsOf(steps: readonly Step[]): RowWords {
  const before = known.get(steps)
  if (before !== undefined) return before
  const { own, pending } = splitPending(steps)
  const found = {
    own,
    pending,
    opensWithChain: opensWithChain(own),
    stitch: firstStitch(own),
    namesTurningChain: namesTurningChain(own),
    stitchesNamed: targets(own).filter(goesByStitch).flat(),
    spacesNamed: targets(own).filter(goesBySpace).flat(),
    skipsAfterChain: skipsAfterChain(own),
    leadsOn: firstStitch(own)?.base === 'singleCrochet' && leadsOn(own),
    alongEdges: own.some(isEdge),
    joinsPieces: own.some(namesPiece),
    bridges: own.some(namesPiece) && own.some(intoChain),
    goesDeep: goesDeep(own),
    makesSpaces: own.some((step) => step.kind === 'repeat' && step.body.some((each) => each.kind === 'chain')),
  }
  known.set(steps, found)
  return found
}
