// Writes a geodesic sphere of frequency 2 with three.js' exporters: frame-save.mjs FOLDER
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { IcosahedronGeometry, Mesh } from 'three';
import { OBJExporter } from 'three/examples/jsm/exporters/OBJExporter.js';
import { PLYExporter } from 'three/examples/jsm/exporters/PLYExporter.js';
import { STLExporter } from 'three/examples/jsm/exporters/STLExporter.js';

const mesh = new Mesh(new IcosahedronGeometry(1000, 1));
const save = (name, data) => writeFileSync(join(process.argv[2], name), data);
save('sphere.obj', new OBJExporter().parse(mesh));
save('text.stl', new STLExporter().parse(mesh));
save('binary.stl', new STLExporter().parse(mesh, { binary: true }));
save('text.ply', new PLYExporter().parse(mesh, undefined, {}));
save('big.ply', new Uint8Array(new PLYExporter().parse(mesh, undefined, { binary: true })));
save('little.ply', new Uint8Array(new PLYExporter().parse(mesh, undefined, { binary: true, littleEndian: true })));
console.log(JSON.stringify(['sphere.obj', 'text.stl', 'binary.stl', 'text.ply', 'big.ply', 'little.ply']));
