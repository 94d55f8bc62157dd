// End points of every move of a plain program (G0 and G1), by npm's gcode-toolpath; A by the words of gcode-parser, since the
// toolpath keeps X, Y and Z only. Prints JSON: [["G0", x, y, z, a], ...] in millimetres and degrees: gcode-ends.mjs FILE
import fs from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const Toolpath = require('gcode-toolpath');
const { parseLine } = require('gcode-parser');

const ends = [];
let a = 0;
const toolpath = new Toolpath({
  addLine: (modal, from, to) => ends.push([modal.motion, to.x, to.y, to.z, a]),
  addArcCurve: () => ends.push(['arc', 0, 0, 0, a]),
});
for (const line of fs.readFileSync(process.argv[2], 'utf8').split(/\r?\n/)) {
  for (const [letter, value] of parseLine(line).words) if (letter === 'A') a = value;
  toolpath.loadFromStringSync(line);
}
console.log(JSON.stringify(ends));
