import { defineCollection } from 'astro:content'
import { file } from 'astro/loaders'
import { z } from 'astro/zod'
import { parse } from 'yaml'
import { drafts } from '../plugins/drafts.ts'
import type { Recipe } from './own/recipe.ts'
import type { Pattern } from './pattern/pattern.ts'
import type { Finding } from './proof/finding.ts'

/** Drafts, each resolved to its pattern; what the remark plugin made of them is not checked a second time. */
const patterns = defineCollection({
  loader: drafts({ base: 'content/patterns' }),
  schema: ({ image }) =>
    z.object({
      pattern: z.custom<Pattern | null>(),
      findings: z.custom<readonly Finding[]>(),
      recipe: z.custom<Recipe | null>(),
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
    print: z
      .object({
        /** A QR code of the pattern's page, where `address` says where that is. */
        qr: z.boolean().default(true),
        /** Numbers of six sizes and more in columns below their rows, or in brackets as on the page. */
        numbers: z.enum(['columns', 'brackets']).default('columns'),
        /** Print-outs in the draft's own terms alone, or in the other country's too. */
        terms: z.enum(['own', 'both']).default('own'),
      })
      .strict()
      .default({ qr: true, numbers: 'columns', terms: 'own' }),
  }),
})

export const collections = { patterns, studio }
