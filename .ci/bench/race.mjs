// The race of our plan of the largest sphere against three.js' edges of the same sphere, both in one run and by turns, so
// that a busy moment of the machine meets both: race.mjs JAVA_CLASSES...
// "race.mjs once WAY" builds the sphere once with three.js, for the cold time.
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { createInterface } from 'node:readline';
import { delimiter } from 'node:path';
import { fileURLToPath } from 'node:url';
import { REVISION } from 'three';
import { check, ways } from './three-sphere.mjs';

const WARM_ROUNDS = 10;
const ROUNDS = 21;
const COLD_ROUNDS = 5;

if (process.argv[2] === 'once') {
  check(ways[process.argv[3]]());
  process.exit();
}

const javaArguments = ['-Xmx1g', '-cp', process.argv.slice(2).join(delimiter), 'collarwright.bench.Rounds'];
const java = spawn('java', javaArguments, { stdio: ['pipe', 'pipe', 'inherit'] });
const answers = createInterface({ input: java.stdout })[Symbol.asyncIterator]();

async function ask(word) {
  java.stdin.write(`${word}\n`);
  const answer = await answers.next();
  if (answer.done) throw new Error(`java ended at "${word}"`);
  return answer.value.split(' ').map(Number);
}

// Both sides give wall time and the processor time of their whole process, in milliseconds.
async function ours(word) {
  const [wall, processor] = await ask(word);
  return { wall, processor };
}

function theirs(way) {
  const before = process.cpuUsage();
  const start = performance.now();
  const built = ways[way]();
  const wall = performance.now() - start;
  const { user, system } = process.cpuUsage(before);
  check(built);
  return { wall, processor: (user + system) / 1000 };
}

const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const median = (numbers) => sorted(numbers)[Math.floor(numbers.length / 2)];

async function race(runners) {
  const times = Object.fromEntries(Object.keys(runners).map((name) => [name, []]));
  for (let round = 0; round < WARM_ROUNDS + ROUNDS; round++) {
    for (const [name, run] of Object.entries(runners)) {
      const time = await run();
      if (round >= WARM_ROUNDS) times[name].push(time);
    }
  }
  const medians = {};
  for (const [name, taken] of Object.entries(times)) {
    const wall = taken.map((t) => t.wall);
    medians[name] = {
      wall: median(wall),
      least: Math.min(...wall),
      most: Math.max(...wall),
      // Some systems count it in steps of 10 ms, which even out in the mean only.
      processor: taken.reduce((sum, t) => sum + t.processor, 0) / taken.length,
    };
  }
  return medians;
}

// Wall time of a fresh process from its start to its end.
function cold(command, args, input) {
  const times = [];
  for (let round = 0; round < COLD_ROUNDS; round++) {
    const start = performance.now();
    const run = spawnSync(command, args, { input, stdio: ['pipe', 'ignore', 'inherit'] });
    times.push(performance.now() - start);
    if (run.status !== 0) throw new Error(`${command} ended with ${run.status}`);
  }
  return median(times);
}

function residentMiB(pid) {
  try {
    return Number(/VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))[1]) / 1024;
  } catch {
    return NaN;
  }
}

const columns = (name, ...rest) => console.log(name.padEnd(44) + rest.map((cell) => String(cell).padStart(14)).join(''));
const row = (name, { wall, least, most, processor }) =>
  columns(name, wall.toFixed(1), `${least.toFixed(0)} to ${most.toFixed(0)}`, processor.toFixed(1));
const line = (name, value, unit) => columns(name, `${value} ${unit}`);

const version = spawnSync('java', ['-version'], { encoding: 'utf8' }).stderr.split('\n')[0];
console.log(`${version}; node ${process.version}; three.js r${REVISION}; ${cpus().length} cores`);
console.log(`Whole sphere of frequency 64; medians of ${ROUNDS} rounds by turns, after ${WARM_ROUNDS} warm ones;`);
console.log('processor time is the mean, and that of the whole process.\n');

const threeNames = Object.keys(ways);
const medians = await race({
  ...Object.fromEntries(threeNames.map((way) => [way, () => theirs(way)])),
  patterns: () => ours('patterns'),
  plan: () => ours('plan'),
});
columns('', 'wall ms', 'least to most', 'processor ms');
for (const way of threeNames) row(`three.js, ${way}`, medians[way]);
row('ours, dome to patterns', medians.patterns);
row('ours, and struts, checks, findings', medians.plan);

const quickest = threeNames.reduce((a, b) => (medians[a].wall <= medians[b].wall ? a : b));
const ratio = (own, time) => (medians[quickest][time] / medians[own][time]).toFixed(2);
console.log();
columns(`times quicker than three.js, ${quickest}`, 'by wall', '', 'by processor');
columns('ours, dome to patterns (goal: 3)', ratio('patterns', 'wall'), '', ratio('patterns', 'processor'));
columns('ours, and struts, checks, findings', ratio('plan', 'wall'), '', ratio('plan', 'processor'));

const { wall, processor } = (await race({ tilt: () => ours('tilt') })).tilt;
console.log();
columns('ours, million tilt limits a second (goal: 1)', (1000 / wall).toFixed(2), '', (1000 / processor).toFixed(2));
const round = (await race({ envelope: () => ours('envelope') })).envelope;
line('ours, envelope of a round hole (goal: 5)', (round.wall / 100).toFixed(2), 'ms');
line('ours, most heap in use (limit 1024)', (await ask('heap'))[0].toFixed(0), 'MiB');
line('ours, most memory held by the process', residentMiB(java.pid).toFixed(0), 'MiB');

// How the plan grows with the dome: the second of two runs of each size, after all that went before warmed the process.
console.log();
columns('plan of a whole sphere (b, c)', 'hubs', 'wall ms', 'processor ms', 'µs per hub');
for (const [b, c] of [[16, 0], [32, 0], [64, 0], [63, 1], [90, 0], [128, 0], [90, 90], [158, 0]]) {
  await ask(`whole ${b} ${c}`);
  const [wallTime, processorTime, hubs] = await ask(`whole ${b} ${c}`);
  columns(`(${b}, ${c})`, hubs, wallTime.toFixed(0), processorTime.toFixed(0), ((1000 * processorTime) / hubs).toFixed(2));
}
java.stdin.end();

const self = fileURLToPath(import.meta.url);
line('three.js, cold, whole process', cold(process.execPath, [self, 'once', quickest]).toFixed(0), 'ms');
line('ours, all of it, cold, whole process', cold('java', javaArguments, 'plan\n').toFixed(0), 'ms');
