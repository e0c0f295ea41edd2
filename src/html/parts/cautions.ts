import type { Element } from 'hast'
import { h } from 'hastscript'
import { onlyWords } from '../../measure/index.ts'
import type { Pattern } from '../../pattern/pattern.ts'
import { onlyClass } from '../sizes.ts'

/** What makers and wearers are warned of, with the sizes that it concerns. */
export function cautions({ cautions: warnings, sizes: names }: Pattern): Element[] {
  return warnings.map(({ text, source, sizes }) =>
    h('div', { className: ['caution', ...onlyClass(sizes)] }, [
      ...(sizes === null ? [] : [h('p', { className: ['only-for', 'c'] }, onlyWords(names, sizes))]),
      h('p', text),
      h('p', { className: ['caution-source'] }, `Source: ${source}`),
    ]),
  )
}
