import type { Piece } from './piece.ts'

/** What a piece is, as far as a caution turns on it. */
export type PieceKind = 'hat' | 'cover' | 'toy' | 'nightwear'

const kinds: Readonly<Record<PieceKind, RegExp>> = {
  hat: /\b(?:hats?|bonnets?|beanies?|helmets?|balaclavas?|toques?|caps?)\b(?! (?:sleeves?|shaping))(?<!\b(?:sleeve|shoulder) caps?)/i,
  cover:
    /\b(?:blankets?|afghans?|quilts?|throws?|covers?|coverlets?|comforters?|pillows?|cushions?|lov(?:ey|ie)s?|swaddles?|cocoons?|nests?)\b(?<!\b(?:nappy|diaper|shoulder) covers?)/i,
  toy: /\b(?:toys?|soft ?toys?|amigurumi|dolls?|plush(?:ie)?s?|softies?|teddy|rattles?|stuffed animals?|safety eyes?|toy stuffing)\b/i,
  nightwear:
    /\b(?:night(?:wear|gowns?|shirts?)|sleep ?(?:wear|sacks?|suits?)|sleeping bags?|p[yj]a?jamas?|pyjamas?)\b/i,
}

/** Whether title, summary, notions or a heading say that the piece is one of a kind. */
export function isKind({ said }: Piece, kind: PieceKind): boolean {
  return kindAt({ said }, kind) !== null
}

/** Where the draft first says what the piece is; null where it does not. Notions tell a toy from its eyes. */
export function kindAt({ said }: Pick<Piece, 'said'>, kind: PieceKind): Piece['said'][number] | null {
  const telling = (where: string) =>
    where === 'title' || where === 'heading' || (kind === 'toy' && where === 'material')
  return said.find(({ where, text }) => telling(where) && kinds[kind].test(text)) ?? null
}
