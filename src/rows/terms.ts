import type { Content } from './content.ts'
import type { ReadRow } from './cut.ts'
import type { UsedTerm } from './ledger.ts'
import type { Part, Special, Step, StepOf } from './step.ts'
import { commonTerms } from './terms/common.ts'
import type { Dictionary } from './terms/dictionary.ts'
import { nameStitch, printStitch } from './terms/dictionary.ts'
import type { Stitch } from './terms/stitch.ts'
import type { Word } from './words.ts'
import { wordsOfText } from './words.ts'

const common = new Map(commonTerms.flatMap((term) => term.written.map((spelling) => [spelling, term] as const)))

interface Gathering {
  readonly terms: Map<string, UsedTerm>
  readonly specials: Set<Special>
  readonly dictionary: Dictionary
}

function note(gathering: Gathering, term: UsedTerm): void {
  if (!gathering.terms.has(term.abbreviation)) gathering.terms.set(term.abbreviation, term)
}

function noteStitch(gathering: Gathering, stitch: Stitch, at: Step['at']): void {
  const { dictionary } = gathering
  const abbreviation = printStitch(dictionary, stitch)
  if (gathering.terms.has(abbreviation)) return
  note(gathering, {
    abbreviation,
    meaning: nameStitch(dictionary, stitch),
    special: false,
    at,
  })
}

function noteSpecial(gathering: Gathering, special: Special, at: Step['at']): void {
  gathering.specials.add(special)
  note(gathering, { abbreviation: special.name, meaning: special.meaning, special: true, at })
}

function noteTogether(
  gathering: Gathering,
  closed: Pick<StepOf<'together'>, 'stitch' | 'name' | 'legs'>,
  at: Step['at'],
) {
  noteStitch(gathering, closed.stitch, at)
  if (closed.name === null) return
  const meaning = `${nameStitch(gathering.dictionary, closed.stitch)} ${closed.legs[0] ?? 2} together`
  note(gathering, { abbreviation: closed.name, meaning, special: false, at })
}

function noteParts(gathering: Gathering, parts: readonly Part[], at: Step['at']): void {
  for (const part of parts) {
    if (part.kind === 'stitch') noteStitch(gathering, part.stitch, at)
    if (part.kind === 'special') noteSpecial(gathering, part.special, at)
    if (part.kind === 'together') noteTogether(gathering, part, at)
  }
}

function noteStep(gathering: Gathering, step: Step): void {
  const { at } = step
  switch (step.kind) {
    case 'work':
      noteParts(gathering, step.parts, at)
      return
    case 'sweep':
      for (const work of step.works) noteParts(gathering, work.parts, work.at)
      return
    case 'together':
      noteTogether(gathering, step, at)
      return
    case 'evenly':
    case 'pickUp':
    case 'layers':
      noteStitch(gathering, step.stitch, at)
      return
    case 'slip':
    case 'join':
      noteStitch(gathering, { base: 'slipStitch', style: 'plain' }, at)
      return
    case 'repeat':
    case 'repeatAll':
    case 'sequence':
      noteSteps(gathering, step.body)
      return
    case 'either':
      noteSteps(gathering, step.options[0] ?? [])
      return
    case 'bySize':
      for (const option of step.options) noteSteps(gathering, option)
      return
    default:
      return
  }
}

function noteSteps(gathering: Gathering, steps: readonly Step[]): void {
  for (const step of steps) noteStep(gathering, step)
}

function stepsOf(content: Content | null): readonly Step[] {
  if (content === null || content.kind === 'reference' || content.kind === 'further') return []
  if (content.kind === 'bySize') return content.options.flatMap(stepsOf)
  if (content.kind === 'schedule') return [...content.even, ...content.legs.flatMap((leg) => leg.last)]
  return content.steps
}

/** The words of a row, those of a phrase that differs by size among them. */
function spelledOut(row: ReadRow): readonly Word[] {
  return row.words.flatMap((word) => {
    if (word.kind !== 'bySize') return [word]
    return word.texts.flatMap((text) => (text === null ? [] : wordsOfText(text, word.at, word.texts.length)))
  })
}

/** Terms and special stitches that the rows use, each with its first place. */
export function usedTerms(
  rows: readonly ReadRow[],
  dictionary: Dictionary,
): { readonly terms: readonly UsedTerm[]; readonly specials: ReadonlySet<Special> } {
  const gathering: Gathering = { terms: new Map(), specials: new Set(), dictionary }
  for (const row of rows) {
    for (const word of spelledOut(row)) {
      const term = word.kind === 'word' ? common.get(word.text) : undefined
      if (term !== undefined && !gathering.terms.has(term.abbreviation)) {
        note(gathering, { ...term, special: false, at: word.at })
      }
    }
    noteSteps(gathering, stepsOf(row.content))
  }
  const terms = [...gathering.terms.values()].map(({ abbreviation, meaning, special, at }) => ({
    abbreviation,
    meaning,
    special,
    at,
  }))
  return { terms, specials: gathering.specials }
}
