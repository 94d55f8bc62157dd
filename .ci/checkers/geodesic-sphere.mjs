// Points and edges of three.js' class I sphere on the unit sphere, as JSON: geodesic-sphere.mjs ico|octa|tetra FREQUENCY
// Its numbers are 32-bit floats, good to about 1e-7; corners nearer than 1e-5 are one point.
import { IcosahedronGeometry, OctahedronGeometry, TetrahedronGeometry } from 'three';

const kinds = { ico: IcosahedronGeometry, octa: OctahedronGeometry, tetra: TetrahedronGeometry };
const [kind, frequency] = process.argv.slice(2);
// "detail" counts the cuts of an edge, one fewer than its parts.
const geometry = new kinds[kind](1, Number(frequency) - 1);
const position = geometry.getAttribute('position');

const SAME = 1e-5;
const cells = new Map();
const points = [];
const cell = (v) => Math.floor(v / (2 * SAME));
function point(i) {
  const p = [position.getX(i), position.getY(i), position.getZ(i)];
  const [a, b, c] = p.map(cell);
  for (let x = a - 1; x <= a + 1; x++) {
    for (let y = b - 1; y <= b + 1; y++) {
      for (let z = c - 1; z <= c + 1; z++) {
        for (const n of cells.get(`${x},${y},${z}`) ?? []) {
          if (Math.hypot(...p.map((v, k) => v - points[n][k])) < SAME) return n;
        }
      }
    }
  }
  const key = `${a},${b},${c}`;
  cells.set(key, [...(cells.get(key) ?? []), points.length]);
  points.push(p);
  return points.length - 1;
}

const index = geometry.index;
const corners = index ? index.count : position.count;
const edges = new Map();
const faces = [];
for (let i = 0; i < corners; i += 3) {
  const face = [0, 1, 2].map((k) => point(index ? index.getX(i + k) : i + k));
  faces.push(face);
  for (let k = 0; k < 3; k++) {
    const [from, to] = [face[k], face[(k + 1) % 3]].sort((m, n) => m - n);
    edges.set(`${from}-${to}`, [from, to]);
  }
}
console.log(JSON.stringify({ points, edges: [...edges.values()], faces }));
