import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { basic } from '../../plugins/web-fonts.ts'

/** Each face of the style sheet with the characters that it is for. */
const faces = [...readFileSync('src/styles/fonts.css', 'utf8').matchAll(/@font-face \{(.*?)\n\}/gs)].map(
  ([, face = '']) => ({
    name: /font-family: "(.*?)".*?font-style: (\w+).*?font-weight: (\d+)/s.exec(face)?.slice(1).join(' ') ?? '',
    small: face.includes('~basic/'),
    ranges: [...face.matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/g)].map(([, first = '', last = first]) => [
      Number.parseInt(first, 16),
      Number.parseInt(last, 16),
    ]),
  }),
)

test('the style sheet uses the small files for the letters that were cut out', () => {
  const small = faces.filter(({ small }) => small)
  expect(small.length).toBe(4)
  for (const { ranges } of small) expect(ranges).toEqual(basic.map((range) => [...range]))
})

test('no letter is in two files of one face, so that a page loads only what it shows', () => {
  for (const name of new Set(faces.map((face) => face.name))) {
    const files = faces.filter((face) => face.name === name)
    const inSeveral = [0x41, 0x20, 0xb0, 0xe9, 0xe8, 0xfc, 0xbd, 0x2013, 0x2019, 0x20ac, 0xf7].filter(
      (code) =>
        files.filter(({ ranges }) => ranges.some(([first = 0, last = 0]) => first <= code && code <= last)).length !==
        1,
    )
    expect(inSeveral, name).toEqual([])
  }
})
