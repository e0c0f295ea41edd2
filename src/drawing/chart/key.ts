import type { PlaceKind } from '../../rows/fabric.ts'
import { closedName } from '../../rows/fabric.ts'
import type { UsedTerm } from '../../rows/ledger.ts'
import type { Dictionary } from '../../rows/terms/dictionary.ts'
import { nameStitch, printStitch } from '../../rows/terms/dictionary.ts'
import type { BaseStitch, Stitch, StitchStyle } from '../../rows/terms/stitch.ts'
import type { Placed } from './model.ts'
import type { GroupName } from './symbols.ts'

/** What a stitch is drawn as; `loop` and post as they look from the right side. */
export type Drawn =
  | { readonly as: 'stitch'; readonly base: BaseStitch; readonly style: StitchStyle; readonly loop: 0 | 1 | 2 }
  | { readonly as: 'closed'; readonly base: BaseStitch; readonly legs: number }
  | {
      readonly as: 'group'
      readonly name: GroupName
      readonly base: BaseStitch
      readonly legs: number
      readonly called: string
    }
  /** A stitch of the pattern's own. */
  | { readonly as: 'own'; readonly called: string }

const groupNames: readonly (readonly [GroupName, RegExp])[] = [
  ['popcorn', /\b(?:popcorn|pop|pc)s?\b/i],
  ['puff', /\bpuffs?\b/i],
  ['bobble', /\b(?:bobbles?|bo|mb|bbl)\b/i],
  ['cluster', /\b(?:clusters?|cls?)\b/i],
]

/** Legs of a group whose words give none, and the stitch that they are: common practice, no source. */
const usual: Readonly<Record<GroupName, { readonly legs: number; readonly base: BaseStitch }>> = {
  popcorn: { legs: 5, base: 'doubleCrochet' },
  bobble: { legs: 5, base: 'doubleCrochet' },
  cluster: { legs: 3, base: 'doubleCrochet' },
  puff: { legs: 3, base: 'halfDoubleCrochet' },
}

const mostLegs = 7

/** `5-dc bobble`, `3 tr closed as one`: how many legs of what. */
function legsIn(text: string, dictionary: Dictionary): { readonly legs: number; readonly base: BaseStitch } | null {
  for (const [, count = '', word = ''] of text.matchAll(/(\d+)[\s-]+([a-z]+)/gi)) {
    const base = dictionary.stitches.get(word.toLowerCase())?.base
    if (base !== undefined && Number(count) > 1) return { legs: Math.min(Number(count), mostLegs), base }
  }
  return null
}

function specialAs(name: string, terms: readonly UsedTerm[], dictionary: Dictionary): Drawn {
  const group = groupNames.find(([, pattern]) => pattern.test(name))?.[0]
  if (group === undefined) return { as: 'own', called: name }
  const meaning = terms.find(({ special, abbreviation }) => special && abbreviation === name)?.meaning ?? ''
  const { legs, base } = legsIn(name, dictionary) ?? legsIn(meaning, dictionary) ?? usual[group]
  return { as: 'group', name: group, base, legs, called: name }
}

const otherSide: Readonly<Partial<Record<StitchStyle, StitchStyle>>> = { frontPost: 'backPost', backPost: 'frontPost' }

function stitchAs({ base, style }: Stitch, loop: 0 | 1 | 2, front: boolean): Drawn {
  if (front) return { as: 'stitch', base, style, loop }
  return { as: 'stitch', base, style: otherSide[style] ?? style, loop: loop === 1 ? 2 : loop === 2 ? 1 : 0 }
}

/** How a stitch is drawn. From the wrong side front and back are exchanged. */
export function drawnAs(
  kind: PlaceKind & { readonly what: 'stitch' },
  { feet, loop, front }: { readonly feet: number; readonly loop: 0 | 1 | 2; readonly front: boolean },
  terms: readonly UsedTerm[],
  dictionary: Dictionary,
): Drawn {
  if (kind.stitch === null) return specialAs(kind.name ?? '', terms, dictionary)
  if (kind.name !== closedName) return stitchAs(kind.stitch, loop, front)
  const { base } = kind.stitch
  // Closed in one place they are a group, whose legs the fabric does not count.
  if (feet < 2)
    return {
      as: 'group',
      name: 'cluster',
      base,
      legs: usual.cluster.legs,
      called: `${printStitch(dictionary, kind.stitch)} closed in one place`,
    }
  return { as: 'closed', base, legs: feet }
}

/** The same for all that share an entry in the key. */
export function keyOf(placed: Placed, drawn: Drawn | null): string {
  const { sign } = placed
  if (drawn === null) return sign.what
  return Object.values(drawn).join(' ')
}

const loops = { 1: 'front loop', 2: 'back loop' } as const

/** What a symbol stands for; `turns`: some rows of the chart are worked from the wrong side. */
export function wordsFor(drawn: Drawn, turns: boolean, dictionary: Dictionary): string {
  switch (drawn.as) {
    case 'stitch':
      return stitchWords(drawn, turns, dictionary)
    case 'closed': {
      const stitch: Stitch = { base: drawn.base, style: 'plain' }
      const { legs } = drawn
      return `${printStitch(dictionary, stitch)}${legs}tog: ${nameStitch(dictionary, stitch)} ${legs} together`
    }
    case 'group':
    case 'own':
      return drawn.called
  }
}

function stitchWords(drawn: Drawn & { readonly as: 'stitch' }, turns: boolean, dictionary: Dictionary): string {
  const { base, style, loop } = drawn
  const stitch: Stitch = { base, style }
  const other = otherSide[style]
  const name = (each: Stitch): string => printStitch(dictionary, each)
  if (other !== undefined) {
    return turns
      ? `${name(stitch)} in RS rows, ${name({ base, style: other })} in WS rows`
      : `${name(stitch)}: ${nameStitch(dictionary, stitch)}`
  }
  if (loop === 0) return `${name(stitch)}: ${nameStitch(dictionary, stitch)}`
  if (!turns) return `${name(stitch)} in ${loops[loop]}`
  const back = loop === 1 ? 2 : 1
  return `${name(stitch)} in ${loops[loop]} in RS rows, in ${loops[back]} in WS rows`
}
