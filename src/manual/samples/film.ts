import type { filmFindings } from '../../diagnostic/catalogue/film.ts'
import type { SampleDraft, Samples } from '../sample.ts'

const mat = '## Mat\n\nRnd 1: 6 sc in ring. (6 sc)\n\nRnd 2: 2 sc in each st around. (12 sc)'

function filmed(video: string): SampleDraft {
  return { facts: `title: Mat\nsizes: [S, M]\nvideo: ${video}`, body: mat }
}

export const filmSamples: Samples<keyof typeof filmFindings> = {
  'film-address': {
    faulty: filmed('{url: "‹studio.example/mat›"}'),
    sound: filmed('{url: "https://studio.example/mat"}'),
  },
  'film-time': {
    faulty: filmed('{url: "https://studio.example/mat", at: {Rnd 2: "‹8.13›"}}'),
    sound: filmed('{url: "https://studio.example/mat", at: {Rnd 2: "8:13"}}'),
  },
  'film-row': {
    faulty: filmed('{url: "https://studio.example/mat", at: {Rnd 3: "‹8:13›"}}'),
    sound: filmed('{url: "https://studio.example/mat", at: {Rnd 2: "8:13"}}'),
  },
}
