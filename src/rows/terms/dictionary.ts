import type { BaseStitch, Stitch, StitchStyle, StitchTerm, TermTable } from './stitch.ts'
import { ukTerms } from './uk.ts'
import { usTerms } from './us.ts'

/** All spellings of one country's stitches, and how each stitch is printed. */
export interface Dictionary {
  readonly terms: 'us' | 'uk'
  /** By spelling in lower case, single or plural, words parted by one space. */
  readonly stitches: ReadonlyMap<string, Stitch>
  readonly byBase: ReadonlyMap<BaseStitch, StitchTerm>
  /** Spellings that only the other country uses, with what this one writes. */
  readonly foreign: ReadonlyMap<string, string>
}

const styles: Readonly<
  Record<StitchStyle, { short: readonly string[]; long: readonly string[]; print: string; name: string }>
> = {
  plain: { short: [''], long: [''], print: '', name: '' },
  frontPost: { short: ['fp', 'fp ', 'rf'], long: ['front post '], print: 'FP', name: 'front post ' },
  backPost: { short: ['bp', 'bp ', 'rb'], long: ['back post '], print: 'BP', name: 'back post ' },
  extended: { short: ['e', 'ex'], long: ['extended '], print: 'e', name: 'extended ' },
  foundation: { short: ['f'], long: ['foundation '], print: 'F', name: 'foundation ' },
}

const side: Readonly<Partial<Record<StitchStyle, string>>> = { frontPost: 'front', backPost: 'back' }

/** British names of post stitches: `rtrf`, `raised treble front`, `front raised treble`. */
function raised(name: string, which: string): readonly string[] {
  const short = name.includes(' ') ? [] : [`r${name}${which.charAt(0)}`, `${which.charAt(0)}r${name}`]
  return [...short, `raised ${name} ${which}`, `${which} raised ${name}`, `raised ${which} ${name}`]
}

function spellings(term: StitchTerm, style: StitchStyle): readonly string[] {
  const { short, long } = styles[style]
  if (style !== 'plain' && term.stitch === 'slipStitch') return []
  const names = [term.abbreviation, term.name, ...term.also]
  const fronted = names.flatMap((name) => (/ |^.{5}/.test(name) ? long : short).map((before) => before + name))
  return [...fronted, ...(side[style] === undefined ? [] : names.flatMap((name) => raised(name, side[style] ?? '')))]
}

function plurals(spelling: string): readonly string[] {
  if (spelling.endsWith('stitch')) return [spelling, `${spelling}es`]
  return [spelling, `${spelling}s`]
}

function allSpellings(table: TermTable): Map<string, Stitch> {
  const found = new Map<string, Stitch>()
  // Plain stitches first: `edc` as a derived spelling must never hide a plain one.
  const order: readonly StitchStyle[] = ['plain', 'frontPost', 'backPost', 'extended', 'foundation']
  for (const style of order) {
    for (const term of table.stitches) {
      for (const spelling of spellings(term, style).flatMap(plurals)) {
        if (!found.has(spelling)) found.set(spelling, { base: term.stitch, style })
      }
    }
  }
  return found
}

function build(own: TermTable, other: TermTable): Dictionary {
  const stitches = allSpellings(own)
  const byBase = new Map(own.stitches.map((term) => [term.stitch, term]))
  const foreign = new Map<string, string>()
  for (const [spelling, stitch] of allSpellings(other)) {
    if (!stitches.has(spelling)) foreign.set(spelling, printStitchWith(byBase, stitch))
  }
  return { terms: own.terms, stitches, byBase, foreign }
}

function printStitchWith(byBase: ReadonlyMap<BaseStitch, StitchTerm>, stitch: Stitch): string {
  return styles[stitch.style].print + (byBase.get(stitch.base)?.abbreviation ?? stitch.base)
}

/** The abbreviation of a stitch in the dictionary's terms: `FPdc`. */
export function printStitch(dictionary: Dictionary, stitch: Stitch): string {
  return printStitchWith(dictionary.byBase, stitch)
}

/** The full name in the dictionary's terms: `front post double crochet`. */
export function nameStitch(dictionary: Dictionary, stitch: Stitch): string {
  return styles[stitch.style].name + (dictionary.byBase.get(stitch.base)?.name ?? stitch.base)
}

const dictionaries: Readonly<Record<'us' | 'uk', Dictionary>> = {
  us: build(usTerms, ukTerms),
  uk: build(ukTerms, usTerms),
}

export function dictionaryFor(terms: 'us' | 'uk'): Dictionary {
  return dictionaries[terms]
}
