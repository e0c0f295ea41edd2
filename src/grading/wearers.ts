import type { Wearer } from '../standards/body-table.ts'
import type { BodyColumns } from './body.ts'

export type { Wearer }

/** In the order in which they are told. */
const all: readonly Wearer[] = ['babies', 'children', 'women', 'women-2x', 'men', 'men-2x']

/** Whom the sizes of a draft are drawn on, by the published table; nobody where the table is the designer's own. */
export function wearersOf({ table, columns }: BodyColumns): readonly Wearer[] {
  const found = new Set(columns.map((column) => (column === null ? null : (table.wearers[column] ?? null))))
  // A pattern that starts at 2X is for women or men all the same.
  const plain = { 'women-2x': 'women', 'men-2x': 'men' } as const
  for (const large of ['women-2x', 'men-2x'] as const) if (found.has(large)) found.add(plain[large])
  return all.filter((wearer) => found.has(wearer))
}
