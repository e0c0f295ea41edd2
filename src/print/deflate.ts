import { deflateSync } from 'node:zlib'

/** Bytes as the filter `FlateDecode` takes them. With the readers of font files the only part of printing that needs Node. */
export function deflate(bytes: Uint8Array): Uint8Array {
  return deflateSync(bytes)
}
