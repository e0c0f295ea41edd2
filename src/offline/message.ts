/** A page that was opened, and should be there without a connection from now on. */
export interface KeepRequest {
  readonly kind: 'keep'
  readonly page: string
  /** The folder of the pattern that the page belongs to; null for any other page. */
  readonly folder: string | null
  /** What the page has loaded so far, as paths. */
  readonly loaded: readonly string[]
}

/** The reader wants the newer edition that was announced. */
export interface ShowRequest {
  readonly kind: 'show'
  readonly folder: string
}

export type Request = KeepRequest | ShowRequest

/** `news`: what is on the site is not what the reader has. */
export type Reply =
  | { readonly kind: 'kept' }
  | { readonly kind: 'news'; readonly edition: string | null; readonly sameEdition: boolean }
  | { readonly kind: 'failed' }

export function isRequest(data: unknown): data is Request {
  return typeof data === 'object' && data !== null && 'kind' in data && (data.kind === 'keep' || data.kind === 'show')
}

export function isReply(data: unknown): data is Reply {
  return (
    typeof data === 'object' &&
    data !== null &&
    'kind' in data &&
    (data.kind === 'kept' || data.kind === 'news' || data.kind === 'failed')
  )
}
