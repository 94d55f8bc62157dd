// What three.js' loaders read of a model, as JSON: frame-load.mjs FILE (.obj, .stl or .glb).
// Lengths as in the file; "volume" adds up the signed volumes of all triangles against the origin.
import { readFileSync } from 'node:fs';
import { Box3, Vector3 } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { OBJLoader } from 'three/examples/jsm/loaders/OBJLoader.js';
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';

const file = process.argv[2];
const bytes = readFileSync(file);
const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);

async function geometries() {
  if (file.endsWith('.stl')) return [{ name: 'all', geometry: new STLLoader().parse(buffer) }];
  const root = file.endsWith('.obj')
    ? new OBJLoader().parse(bytes.toString('utf8'))
    : (await new GLTFLoader().parseAsync(buffer, '')).scene;
  const found = [];
  root.traverse((o) => o.geometry && found.push({ name: o.name, lines: !!o.isLineSegments, geometry: o.geometry }));
  return found;
}

const parts = (await geometries()).map(({ name, lines, geometry }) => {
  const at = geometry.getAttribute('position');
  const corners = geometry.index ? Array.from(geometry.index.array) : Array.from({ length: at.count }, (_, i) => i);
  const point = (i) => new Vector3().fromBufferAttribute(at, corners[i]);
  let volume = 0;
  if (!lines) {
    for (let i = 0; i < corners.length; i += 3) volume += point(i).dot(point(i + 1).cross(point(i + 2))) / 6;
  }
  const box = new Box3().setFromBufferAttribute(at);
  return { name, pieces: corners.length / (lines ? 2 : 3), volume, min: box.min.toArray(), max: box.max.toArray() };
});
console.log(JSON.stringify(parts));
