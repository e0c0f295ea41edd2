import { expect, test } from 'vitest'
import { memoryPages, validateXML } from 'xmllint-wasm'
import { element, xmlDocument } from '../../src/announce/xml.ts'

test.each([
  ['signs of XML', 'a < b & "c" > d', 'a &lt; b &amp; &quot;c&quot; &gt; d'],
  ['what XML may not hold', 'a\u0000b\u001fc\uffffd\ud800e', 'a b c d\ufffde'],
  ['letters of any script', 'Möwe 編み', 'Möwe 編み'],
])('%s', async (_, text, written) => {
  const document = xmlDocument(element('a', [element('b', text, { c: text }), element('d', [])]))
  expect(document).toBe(
    `<?xml version="1.0" encoding="UTF-8"?>\n<a>\n  <b c="${written}">${written}</b>\n  <d/>\n</a>\n`,
  )
  const { valid } = await validateXML({
    xml: { fileName: 'a.xml', contents: document },
    normalization: 'format',
    initialMemoryPages: 32 * memoryPages.MiB,
  })
  expect(valid).toBe(true)
})
