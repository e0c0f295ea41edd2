import { isKind } from './kinds.ts'
import type { Mention } from './mentions.ts'
import type { Piece } from './piece.ts'

export type CordPlace = 'neck' | 'hat' | 'waist' | 'elsewhere'

const neck = /\b(?:neck\w*|hood\w*|collars?|chin|capes?|ponchos?|bibs?|cowls?|scar(?:f|ves)|halter|throat)\b/i
const waist = /\b(?:waist\w*|hems?|hips?|belts?|trousers|pants|shorts|skirts?|leggings|soakers?|bloomers)\b/i
const hat = /\b(?:bonnets?|hats?|beanies?|helmets?|balaclavas?|ear ?flaps?|caps?)\b/i
const hooded = /\b(?:hood\w*|jackets?|vests?|cardigans?|coats?|sweaters?|pullovers?|capes?|ponchos?)\b/i

/**
 * Where on the body a cord is: by its own sentence, else its section, else what the piece is called, else whatever the
 * draft says. A hat's ties are at the chin.
 */
export function placesOfCord({ sentence, said }: Mention, piece: Piece): readonly CordPlace[] {
  const called = piece.said.filter(({ where }) => where === 'title' || where === 'heading').map(({ text }) => text)
  const all = piece.said.map(({ text }) => text)
  const contexts = [sentence, said.section ?? '', called.join('\n'), all.join('\n')]
  const places = contexts.map(placesIn).find((found) => found.length > 0) ?? ['elsewhere']
  const isHat = isKind(piece, 'hat') && !called.some((text) => hooded.test(text))
  return [...new Set(places.map((place) => (place === 'neck' && isHat ? 'hat' : place)))]
}

function placesIn(text: string): CordPlace[] {
  const places: CordPlace[] = []
  if (neck.test(text)) places.push('neck')
  else if (hat.test(text)) places.push('hat')
  if (waist.test(text)) places.push('waist')
  return places
}
