import type { ElementContent } from 'hast'
import { h } from 'hastscript'

/** The sentence of a finding; what it quotes in backticks is set as code. */
export function sentence(text: string): readonly ElementContent[] {
  return text
    .split(/`([^`]+)`/)
    .map((part, index): ElementContent => (index % 2 === 1 ? h('code', part) : { type: 'text', value: part }))
    .filter((part) => part.type !== 'text' || part.value !== '')
}
