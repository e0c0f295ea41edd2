/** An element with attributes and either text or elements; written on a line of its own. */
export interface XmlElement {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: string | readonly XmlElement[]
}

export function element(
  name: string,
  children: XmlElement['children'],
  attributes: XmlElement['attributes'] = {},
): XmlElement {
  return { name, attributes, children }
}

/** A whole document in UTF-8. */
export function xmlDocument(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}`
}

function written({ name, attributes, children }: XmlElement, indent: string): string {
  const pairs = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`)
  const open = `${indent}<${name}${pairs.join('')}`
  if (typeof children === 'string') return `${open}>${escaped(children)}</${name}>\n`
  if (children.length === 0) return `${open}/>\n`
  return `${open}>\n${children.map((child) => written(child, `${indent}  `)).join('')}${indent}</${name}>\n`
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Control characters may not stand in XML at all, nor may halves of characters. */
function escaped(text: string): string {
  const allowed = text.toWellFormed().replace(/\p{Cc}|\p{Noncharacter_Code_Point}/gu, ' ')
  return allowed.replace(/[&<>"]/g, (sign) => entities[sign] ?? sign)
}
