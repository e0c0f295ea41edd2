import type { Clip, HowTo, HowToSection, HowToSupply, HowToTool, VideoObject, WithContext } from 'schema-dts'
import { skillNames } from '../../finding/names.ts'
import { outline } from '../../html/index.ts'
import { textForAll } from '../../measure/index.ts'
import type { Film, Pattern } from '../../pattern/pattern.ts'
import { updatedOn } from '../dates.ts'

/** What a pattern's structured data says beside the pattern itself. */
export interface Surroundings {
  /** The studio, as the author. */
  readonly studio: string
  /** Address of a place on the site by its path below the top: the whole one where the site's own is known. */
  readonly addressOf: (path: string) => string
  /** Addresses of its pictures. */
  readonly images: readonly string[]
}

/**
 * A pattern in schema.org's words: a `HowTo`, instructions for making something out of supplies with tools. It is no `Product`, for
 * nothing is sold on the page; and it has no ratings, prices or times, for the draft knows none.
 */
export function howTo(pattern: Pattern, { studio, addressOf, images }: Surroundings): WithContext<HowTo> {
  const address = addressOf(`patterns/${pattern.slug}/`)
  const updated = updatedOn(pattern)
  return {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    name: pattern.title,
    ...(pattern.summary === null ? {} : { description: pattern.summary }),
    url: address,
    ...(images.length === 0 ? {} : { image: images }),
    inLanguage: 'en',
    author: { '@type': 'Organization', name: studio, url: addressOf('') },
    ...(pattern.published === null ? {} : { datePublished: pattern.published }),
    ...(updated === null ? {} : { dateModified: updated }),
    ...(pattern.edition === null ? {} : { version: pattern.edition }),
    ...(pattern.skill === null ? {} : { educationalLevel: skillNames[pattern.skill] }),
    keywords: ['crochet', ...pattern.kinds].join(', '),
    size: pattern.sizes.join(', '),
    supply: supplies(pattern),
    tool: tools(pattern),
    step: sections(pattern, address),
    ...(pattern.film === null ? {} : { video: film(pattern.title, pattern.film) }),
  }
}

/** Yarn, with its amount for all sizes. */
function supplies({ materials }: Pattern): HowToSupply[] {
  return materials.yarn.map(({ description, amount }) => ({
    '@type': 'HowToSupply',
    name: textForAll(description) || 'yarn',
    ...(amount === null ? {} : { requiredQuantity: textForAll(amount.segments) }),
  }))
}

function tools({ materials }: Pattern): HowToTool[] {
  const names = [...materials.hooks.map((hook) => `crochet hook ${hook}`), ...materials.notions]
  return names.map((name) => ({ '@type': 'HowToTool', name }))
}

/** The parts of the instructions that hold rows; the rows themselves are on the page. */
function sections({ body }: Pattern, address: string): HowToSection[] {
  const withRows = new Set<string>()
  let last: string | null = null
  for (const block of body) {
    if (block.type === 'heading' && block.depth <= 2) last = block.id
    if (block.type === 'row' && last !== null) withRows.add(last)
  }
  return outline(body).flatMap(({ id, text }) =>
    withRows.has(id) ? [{ '@type': 'HowToSection', name: textForAll(text), url: `${address}#${id}` } as const] : [],
  )
}

function film(title: string, { url, moments }: Film): VideoObject {
  const clips = moments.map(
    ({ place, seconds, href }): Clip => ({
      '@type': 'Clip',
      name: place,
      startOffset: seconds,
      url: href,
    }),
  )
  return {
    '@type': 'VideoObject',
    name: `${title}: the film`,
    url,
    ...(clips.length === 0 ? {} : { hasPart: clips }),
  }
}
