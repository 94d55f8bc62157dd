// Extents of a DXF file, bulges and arcs walked along, and its entities by type, as JSON: dxf-box.mjs FILE
import fs from 'node:fs';
import { createRequire } from 'node:module';

const { Helper } = createRequire(import.meta.url)('dxf');
const helper = new Helper(fs.readFileSync(process.argv[2], 'utf8'));
const counts = {};
for (const entity of helper.denormalised) counts[entity.type] = (counts[entity.type] ?? 0) + 1;
const { bbox } = helper.toPolylines();
console.log(JSON.stringify({ box: [bbox.min.x, bbox.min.y, bbox.max.x - bbox.min.x, bbox.max.y - bbox.min.y], counts }));
