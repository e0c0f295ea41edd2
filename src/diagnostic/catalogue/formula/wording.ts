/** What a slip of the pen may have meant, as a question; undefined where nothing is near. */
export const offer = (nearest: string | null) => (nearest === null ? undefined : `Did you mean \`${nearest}\`?`)

export const quoted = (names: readonly string[]) => names.map((name) => `\`${name}\``).join(', ')

/** Words of the draft as they are quoted: cut where a slip has made them endless. */
export const short = (text: string) => (text.length > 40 ? `${text.slice(0, 37)}…` : text)
