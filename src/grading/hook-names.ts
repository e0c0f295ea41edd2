import { hookNamesBeside, hooks } from '../standards/hooks.ts'

/** A US hook size as it is written: `H-8`, `H`, `M/N-13`, `7`. At least one part is there. */
export interface HookName {
  readonly letters: readonly string[]
  /** `8`, `10½` */
  readonly number: string | null
}

interface Named extends HookName {
  readonly mm: number
}

/** `K-10½` in its parts; null where there are none. */
export function readHookName(us: string): HookName | null {
  const found = /^([A-Z](?:\/[A-Z])*)?[\s/–-]*(\d{1,2}(?:½|\.5|\s?1\/2)?)?$/.exec(us.trim())
  const letters = found?.[1]?.split('/') ?? []
  const number = found?.[2]?.replace(/\.5|\s?1\/2/, '½') ?? null
  return letters.length === 0 && number === null ? null : { letters, number }
}

const known: readonly Named[] = [...hooks, ...hookNamesBeside].flatMap(({ mm, us }) => {
  const name = us === null ? null : readHookName(us)
  return name === null ? [] : [{ mm, ...name }]
})

function hasLetter(own: Named, { letters }: HookName): boolean {
  return letters.length === 0 || letters.some((letter) => own.letters.includes(letter))
}

/** A letter that charts give no number to may have any. */
function hasNumber(own: Named, { letters, number }: HookName): boolean {
  return number === null || (own.number === null ? letters.length > 0 : own.number === number)
}

/** Makers round: 2.2 and 2.25, 15.75 and 16. */
const rounding = 0.15

/** Millimetres that charts give for a name; none for one that no chart has. Parts that contradict each other have none. */
export function millimetresOf(name: HookName): readonly number[] {
  const exact = known.filter((own) => hasLetter(own, name) && hasNumber(own, name))
  return [...new Set(exact.map(({ mm }) => mm))].sort((a, b) => a - b)
}

/** Whether a name and millimetres are one hook by some chart; null where charts don't have the name's letter or number. */
export function isOneHook(name: HookName, millimetres: number): boolean | null {
  const isKnown = (part: HookName) => millimetresOf(part).length > 0
  const parts = [
    ...(name.letters.length === 0 ? [] : [{ letters: name.letters, number: null }]),
    ...(name.number === null ? [] : [{ letters: [], number: name.number }]),
  ]
  if (!parts.every(isKnown)) return null
  return millimetresOf(name).some((mm) => Math.abs(mm - millimetres) <= rounding)
}
