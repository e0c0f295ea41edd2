import { describe, expect, it } from 'vitest'
import {
  linksInto,
  resourcesOfPage,
  resourcesOfScript,
  resourcesOfStyles,
  versionIn,
} from '../../src/offline/resources.ts'

const page = `<html><head>
<link rel="canonical" href="https://studio.example/patterns/mat/">
<link rel="icon" href="/icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="/_astro/a.css?x=1&#38;y=2">
<link rel="alternate" href="/feed.xml">
<script type="application/ld+json">{"src":"/no.js"}</script>
<script type="module" src="/_astro/a.js"></script></head>
<main id="main" data-folder="/patterns/mat/" data-edition="1.0 &quot;b&quot;" data-version="abc">
<a href="/patterns/mat/mat-a4.pdf" type="application/pdf">A4</a> <a href="/patterns/mat/counts/">Counts</a>
<a href="/patterns/mat/">Here</a> <a href="/patterns/mat/counts.csv">CSV</a> <a href="/patterns/mats/">Others</a> <a href="#a">a</a>
<img alt="A" src="/_astro/a.webp" srcset="/_astro/b.webp 360w">
<ul><li>1</li><li hidden data-pattern="/patterns/mat/pattern.json" data-parts="/patterns/mat/print.json"></li></ul>
<details><summary>More</summary></details><details data-recipe="/patterns/mat/recipe.json?1"></details></main></html>`

describe('what is read from files that are kept', () => {
  it('finds what a page needs to be shown', () => {
    expect(resourcesOfPage(page)).toEqual([
      '/icon.svg',
      '/_astro/a.css?x=1&y=2',
      '/_astro/a.js',
      '/_astro/a.webp',
      '/patterns/mat/pattern.json',
      '/patterns/mat/print.json',
      '/patterns/mat/recipe.json?1',
    ])
  })

  it('finds print-outs and pages below a pattern', () => {
    expect(linksInto('/patterns/mat/', page)).toEqual(['/patterns/mat/mat-a4.pdf', '/patterns/mat/counts/'])
  })

  it.each([
    [page, { version: 'abc', edition: '1.0 "b"' }],
    ['<main id="main" data-version="abc">', { version: 'abc', edition: null }],
    ['<main id="main">', null],
    ['<p data-version="abc">', null],
    ['', null],
  ])('finds the version of a pattern: %#', (html, version) => {
    expect(versionIn(html)).toEqual(version)
  })

  it('finds the fonts of a style sheet that have its letters, and its pictures', () => {
    const face = (url: string, range: string): string => `@font-face{font-family:A;src:url(${url});${range}}`
    const css = [
      face('/a.woff2', 'unicode-range:U+20-7E,U+A0'),
      face('"./b.woff2"', 'unicode-range: U+??, U+131'),
      face('/c.woff2', ''),
      face('/d.woff2', 'unicode-range:U+A1-AF,U+2000-206F'),
      face('/e.woff2', 'unicode-range:U+0100-02BA'),
      '.f{background:url(/f.svg)}.g{mask:url(data:a,b)}',
    ]
    expect(resourcesOfStyles(css.join(''))).toEqual(['/a.woff2', './b.woff2', '/c.woff2', '/f.svg'])
  })

  it('finds the scripts that a script starts with, and not those that it may ask for', () => {
    const script = 'import{a as b}from"./a.js";import"./b.js";import("./c.js");const from="./d.js"'
    expect(resourcesOfScript(script)).toEqual(['./a.js', './b.js'])
  })
})
