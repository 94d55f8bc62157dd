// Edges of the convex hull of points, by three.js' ConvexHull (64-bit floats), as JSON: convex-hull.mjs FILE
// FILE holds a JSON list of [x, y, z]. Where more than three points lie in one plane, how that plane is cut up is chance.
import { readFileSync } from 'node:fs';
import { Vector3 } from 'three';
import { ConvexHull } from 'three/examples/jsm/math/ConvexHull.js';

const points = JSON.parse(readFileSync(process.argv[2], 'utf8')).map((p) => new Vector3(...p));
const number = new Map(points.map((p, i) => [p, i]));
const hull = new ConvexHull().setFromPoints(points);
const edges = new Map();
for (const face of hull.faces) {
  let half = face.edge;
  do {
    const [from, to] = [number.get(half.tail().point), number.get(half.head().point)].sort((m, n) => m - n);
    edges.set(`${from}-${to}`, [from, to]);
    half = half.next;
  } while (half !== face.edge);
}
console.log(JSON.stringify({ edges: [...edges.values()], faceCount: hull.faces.length }));
