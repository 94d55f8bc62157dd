// Prints a page to a PDF file at its own margins: page-print.mjs FILE FORMAT PDF
import { pathToFileURL } from 'node:url';
import { withPage } from './browser.mjs';

const [file, format, pdf] = process.argv.slice(2);
await withPage({}, async (page) => {
  await page.goto(pathToFileURL(file).href, { waitUntil: 'load' });
  await page.pdf({ path: pdf, format, preferCSSPageSize: true, printBackground: true });
  console.log('{}');
});
