import type { Span } from '../diagnostic/index.ts'
import { type CautionKind, type CautionText, cautionTexts, type SafetyRule } from '../standards/child-safety.ts'
import { agesOf } from './ages.ts'
import { type CordPlace, placesOfCord } from './cord-place.ts'
import { isKind, kindAt, type PieceKind } from './kinds.ts'
import { type Mention, mentionsIn } from './mentions.ts'
import type { Piece, Said } from './piece.ts'

/** A caution that a piece calls for. */
export interface FoundCaution {
  readonly kind: CautionKind
  /** The words that readers see. */
  readonly text: string
  /** The rules that it rests on: `CEN, EN 14682 (2014); …` */
  readonly source: string
  /** Positions of the sizes it is for. */
  readonly sizes: readonly number[]
  /** `buttons and pompoms`; empty where the caution is about the piece itself. */
  readonly things: string
  /** Where the draft first says what calls for it. */
  readonly at: Span
}

/** Something that may call for a caution: a thing that is carried, or what the piece is. */
interface Ground {
  readonly kind: CautionKind
  readonly name: string | null
  readonly at: Span
  readonly only: readonly number[] | null
  /** Whether prose tells of it. */
  readonly told: boolean
}

const cordKinds: Readonly<Record<CordPlace, CautionKind>> = {
  neck: 'child-neck-cord',
  hat: 'child-hat-ties',
  waist: 'child-waist-cord',
  elsewhere: 'child-cord',
}

const pieceKinds: readonly (readonly [PieceKind, CautionKind])[] = [
  ['cover', 'baby-cover'],
  ['hat', 'baby-hat'],
  ['nightwear', 'child-nightwear'],
]

/**
 * The cautions that a piece calls for by the ages of its sizes and by what its draft says it carries, in the order of
 * `cautionTexts`; none for adults, and none for a thing that the draft says is left off.
 */
export function cautionsFor(piece: Piece): readonly FoundCaution[] {
  const ages = agesOf(piece)
  const isToy = isKind(piece, 'toy')
  if (!isToy && ages.every((each) => each === null || each >= oldest)) return []
  const grounds = groundsOf(piece, isToy)
  return cautionTexts.flatMap((text) =>
    cautionFrom(
      text,
      grounds.filter(({ kind }) => kind === text.kind),
      ages,
    ),
  )
}

const oldest = Math.max(...cautionTexts.map(({ untilMonths }) => untilMonths ?? 0))

function groundsOf(piece: Piece, isToy: boolean): readonly Ground[] {
  const carried = mentionsIn(piece.said).flatMap((mention) =>
    kindsOf(mention, piece, isToy).map((kind) => ({
      kind,
      name: mention.name,
      at: mention.at,
      only: mention.said.only,
      told: mention.said.where === 'text',
    })),
  )
  const made = pieceKinds.flatMap(([what, kind]) => {
    const said: Said | null = kindAt(piece, what)
    return said === null ? [] : [{ kind, name: null, at: said.at, only: said.only, told: false }]
  })
  return [...carried, ...made]
}

function kindsOf(mention: Mention, piece: Piece, isToy: boolean): readonly CautionKind[] {
  if (mention.thing === 'fringe') return ['child-fringe']
  if (mention.thing === 'smallPart') return [isToy ? 'toy-small-parts' : 'child-small-parts']
  return placesOfCord(mention, piece).map((place) => cordKinds[place])
}

function cautionFrom(
  { kind, untilMonths, says, rules }: CautionText,
  grounds: readonly Ground[],
  ages: readonly (number | null)[],
): readonly FoundCaution[] {
  const young = ages.map((each) => untilMonths === null || (each !== null && each < untilMonths))
  const bears = ({ only }: Ground, size: number) => young[size] === true && (only === null || only.includes(size))
  const bearing = grounds.filter((ground) => ages.some((_, size) => bears(ground, size)))
  // What is made or bought says it plainer than what is told of it.
  const first = bearing.find(({ told }) => !told) ?? bearing[0]
  if (first === undefined) return []
  const sizes = ages.flatMap((_, size) => (bearing.some((ground) => bears(ground, size)) ? [size] : []))
  const things = inWords([...new Set(bearing.flatMap(({ name }) => name ?? []))])
  const source = [...new Set(rules.map(ruleWords))].join('; ')
  return [{ kind, text: says(capital(things)), source, sizes, things, at: first.at }]
}

function ruleWords({ publisher, document, year }: SafetyRule): string {
  return `${publisher}, ${document} (${year})`
}

function inWords(names: readonly string[]): string {
  const last = names.at(-1) ?? ''
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1)
