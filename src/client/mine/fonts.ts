import { unzlibSync } from 'fflate'
import type { Fonts } from '../../print/face.ts'
import { mainFiles, typefaces } from '../../print/typefaces.ts'
import { unwrapWoff } from '../../print/woff.ts'

/** A letter was met that no typeface has which was fetched so far. */
class Wanted extends Error {
  readonly file: string

  constructor(file: string) {
    super(`the typeface ${file} has not been fetched`)
    this.file = file
  }
}

/** Typefaces from the site; each is fetched when a letter of it is first needed. */
export interface FetchedFonts {
  /** Makes something with the typefaces; begun anew when one more has been fetched. */
  readonly use: <T>(make: (fonts: Fonts) => Promise<T>) => Promise<T>
}

/** `folder` is the address of the typefaces, with a slash at its end. Rejects where one can't be fetched. */
export function fetchedFonts(folder: string): FetchedFonts {
  const fetched = new Map<string, Uint8Array>()
  const fetchFile = async (file: string): Promise<void> => {
    const response = await fetch(`${folder}${file}.woff`)
    if (!response.ok) throw new Error(`the typeface ${file} is not on the site`)
    fetched.set(file, unwrapWoff(new Uint8Array(await response.arrayBuffer()), unzlibSync))
  }
  const fonts = typefaces((file) => () => {
    const bytes = fetched.get(file)
    if (bytes === undefined) throw new Wanted(file)
    return bytes
  })
  return {
    async use(make) {
      await Promise.all(mainFiles.filter((file) => !fetched.has(file)).map(fetchFile))
      for (;;) {
        try {
          return await make(fonts)
        } catch (error) {
          if (!(error instanceof Wanted)) throw error
          await fetchFile(error.file)
        }
      }
    },
  }
}
