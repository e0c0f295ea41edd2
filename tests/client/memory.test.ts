import { describe, expect, test } from 'vitest'
import { memoryOf } from '../../src/client/memory.ts'

function storeWith(room: number) {
  const kept = new Map<string, string>()
  return {
    kept,
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => {
      if (text.length > room) throw new Error('QuotaExceededError')
      kept.set(name, text)
    },
    removeItem: (name: string) => {
      kept.delete(name)
    },
    key: (index: number) => [...kept.keys()][index] ?? null,
    get length() {
      return kept.size
    },
  }
}

describe('what is remembered on a device', () => {
  test('comes back until it is forgotten, under a name of ours', () => {
    const store = storeWith(10)
    const memory = memoryOf(() => store)
    expect(memory.read('size')).toBe(null)
    memory.write('size', 'child')
    expect(memory.read('size')).toBe('child')
    store.setItem('other', 'x')
    expect([...store.kept.keys()]).toEqual(['sizewright:size', 'other'])
    expect(memory.names()).toEqual(['size'])
    memory.forget('size')
    expect(memory.read('size')).toBe(null)
  })

  test('is nothing where the store has no room', () => {
    const memory = memoryOf(() => storeWith(2))
    memory.write('size', 'child')
    expect(memory.read('size')).toBe(null)
  })

  test('is nothing where the browser forbids a store', () => {
    const memory = memoryOf(() => {
      throw new Error('SecurityError')
    })
    memory.write('size', 'child')
    memory.forget('size')
    expect(memory.read('size')).toBe(null)
    expect(memory.names()).toEqual([])
  })
})
