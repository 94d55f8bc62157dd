// Page size and the box of every element with an id, in mm at 96 px/in, as JSON: svg-measure.mjs FILE
// The drawing is put inline into a page, so that lengths with and without units come out as the browser means them.
import fs from 'node:fs';
import { withPage } from './browser.mjs';

const text = fs.readFileSync(process.argv[2], 'utf8').replace(/^\uFEFF?\s*<\?xml[^>]*\?>/, '');
await withPage({}, async (page, complaints) => {
  await page.setContent(`<!doctype html><body style="margin:0">${text}</body>`);
  const told = await page.evaluate(() => {
    const mm = 25.4 / 96;
    const drawing = document.querySelector('svg');
    const frame = drawing.getBoundingClientRect();
    const boxes = {};
    for (const element of drawing.querySelectorAll('[id]')) {
      if (typeof element.getBBox !== 'function' || !element.getScreenCTM()) continue;
      const box = element.getBBox();
      const m = element.getScreenCTM();
      const xs = [];
      const ys = [];
      for (const x of [box.x, box.x + box.width]) {
        for (const y of [box.y, box.y + box.height]) {
          xs.push((m.a * x + m.c * y + m.e - frame.x) * mm);
          ys.push((m.b * x + m.d * y + m.f - frame.y) * mm);
        }
      }
      const [left, top] = [Math.min(...xs), Math.min(...ys)];
      boxes[element.id] = [left, top, Math.max(...xs) - left, Math.max(...ys) - top];
    }
    return { page: [frame.width * mm, frame.height * mm], boxes };
  });
  console.log(JSON.stringify({ ...told, complaints }));
});
