import { describe, expect, test } from 'vitest'
import { memoryOf } from '../../../src/client/memory.ts'
import { fromOlder, isPlaceOf, keep, recall, stepped, steppedBack } from '../../../src/client/place/keep.ts'
import { nothingDone, type Place } from '../../../src/client/place/place.ts'

const at = (id: string): Place => ({ done: { [id]: 1 }, finished: {}, at: id })
const whose = { slug: 'cowl', edition: '1.1', size: 'Adult S' }
const empty = { place: nothingDone, before: [] }

function device() {
  const kept = new Map<string, string>()
  const store = {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => void kept.set(name, text),
    removeItem: (name: string) => void kept.delete(name),
    key: (index: number) => [...kept.keys()][index] ?? null,
    get length() {
      return kept.size
    },
  }
  return { kept, memory: memoryOf(() => store) }
}

describe('a place on the device', () => {
  test('is kept for one pattern, edition and size', () => {
    const { memory } = device()
    const kept = stepped(empty, at('rnd-1'))
    keep(memory, whose, kept)
    expect(recall(memory, whose)).toEqual(kept)
    for (const other of [{ size: 'Child' }, { edition: '1.2' }, { edition: null }, { slug: 'hat' }])
      expect(recall(memory, { ...whose, ...other })).toEqual(empty)
  })

  test.each([
    'null',
    '{}',
    '[]',
    '{"place":',
    '{"place":{"done":{"a":-1},"finished":{},"at":null},"before":[]}',
    '{"place":{"done":{"a":"x"},"finished":{},"at":null},"before":[]}',
    '{"place":{"done":{},"finished":{},"at":3},"before":[]}',
    '{"place":{"done":{},"finished":{},"at":null}}',
  ])('%s is none', (text) => {
    const { memory } = device()
    memory.write('place:cowl:1.1:Adult S', text)
    expect(recall(memory, whose)).toEqual(empty)
  })

  test('of an older edition can be gone on from, the latest first', () => {
    const { memory } = device()
    expect(fromOlder(memory, whose)).toBe(null)
    keep(memory, { ...whose, edition: '0.9' }, stepped(empty, at('rnd-9')))
    keep(memory, { ...whose, edition: '0.10' }, stepped(empty, at('rnd-10')))
    keep(memory, { ...whose, edition: '1.0' }, empty)
    keep(memory, { ...whose, edition: '1.0', size: 'Child' }, stepped(empty, at('rnd-1')))
    keep(memory, whose, stepped(empty, at('rnd-2')))
    expect(fromOlder(memory, whose)).toEqual({ edition: '0.10', place: at('rnd-10') })
  })

  test('is known by the name that another window tells', () => {
    expect(isPlaceOf('sizewright:place:cowl:1.1:Adult S', whose)).toBe(true)
    expect(isPlaceOf('sizewright:place:cowl:1.1:Child', whose)).toBe(false)
    expect(isPlaceOf(null, whose)).toBe(false)
  })
})

describe('steps', () => {
  test('are taken back one by one', () => {
    const two = stepped(stepped(empty, at('a')), at('b'))
    expect(steppedBack(two)).toEqual({ place: at('a'), before: [nothingDone] })
    expect(steppedBack(steppedBack(two))).toEqual(empty)
    expect(steppedBack(empty)).toEqual(empty)
  })

  test('are kept for the last twenty', () => {
    let kept = stepped(empty, at('a'))
    for (let step = 0; step < 30; step += 1) kept = stepped(kept, at(String(step)))
    expect(kept.before.length).toBe(20)
    expect(kept.before[0]).toEqual(at('28'))
  })
})
