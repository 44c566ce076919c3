import { describe, expect, it } from 'vitest';
import { withFirstPicture } from '../../src/build/first-picture.ts';

const wakes = '<script>(()=>{self.wake=1})();\n</script>';
const runs = "<script>a='$&$1$`'</script>";
const fetched = '<script type="module" src="/b.js"></script>';

describe('what wakes islands, in a page', () => {
  it('stands behind the first step of the wall, in its order', () => {
    const html = `<section class="slide slide-guess"><h2>A</h2>${wakes}${runs}<section>B</section></section> <section class="slide">C</section>${fetched}`;
    expect(withFirstPicture('stage/learn/a/index.html', html)).toBe(
      `<section class="slide slide-guess"><h2>A</h2><section>B</section></section> ${wakes}${runs}<section class="slide">C</section>${fetched}`,
    );
  });

  it('comes forward where the first step of the wall has no island', () => {
    const html = `<section class="slide">A</section><section class="slide">B${wakes}</section>`;
    expect(withFirstPicture('stage/learn/a/index.html', html)).toBe(
      `<section class="slide">A</section>${wakes}<section class="slide">B</section>`,
    );
  });

  it('stands behind what a formula sheet is about', () => {
    const html = `<h1>A</h1><p class="lead measure">B</p><p>C</p>${wakes}${fetched}`;
    expect(withFirstPicture('reference/formulas/a/index.html', html)).toBe(
      `<h1>A</h1><p class="lead measure">B</p>${wakes}<p>C</p>${fetched}`,
    );
  });

  it.each([
    ['learn/a/index.html', `<p class="lead">A</p><p>B</p>${wakes}`],
    ['stage/talk/index.html', `<main>A</main>${wakes}`],
    ['stage/learn/a/index.html', '<section class="slide">A</section><section class="slide">B</section>'],
    ['reference/formulas/a/index.html', `<p>A</p>${wakes}`],
  ])('stays where it is in %s', (file, html) => {
    expect(withFirstPicture(file, html)).toBe(html);
  });
});
