// The browser, without network, first-run pages or sandbox (root has none); lines of the console are kept.
import fs from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';

// The system's browser: playwright's own is not downloaded.
function program() {
  const folders = (process.env.PATH || '').split(path.delimiter);
  return folders.map((folder) => path.join(folder, 'chromium')).find((file) => fs.existsSync(file));
}

export async function withPage(options, work) {
  const browser = await chromium.launch({
    executablePath: program(),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  try {
    const context = await browser.newContext({ viewport: options.viewport ?? { width: 1000, height: 800 } });
    const page = await context.newPage();
    const complaints = [];
    const requests = [];
    page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
    page.on('requestfailed', (request) => complaints.push(`not loaded: ${request.url()}`));
    page.on('request', (request) => requests.push(request.url()));
    // Only files; anything else is refused, so a page that needs the network shows it.
    await context.route(/^(?!file:|data:|about:|blob:)/, (route) => route.abort());
    return await work(page, complaints, requests);
  } finally {
    await browser.close();
  }
}
