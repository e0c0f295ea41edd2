import fc from 'fast-check'

/** Counts of one name, one a size. */
export type Counts = Readonly<Record<string, readonly number[]>>

/** A need as it is written, and the same as plain arithmetic, told apart from the program. */
export interface Need {
  readonly text: string
  readonly uses: readonly string[]
  /** Whether it compares sizes with each other; any other is asked of each size alone. */
  readonly across: boolean
  readonly holds: (counts: Counts, size: number) => boolean
}

export interface Link {
  readonly name: string
  /** Halves of a stitch, one a size. */
  readonly targets: readonly number[]
  readonly of: number
  readonly plus: number
  readonly direction: '' | ' up' | ' down'
}

export interface Draft {
  readonly sizes: readonly string[]
  readonly links: readonly Link[]
  readonly needs: readonly Need[]
}

const operators = {
  '=': (a: number, b: number) => a === b,
  '!=': (a: number, b: number) => a !== b,
  '<': (a: number, b: number) => a < b,
  '<=': (a: number, b: number) => a <= b,
  '>': (a: number, b: number) => a > b,
  '>=': (a: number, b: number) => a >= b,
} as const

const operator = fc.constantFrom(...(Object.keys(operators) as (keyof typeof operators)[]))
const small = fc.integer({ min: 1, max: 3 })
const limit = fc.integer({ min: 0, max: 24 })

type Of = (counts: Counts, size: number) => number
const of =
  (name: string): Of =>
  (counts, size) =>
    counts[name]?.[size] ?? Number.NaN

/** Each form of need, for two names. */
function forms(a: string, b: string): fc.Arbitrary<Need> {
  const [x, y] = [of(a), of(b)]
  const uses = [a, b]
  const each = (text: string, holds: Need['holds'], used = uses): Need => ({ text, uses: used, across: false, holds })
  const compare = (text: string, left: Of, used = uses) =>
    fc
      .tuple(operator, limit)
      .map(([sign, to]) => each(`${text} ${sign} ${to}`, (c, s) => operators[sign](left(c, s), to), used))
  return fc.oneof(
    fc.tuple(small, small).chain(([m, n]) => compare(`${m} * ${a} + ${n} * ${b}`, (c, s) => m * x(c, s) + n * y(c, s))),
    fc
      .tuple(small, limit)
      .chain(([n, by]) =>
        compare(`${a} + ${by} / 4 - ${b} / ${n + 1}`, (c, s) => x(c, s) + by / 4 - y(c, s) / (n + 1)),
      ),
    compare(`max(${a}, 2 * ${b} - 3)`, (c, s) => Math.max(x(c, s), 2 * y(c, s) - 3)),
    compare(`min(${a} + 1, ${b})`, (c, s) => Math.min(x(c, s) + 1, y(c, s))),
    compare(`abs(${a} - ${b} + 5 / 2)`, (c, s) => Math.abs(x(c, s) - y(c, s) + 2.5)),
    compare(`((${a} + ${b}) / 2 as whole)`, (c, s) => Math.floor((x(c, s) + y(c, s)) / 2 + 0.5)),
    compare(`(${a} - 1 as multiple of 4 + 1 up) + ${b}`, (c, s) => Math.ceil((x(c, s) - 2) / 4) * 4 + 1 + y(c, s)),
    compare(`(${b} * 3 / 2 as even down)`, (c, s) => Math.floor((y(c, s) * 1.5) / 2) * 2, [b]),
    small.map((n) =>
      each(`${a} + ${b} is multiple of ${n + 1} + 1`, (c, s) => (x(c, s) + y(c, s) - 1) % (n + 1) === 0),
    ),
    small.map((n) => each(`${a} is not multiple of ${n + 1}`, (c, s) => x(c, s) % (n + 1) !== 0, [a])),
    limit.map((n) => each(`${a} > ${n} or not ${b} >= ${n}`, (c, s) => x(c, s) > n || y(c, s) < n)),
    limit.map((n) =>
      each(`${a} = ${n} or ${b} is odd and ${a} < 9`, (c, s) => x(c, s) === n || (y(c, s) % 2 === 1 && x(c, s) < 9)),
    ),
    limit.map((n) => each(`width(${a}) <= ${n} cm`, (c, s) => x(c, s) / 1.2 <= n, [a])),
  )
}

function acrossForms(a: string, b: string): fc.Arbitrary<Need> {
  const [x, y] = [of(a), of(b)]
  const across = (text: string, holds: (c: Counts) => boolean, uses = [a, b]): Need => ({
    text,
    uses,
    across: true,
    holds,
  })
  return fc.constantFrom(
    across(`${a} + ${b} rises`, (c) => x(c, 1) + y(c, 1) > x(c, 0) + y(c, 0)),
    across(`${a} - ${b} steady`, (c) => x(c, 1) - y(c, 1) === x(c, 0) - y(c, 0)),
    across(`${a} falls or ${b} rises`, (c) => x(c, 1) < x(c, 0) || y(c, 1) > y(c, 0)),
    across(`at("S", ${a}) + at("L", ${b}) is multiple of 5`, (c) => (x(c, 0) + y(c, 1)) % 5 === 0),
    across(`sum(${a}) <= 30`, (c) => x(c, 0) + x(c, 1) <= 30, [a]),
  )
}

function link(name: string, sizes: number): fc.Arbitrary<Link> {
  return fc.record({
    name: fc.constant(name),
    targets: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: sizes, maxLength: sizes }),
    of: fc.constantFrom(1, 1, 2, 3, 4),
    plus: fc.integer({ min: -1, max: 3 }),
    direction: fc.constantFrom('', '', '', ' up', ' down'),
  })
}

function draft(sizes: readonly string[], names: readonly string[], most: number): fc.Arbitrary<Draft> {
  const pair = fc.shuffledSubarray([...names], { minLength: 2, maxLength: 2 })
  const alone = pair.chain(([a = '', b = '']) => forms(a, b))
  const any =
    sizes.length === 1
      ? alone
      : fc.oneof(
          alone,
          pair.chain(([a = '', b = '']) => acrossForms(a, b)),
        )
  return fc.record({
    sizes: fc.constant(sizes),
    links: fc.tuple(...names.map((each) => link(each, sizes.length))),
    needs: fc.array(any, { minLength: 1, maxLength: most }),
  })
}

/** Drafts so small that every combination of counts can be tried. */
export const smallDraft: fc.Arbitrary<Draft> = fc.oneof(
  draft(['S'], ['a', 'b', 'c'], 4),
  draft(['S', 'L'], ['a', 'b'], 3),
)

/** The draft as a grading block. */
export function written({ links, needs }: Draft): string {
  const lines = links.map(({ name, targets, of: step, plus, direction }) => {
    const halves = targets.map((target) => `${target}/2`)
    const target = halves.length === 1 ? halves[0] : `[${halves.join(', ')}]`
    return `${name} ~ ${target} as multiple of ${step} + (${plus})${direction}`
  })
  return [...lines, ...needs.map(({ text }) => `need ${text}`)].join('\n')
}
