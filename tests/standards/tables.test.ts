import { describe, expect, it } from 'vitest'
import { bodyTables } from '../../src/standards/body.ts'
import type { Inches } from '../../src/standards/body-table.ts'
import { measuredHeadSource, measuredHeads } from '../../src/standards/head-measured.ts'
import { hookSource, hooks, steelHooksA, steelHooksB } from '../../src/standards/hooks.ts'
import { yarnWeightSource, yarnWeights } from '../../src/standards/yarn-weights.ts'

const ends = (inches: Inches) => (typeof inches === 'number' ? [inches, inches] : inches)

describe('a body table', () => {
  const tables = [...bodyTables]
  it.each(tables)('%s names its source and whether it was seen', (_, { source, measures }) => {
    expect(source.publisher).not.toBe('')
    expect(source.title).not.toBe('')
    for (const { how } of [source, ...measures]) expect(['seen', 'from memory']).toContain(how)
  })
  it.each(tables)('%s has a value for every size', (_, { sizes, measures }) => {
    for (const { inches } of measures) expect(inches).toHaveLength(sizes.length)
  })
  it.each(tables)('%s says whom every size is drawn on', (_, { sizes, wearers }) => {
    expect(wearers).toHaveLength(sizes.length)
  })
  it.each(tables)('%s has ranges from low to high', (_, { measures }) => {
    for (const { inches } of measures) {
      for (const [low = 0, high = 0] of inches.map(ends)) expect(low > 0 && low <= high).toBe(true)
    }
  })
})

it('measured heads of children grow with their age, and say where they are from', () => {
  const heads = measuredHeads.flatMap(({ upToMonths, cm }) => (upToMonths === null ? [] : [cm]))
  expect(heads).toEqual(heads.toSorted((a, b) => a - b))
  expect(measuredHeadSource.publisher).not.toBe('')
})

describe('hooks', () => {
  it('grow in millimetres', () => {
    const sizes = hooks.map(({ mm }) => mm)
    expect(sizes).toEqual(sizes.toSorted((a, b) => a - b))
    expect(hookSource.publisher).not.toBe('')
  })
  it.each([
    ['tapered', steelHooksA],
    ['in-line', steelHooksB],
  ])('steel hooks run backwards: %s', (_, list) => {
    const sizes = list.map(({ mm }) => mm)
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a))
  })
})

describe('yarn weights', () => {
  it('are eight categories in order', () => {
    expect(yarnWeights.map(({ category }) => category)).toEqual([0, 1, 2, 3, 4, 5, 6, 7])
    expect(yarnWeightSource.publisher).not.toBe('')
  })
  it('have fewer stitches and larger hooks as they grow, thread aside', () => {
    const worsted = yarnWeights.filter(({ category }) => category > 0)
    const gauges = worsted.map(({ gauge }) => gauge.max ?? 0)
    const largest = worsted.map(({ hookMm }) => hookMm.max ?? Number.POSITIVE_INFINITY)
    expect(gauges).toEqual(gauges.toSorted((a, b) => b - a))
    expect(largest).toEqual(largest.toSorted((a, b) => a - b))
  })
})
