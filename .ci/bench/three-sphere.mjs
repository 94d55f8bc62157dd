// The whole sphere of frequency 64 as three.js' users come to its indexed edges: IcosahedronGeometry gives loose
// triangles, so equal corners are welded first; then every edge is listed once, as a pair of point numbers.
import { IcosahedronGeometry } from 'three';
import { mergeVertices } from 'three/addons/utils/BufferGeometryUtils.js';

export const FREQUENCY = 64;

// Corners that lie nearer than this are one; neighbours are 0.012 apart.
const GRID = 1e-5;

const looseTriangles = () => new IcosahedronGeometry(1, FREQUENCY - 1);

// All faces turn the same way on a closed surface, so each edge is met once in either direction: the rising one counts.
function edgesOf(index) {
  const edges = new Uint32Array(index.length);
  let n = 0;
  for (let i = 0; i < index.length; i += 3) {
    const a = index[i];
    const b = index[i + 1];
    const c = index[i + 2];
    if (a < b) { edges[n++] = a; edges[n++] = b; }
    if (b < c) { edges[n++] = b; edges[n++] = c; }
    if (c < a) { edges[n++] = c; edges[n++] = a; }
  }
  return edges.subarray(0, n);
}

// The library's own weld. Texture coordinates differ along the seam and must not keep corners apart.
function librarysWeld() {
  const geometry = looseTriangles();
  geometry.deleteAttribute('uv');
  geometry.deleteAttribute('normal');
  const welded = mergeVertices(geometry, GRID);
  return { points: welded.attributes.position.array, edges: edgesOf(welded.index.array) };
}

// A map from the rounded place to the point's number; one number holds all three coordinates exactly.
function mapWeld() {
  const loose = looseTriangles().attributes.position.array;
  const points = new Float32Array(loose.length);
  const index = new Uint32Array(loose.length / 3);
  const known = new Map();
  const cells = 1 / GRID;
  const side = 2 * cells + 1;
  for (let i = 0, at = 0; at < loose.length; i++, at += 3) {
    const x = Math.round(loose[at] * cells) + cells;
    const y = Math.round(loose[at + 1] * cells) + cells;
    const z = Math.round(loose[at + 2] * cells) + cells;
    const key = (x * side + y) * side + z;
    let point = known.get(key);
    if (point === undefined) {
      point = known.size;
      known.set(key, point);
      points[3 * point] = loose[at];
      points[3 * point + 1] = loose[at + 1];
      points[3 * point + 2] = loose[at + 2];
    }
    index[i] = point;
  }
  return { points: points.subarray(0, 3 * known.size), edges: edgesOf(index) };
}

// The same with a table of whole numbers in place of the map.
function tableWeld() {
  const loose = looseTriangles().attributes.position.array;
  const corners = loose.length / 3;
  const points = new Float32Array(loose.length);
  const cell = new Int32Array(loose.length);
  const index = new Uint32Array(corners);
  const mask = 2 ** Math.ceil(Math.log2(corners)) - 1;
  const slots = new Int32Array(mask + 1);
  const cells = 1 / GRID;
  let count = 0;
  for (let i = 0, at = 0; i < corners; i++, at += 3) {
    const x = Math.round(loose[at] * cells);
    const y = Math.round(loose[at + 1] * cells);
    const z = Math.round(loose[at + 2] * cells);
    let slot = Math.imul(x, 73856093) ^ Math.imul(y, 19349663) ^ Math.imul(z, 83492791);
    slot = (slot ^ (slot >>> 15)) & mask;
    for (;;) {
      const point = slots[slot] - 1;
      if (point < 0) {
        slots[slot] = count + 1;
        points[3 * count] = loose[at];
        points[3 * count + 1] = loose[at + 1];
        points[3 * count + 2] = loose[at + 2];
        cell[3 * count] = x;
        cell[3 * count + 1] = y;
        cell[3 * count + 2] = z;
        index[i] = count++;
        break;
      }
      if (cell[3 * point] === x && cell[3 * point + 1] === y && cell[3 * point + 2] === z) {
        index[i] = point;
        break;
      }
      slot = (slot + 1) & mask;
    }
  }
  return { points: points.subarray(0, 3 * count), edges: edgesOf(index) };
}

export const ways = { "library's weld": librarysWeld, 'map weld': mapWeld, 'table weld': tableWeld };

export function check({ points, edges }) {
  const wanted = 10 * FREQUENCY ** 2;
  if (points.length !== 3 * (wanted + 2) || edges.length !== 2 * 3 * wanted) {
    throw new Error(`three.js: ${points.length / 3} points, ${edges.length / 2} edges`);
  }
}
