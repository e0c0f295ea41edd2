import { describe, expect, test } from 'vitest'
import type { Inline } from '../../src/pattern/node.ts'
import { htmlOfLine, text } from './to-html.ts'

const cases: readonly [what: string, node: Inline, html: string][] = [
  ['text, escaped', text('a < b & c'), 'a &#x3C; b &#x26; c'],
  ['text that looks like HTML', text('<b>no</b>'), '&#x3C;b>no&#x3C;/b>'],
  ['text that looks like Markdown', text('*sk 2* {{x}}'), '*sk 2* {{x}}'],
  ['emphasis', { type: 'emphasis', children: [text('a')] }, '<em>a</em>'],
  ['strong', { type: 'strong', children: [text('a')] }, '<strong>a</strong>'],
  ['deleted', { type: 'delete', children: [text('a')] }, '<del>a</del>'],
  ['code', { type: 'code', text: '{{x}}' }, '<code>{{x}}</code>'],
  ['line break', { type: 'break' }, '<br>'],
  ['picture', { type: 'image', src: './cord.jpg', alt: 'The cord' }, '<img src="./cord.jpg" alt="The cord">'],
  [
    'value with a figure for each size',
    {
      type: 'value',
      id: 'v1',
      segments: [
        { text: '52', show: 0 },
        { text: ' (', show: 'columns' },
        { text: '60', show: 1 },
        { text: ') ', show: 'columns' },
        { text: 'cm', show: 'always' },
      ],
    },
    '<span class="value" data-v="v1"><span class="s s0">52</span><span class="c" aria-hidden="true"> (</span><span class="s s1">60</span><span class="c" aria-hidden="true">) </span>cm</span>',
  ],
  [
    'value that is the same for all sizes',
    { type: 'value', id: 'v2', segments: [{ text: '24 cm', show: 'always' }] },
    '<span class="value" data-v="v2">24 cm</span>',
  ],
  [
    'value in both systems of measures',
    {
      type: 'value',
      id: 'v3',
      segments: [
        { text: '52', show: 0, system: 'metric' },
        { text: ' (', show: 'columns', system: 'metric' },
        { text: '60', show: 1, system: 'metric' },
        { text: ') cm', show: 'always', system: 'metric' },
        { text: ' [', show: 'always', system: 'both' },
        { text: '20½ in', show: 'always', system: 'imperial' },
        { text: ']', show: 'always', system: 'both' },
      ],
    },
    '<span class="value" data-v="v3"><span class="u-metric"><span class="s s0">52</span><span class="c" aria-hidden="true"> (</span><span class="s s1">60</span>) cm</span><span class="u-both"> [</span><span class="u-imperial">20½ in</span><span class="u-both">]</span></span>',
  ],
  [
    'words of which each size has a line',
    {
      type: 'value',
      id: 'v4',
      segments: [
        { text: '\nSize Child: ', show: 'columns' },
        { text: 'work even', show: 0 },
      ],
    },
    '<span class="value" data-v="v4"><span class="c"><br>Size Child: </span><span class="s s0">work even</span></span>',
  ],
  [
    'term that both countries share',
    { type: 'term', text: 'ch', term: { other: 'ch', reading: 2 } },
    '<abbr class="r2" tabindex="0"><span aria-hidden="true">ch</span></abbr>',
  ],
  [
    'term, abbreviated, of each country',
    { type: 'term', text: 'sc', term: { other: 'dc', reading: 3 } },
    '<abbr class="t-own r3" tabindex="0"><span aria-hidden="true">sc</span></abbr><abbr class="t-other r3" hidden tabindex="0"><span aria-hidden="true">dc</span></abbr>',
  ],
  [
    'special stitch, which reads well as it stands',
    { type: 'term', text: 'shell', term: { other: 'shell', reading: 5, explains: true } },
    '<span class="r5 explained" tabindex="0">shell</span>',
  ],
  [
    'term in full',
    { type: 'term', text: 'gauge', term: { other: 'tension', reading: null } },
    '<span class="t-own">gauge</span><span class="t-other" hidden>tension</span>',
  ],
  [
    'term that only one size has',
    {
      type: 'value',
      id: 'v5',
      segments: [{ text: 'sc', show: 1, term: { other: 'dc', reading: null } }],
    },
    '<span class="value" data-v="v5"><span class="s s1"><span class="t-own">sc</span><span class="t-other" hidden>dc</span></span></span>',
  ],
  [
    'words for one size',
    { type: 'onlyInline', sizes: [2], children: [text('Skip it.')] },
    '<span class="only s2"><span class="only-for c">Size Adult L only: </span>Skip it.</span>',
  ],
  [
    'words for two sizes',
    { type: 'onlyInline', sizes: [0, 2], children: [text('Skip it.')] },
    '<span class="only s0 s2"><span class="only-for c">Sizes Child and Adult L only: </span>Skip it.</span>',
  ],
]

describe('a line of text', () => {
  test.each(cases)('%s', (_, node, html) => {
    expect(htmlOfLine(node)).toBe(html)
  })
})

describe('links', () => {
  test.each([
    'https://example.org/a?b=c',
    'http://example.org',
    'mailto:hello@example.org',
    '../tide-line/',
    '/patterns/',
    '#cowl-rnd-2',
    'notes.html',
  ])('%s is kept', (href) => {
    expect(htmlOfLine({ type: 'link', href, children: [text('a')] })).toBe(`<a href="${href}">a</a>`)
  })

  test.each([
    'javascript:alert(1)',
    'JavaScript:alert(1)',
    ' javascript:alert(1)',
    'java\nscript:alert(1)',
    'data:text/html,x',
    'vbscript:x',
    'file:///etc/hosts',
    'relative:x',
    'http://',
  ])('%j keeps its words only', (href) => {
    expect(htmlOfLine({ type: 'link', href, children: [text('a')] })).toBe('<span>a</span>')
  })
})

describe('pictures', () => {
  test.each(['./a.jpg', '../a.png', 'a b.jpg', '/a.svg'])('%j is shown', (src) => {
    expect(htmlOfLine({ type: 'image', src, alt: 'The cord' })).toContain('<img ')
  })

  test.each([
    'https://example.org/a.jpg',
    '//example.org/a.jpg',
    '\\\\example.org\\a.jpg',
    'data:image/png;base64,AA',
    'javascript:alert(1)',
  ])('%j, from elsewhere, keeps its words only', (src) => {
    expect(htmlOfLine({ type: 'image', src, alt: 'The cord' })).toBe('The cord')
  })
})
