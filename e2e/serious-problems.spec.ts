import { expect, test } from './browser.ts';
import { seriousProblems } from './serious-problems.ts';

test('what is in the way of screen readers and weak eyes is found, with its place', async ({ page }) => {
  await page.setContent(`<!doctype html><html lang="en"><title>Planted</title><main><h1>Planted</h1>
    <p id="pale" style="color: #bbb; background: #fff">too little contrast</p><button id="nameless"></button></main>`);
  expect(await seriousProblems(page)).toEqual(['button-name: #nameless', 'color-contrast: #pale']);
});
