/**
 * What is remembered on this device. A browser may forbid it, or have no room: then nothing is remembered, and the page
 * works as it did.
 */
export interface Memory {
  /** Null when nothing is remembered under the name. */
  readonly read: (name: string) => string | null
  readonly write: (name: string, text: string) => void
  readonly forget: (name: string) => void
  /** Of all that is remembered. */
  readonly names: () => readonly string[]
}

type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

/** Names are kept apart from those of other pages of the same host. */
const prefix = 'sizewright:'

/** `open` gives the browser's store; it may throw, and so may each use of it. */
export function memoryOf(open: () => Store): Memory {
  const attempt = <T>(use: (store: Store) => T): T | null => {
    try {
      return use(open())
    } catch {
      return null
    }
  }
  return {
    read: (name) => attempt((store) => store.getItem(prefix + name)),
    write: (name, text) => attempt((store) => store.setItem(prefix + name, text)),
    forget: (name) => attempt((store) => store.removeItem(prefix + name)),
    names: () => attempt(namesIn) ?? [],
  }
}

function namesIn(store: Store): readonly string[] {
  const names = Array.from({ length: store.length }, (_, index) => store.key(index) ?? '')
  return names.filter((name) => name.startsWith(prefix)).map((name) => name.slice(prefix.length))
}
