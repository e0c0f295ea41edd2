import { describe, expect, it } from 'vitest'
import { textForAll, textForSize } from '../../src/measure/segment.ts'
import { type Choice, chosen } from '../../src/pattern/chosen.ts'
import type { Block } from '../../src/pattern/node.ts'
import type { Pattern, ValueNode } from '../../src/pattern/pattern.ts'
import { demoDrafts, readDemo } from '../demo-drafts.ts'
import { workedPattern } from '../print/worked.ts'

const all: Choice = { size: null, terms: 'own', units: 'both' }

const demos: readonly (readonly [string, Pattern])[] = demoDrafts.map(([slug, text]) => {
  const { value } = readDemo(slug, text).outcome
  if (value === null) throw new Error(`${slug} can’t be used`)
  return [slug, value]
})

/** Every value in plain data by its number, the last of several. */
function valuesIn(data: unknown, found = new Map<string, ValueNode>()): Map<string, ValueNode> {
  if (isValue(data)) found.set(data.id, data)
  if (typeof data === 'object' && data !== null) for (const part of Object.values(data)) valuesIn(part, found)
  return found
}

const isValue = (data: unknown): data is ValueNode =>
  typeof data === 'object' && data !== null && 'type' in data && data.type === 'value'

const wordsOf = (block: Block | undefined): string => JSON.stringify(block?.type === 'row' ? block.steps : block)

describe.each(demos)('%s as a reader chooses it', (_, pattern) => {
  it('is itself where nothing is chosen, and for a size that it does not have', () => {
    expect(chosen(pattern, all)).toEqual(pattern)
    expect(chosen(pattern, { ...all, size: 99 })).toEqual(pattern)
  })

  it.each(pattern.sizes.map((name, size) => [name, size] as const))(
    'in %s has that size’s numbers alone',
    (name, size) => {
      const own = chosen(pattern, { ...all, size })
      expect(own.sizes).toEqual([name])
      const before = valuesIn(pattern)
      const kept = [...valuesIn(own)]
      expect(kept.length).toBeGreaterThan(5)
      expect(kept.map(([, { segments }]) => textForAll(segments))).toEqual(
        kept.map(([id]) => textForSize(before.get(id)?.segments ?? [], size)),
      )
      expect(own.rows.map(({ total }) => total)).toEqual(pattern.rows.map(({ total }) => [total[size]]))
      expect(JSON.stringify(own)).not.toMatch(/"show":(?:"columns"|\d)/)
      expect(JSON.stringify(own.body)).not.toMatch(/"type":"only(?:Inline)?"|"only":\[/)
    },
  )

  it('comes back from the other country’s terms', () => {
    const other = chosen(pattern, { ...all, terms: 'other' })
    expect(other.terms).not.toBe(pattern.terms)
    expect(chosen(other, { ...all, terms: 'other' }).body).toEqual(pattern.body)
  })

  it.each([
    ['metric', /"system":"(?:imperial|both)"/],
    ['imperial', /"system":"(?:metric|both)"/],
  ] as const)('has no measure of the other system: %s', (units, others) => {
    expect(JSON.stringify(pattern)).toMatch(others)
    expect(JSON.stringify(chosen(pattern, { ...all, units }))).not.toMatch(others)
  })
})

describe('what is chosen', () => {
  const draft = workedPattern(
    [
      '## Mat',
      'Foundation: Ch 12.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)',
      '',
      ':::sizes{only="L"}',
      'Work loosely.',
      ':::',
      '',
      'Press it.:sizes[ Steam it too.]{only="S"}',
    ].join('\n\n'),
  )

  it('says stitches and abbreviations in the other terms', () => {
    const other = chosen(draft, { ...all, terms: 'other' })
    const { body, abbreviations } = other
    expect(wordsOf(body.findLast(({ type }) => type === 'row'))).toContain('"text":"Dc"')
    expect(abbreviations.map(({ abbreviation, meaning }) => `${abbreviation} ${meaning}`)).toContain(
      'dc double crochet',
    )
    expect(abbreviations.map(({ abbreviation }) => abbreviation)).not.toContain('sc')
  })

  it.each([
    [0, [false, true]],
    [1, [false, false]],
    [2, [true, false]],
  ])('leaves out what is for other sizes: %i', (size, shown) => {
    const words = JSON.stringify(chosen(draft, { ...all, size }).body)
    expect(['Work loosely', 'Steam it too'].map((sentence) => words.includes(sentence))).toEqual(shown)
  })

  it('leaves the length of yarn in the units that are wanted', () => {
    const yarn = { main: { grams: [10], metres: [20], yards: [22], skeins: [1], margin: 10 } }
    const lengths = (units: Choice['units']) => {
      const use = chosen({ ...draft, yarn }, { ...all, units }).yarn.main
      return [use?.metres, use?.yards]
    }
    expect([lengths('both'), lengths('metric'), lengths('imperial')]).toEqual([
      [[20], [22]],
      [[20], null],
      [null, [22]],
    ])
  })
})
