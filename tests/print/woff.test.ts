import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { inflateSync } from 'node:zlib'
import * as fontkit from 'fontkit'
import { describe, expect, it } from 'vitest'
import { unwrapWoff } from '../../src/print/woff.ts'

const path = fileURLToPath(import.meta.resolve('@fontsource/literata/files/literata-latin-400-italic.woff'))

function widths(bytes: Buffer): readonly number[] {
  const font = fontkit.create(bytes)
  if (!('layout' in font)) return []
  return [...'Ch 12, ½×Ág'].map((letter) => font.layout(letter).advanceWidth)
}

describe('unwrapping a WOFF', () => {
  it('gives a TrueType font with the widths that the WOFF has', () => {
    const woff = readFileSync(path)
    const unwrapped = Buffer.from(unwrapWoff(woff, inflateSync))
    expect(fontkit.create(unwrapped).type).toBe('TTF')
    expect(widths(unwrapped)).toEqual(widths(woff))
    expect(widths(unwrapped)).toHaveLength(11)
  })

  it('refuses anything else', () => {
    expect(() => unwrapWoff(new Uint8Array(64), inflateSync)).toThrow('not a WOFF 1.0 file')
  })
})
