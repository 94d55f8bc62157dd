// Checks a page against the rules of axe-core (WCAG 2.0 to 2.2, A and AA, and its best practices) at one width, and says
// how wide it is laid out, as JSON: page-axe.mjs FILE WIDTH
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { withPage } from './browser.mjs';

const [file, width] = process.argv.slice(2);
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
await withPage({ viewport: { width: Number(width), height: 800 } }, async (page) => {
  await page.goto(pathToFileURL(file).href, { waitUntil: 'load' });
  await page.evaluate(axe);
  const result = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations', 'incomplete'] }));
  const rule = ({ id, impact, help, nodes }) => ({
    id,
    impact: String(impact),
    help,
    nodes: nodes.map((node) => `${node.html.slice(0, 160)} | ${(node.failureSummary || '').replace(/\s+/g, ' ')}`),
  });
  const wide = await page.evaluate(() => (document.scrollingElement ?? document.documentElement).scrollWidth);
  console.log(
    JSON.stringify({
      width: wide,
      passed: result.passes.length,
      violations: result.violations.map(rule),
      incomplete: result.incomplete.map(rule),
    }),
  );
});
