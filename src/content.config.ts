import { defineCollection } from 'astro:content'
import { file } from 'astro/loaders'
import { z } from 'astro/zod'
import { parse } from 'yaml'
import { drafts } from '../plugins/drafts.ts'
import type { Pattern } from './pattern/pattern.ts'
import type { Finding } from './proof/finding.ts'

/** Drafts, each resolved to its pattern; what the remark plugin made of them is not checked a second time. */
const patterns = defineCollection({
  loader: drafts({ base: 'content/patterns' }),
  schema: ({ image }) =>
    z.object({
      pattern: z.custom<Pattern | null>(),
      findings: z.custom<readonly Finding[]>(),
      coverImage: image().optional(),
    }),
})

/** The site's own name and words. */
const studio = defineCollection({
  loader: file('content/studio.yaml', { parser: (text) => ({ studio: parse(text) }) }),
  schema: z.object({
    name: z.string(),
    tagline: z.string(),
    about: z.string(),
    address: z.string().nullable().default(null),
  }),
})

export const collections = { patterns, studio }
