/** An operator of a content stream with what stands before it. */
export interface Operation {
  readonly operator: string
  readonly operands: readonly Operand[]
}

/** A string is its bytes, a letter each; names begin with a slash. */
export type Operand =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name' | 'string'; readonly value: string }
  | { readonly kind: 'array'; readonly value: readonly Operand[] }
  | { readonly kind: 'dictionary'; readonly value: ReadonlyMap<string, Operand> }

const token =
  /\s*(?:(<<)|(>>)|(\[)|(\])|\(|<([0-9a-fA-F]*)>|(\/[^\s()<>[\]{}/%]*)|([-+]?(?:\d+\.?\d*|\.\d+))|([A-Za-z'"*]+\d?))/y

/** Reads a content stream (ISO 32000-1, 7.8.2); throws at what is none. */
export function readContent(bytes: Uint8Array): readonly Operation[] {
  const text = Buffer.from(bytes).toString('latin1')
  const operations: Operation[] = []
  const stack: Operand[][] = [[]]
  const add = (operand: Operand): void => {
    stack.at(-1)?.push(operand)
  }
  token.lastIndex = 0
  while (text.slice(token.lastIndex).trim() !== '') {
    const start = token.lastIndex
    const match = token.exec(text)
    if (match === null) throw new Error(`not a content stream: ${text.slice(start, start + 40)}`)
    const [whole, opens, closes, begins, ends, hex, name, number, operator] = match
    if (opens !== undefined || begins !== undefined) stack.push([])
    else if (closes !== undefined) add({ kind: 'dictionary', value: pairs(stack.pop() ?? []) })
    else if (ends !== undefined) add({ kind: 'array', value: stack.pop() ?? [] })
    else if (hex !== undefined) add({ kind: 'string', value: Buffer.from(hex, 'hex').toString('latin1') })
    else if (name !== undefined) add({ kind: 'name', value: name })
    else if (number !== undefined) add({ kind: 'number', value: Number(number) })
    else if (operator !== undefined) operations.push({ operator, operands: stack[0]?.splice(0) ?? [] })
    else if (whole.endsWith('(')) add({ kind: 'string', value: literal(text) })
  }
  return operations
}

/** The rest of a string in round brackets; the place to read on is moved behind it. */
function literal(text: string): string {
  const escapes: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' }
  let depth = 1
  let value = ''
  let place = token.lastIndex
  for (; depth > 0 && place < text.length; place++) {
    const letter = text[place] ?? ''
    if (letter === '\\') {
      place += 1
      const next = text[place] ?? ''
      value += escapes[next] ?? next
      continue
    }
    if (letter === '(') depth += 1
    if (letter === ')') depth -= 1
    if (depth > 0) value += letter
  }
  token.lastIndex = place
  return value
}

function pairs(operands: readonly Operand[]): ReadonlyMap<string, Operand> {
  const map = new Map<string, Operand>()
  for (let index = 0; index + 1 < operands.length; index += 2) {
    const [key, value] = [operands[index], operands[index + 1]]
    if (key?.kind === 'name' && value !== undefined) map.set(key.value, value)
  }
  return map
}
