// Lays a page out at one width, takes a picture, lists its lines of text, as JSON: page-look.mjs FILE WIDTH PICTURE
import { pathToFileURL } from 'node:url';
import { withPage } from './browser.mjs';

const [file, width, picture] = process.argv.slice(2);
await withPage({ viewport: { width: Number(width), height: 800 } }, async (page, complaints, requests) => {
  const address = pathToFileURL(file).href;
  await page.goto(address, { waitUntil: 'load' });
  const told = await page.evaluate(() => {
    const texts = [];
    const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!node.data.trim() || ['STYLE', 'SCRIPT', 'TITLE', 'title', 'desc', 'style'].includes(parent.tagName)) continue;
      const style = getComputedStyle(parent);
      if (style.visibility !== 'visible' || style.display === 'none') continue;
      // A text of an SVG is scaled with its drawing.
      const matrix = typeof parent.getScreenCTM === 'function' ? parent.getScreenCTM() : null;
      const scale = matrix ? Math.sqrt(Math.abs(matrix.a * matrix.d - matrix.b * matrix.c)) : 1;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects()) {
        if (box.width === 0 || box.height === 0) continue;
        texts.push({
          text: node.data.trim(),
          box: [box.x + scrollX, box.y + scrollY, box.width, box.height],
          size: parseFloat(style.fontSize) * scale,
        });
      }
    }
    const all = document.scrollingElement ?? document.documentElement;
    return { width: all.scrollWidth, height: all.scrollHeight, texts };
  });
  await page.screenshot({ path: picture, fullPage: true });
  console.log(JSON.stringify({ ...told, requests: requests.filter((asked) => asked !== address), complaints }));
});
