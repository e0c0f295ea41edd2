import type { Code, Construct, Effects, Extension, State, TokenizeContext } from 'micromark-util-types'

declare module 'micromark-util-types' {
  interface TokenTypeMap {
    placeholder: 'placeholder'
    placeholderMarker: 'placeholderMarker'
    placeholderData: 'placeholderData'
  }
}

const openBrace = 123
const closeBrace = 125
/** A formula is a line or two; past this an opening `{{` was never closed, and scanning stops. */
const longest = 1000
const quotes: readonly Code[] = [34 /* " */, 8220 /* “ */, 8221 /* ” */]

/**
 * Lets micromark see `{{ formula }}` as one piece of text, so that asterisks, quotes, brackets and
 * underscores in a formula are never taken for Markdown. Code wins over it, and `\{{` stays literal.
 */
export function placeholderSyntax(): Extension {
  return { text: { [openBrace]: construct } }
}

const construct: Construct = { name: 'placeholder', tokenize: tokenizePlaceholder }

/**
 * One placeholder. Braces inside it nest (`{{ {Child: 1, Adult: 2} }}`) and braces in quotes are words.
 *
 *     Ch {{rim_sts}}, join.
 *        ^         the construct opens here, or leaves the text alone when it is never closed
 */
function tokenizePlaceholder(this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
  let depth = 0
  let inQuotes = false
  let length = 0
  return open

  // {{rim_sts}}
  // ^
  function open(code: Code): State | undefined {
    effects.enter('placeholder')
    effects.enter('placeholderMarker')
    effects.consume(code)
    return openSecond
  }

  // {{rim_sts}}
  //  ^
  function openSecond(code: Code): State | undefined {
    if (code !== openBrace) return nok(code)
    effects.consume(code)
    effects.exit('placeholderMarker')
    return between
  }

  // {{rim_sts}}
  //   ^
  function between(code: Code): State | undefined {
    if (code === null || length > longest) return nok(code)
    if (isLineEnding(code)) {
      effects.enter('lineEnding')
      effects.consume(code)
      effects.exit('lineEnding')
      return between
    }
    if (code === closeBrace && depth === 0 && !inQuotes) return effects.attempt(closing, ok, data)(code)
    return data(code)
  }

  // {{rim_sts}}
  //   ^^^^^^^
  function data(code: Code): State | undefined {
    effects.enter('placeholderData')
    return dataInside(code)
  }

  function dataInside(code: Code): State | undefined {
    if (code === null || isLineEnding(code) || length > longest) {
      effects.exit('placeholderData')
      return between(code)
    }
    const wasClosing = code === closeBrace && depth === 0 && !inQuotes
    count(code)
    effects.consume(code)
    return wasClosing ? dataInside : beforeNext
  }

  function beforeNext(code: Code): State | undefined {
    if (code === closeBrace && depth === 0 && !inQuotes) {
      effects.exit('placeholderData')
      return between(code)
    }
    return dataInside(code)
  }

  function count(code: Code): void {
    length += 1
    if (quotes.includes(code)) inQuotes = !inQuotes
    else if (inQuotes) return
    else if (code === openBrace) depth += 1
    else if (code === closeBrace && depth > 0) depth -= 1
  }
}

/** The closing pair: `}}`, and it ends the whole placeholder. */
const closing: Construct = {
  tokenize(effects, ok, nok) {
    return first

    function first(code: Code): State | undefined {
      effects.enter('placeholderMarker')
      effects.consume(code)
      return second
    }

    function second(code: Code): State | undefined {
      if (code !== closeBrace) return nok(code)
      effects.consume(code)
      effects.exit('placeholderMarker')
      effects.exit('placeholder')
      return ok
    }
  },
  partial: true,
}

function isLineEnding(code: Code): boolean {
  return code !== null && code < -2
}
