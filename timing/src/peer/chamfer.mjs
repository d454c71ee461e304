// Grinds a chamfer with a general kernel for bodies: a cone, less the wheel at every step of the spindle.
// node chamfer.mjs FOLDER WORK.json ; FOLDER holds the kernel's manifold.js. Prints the coarsest setting found, as JSON;
// times are of the processor, building of the bodies only.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { resolve } from 'node:path';

const [folder, file] = process.argv.slice(2);
const { default: load } = await import(pathToFileURL(resolve(folder, 'manifold.js')));
const kernel = await load();
kernel.setup();
const { Manifold, CrossSection } = kernel;
const work = JSON.parse(readFileSync(file, 'utf8'));
const { point, kappa, length, wheel, rise, lobe, starts, probes } = work;
const degrees = 180 / Math.PI;

const share = phi => Math.max(...starts.map(start => {
  const turn = ((phi - start) % (2 * Math.PI) + 2 * Math.PI) % (2 * Math.PI);
  if (turn <= lobe.rise) return turn / lobe.rise;
  return turn < lobe.rise + lobe.back ? 1 - (turn - lobe.rise) / lobe.back : 0;
}));

// the part of the wheel that can touch: an arc of facets, half of them proud of the true circle and half inside it
const wheelBody = facet => {
  const half = 0.75 * (point + length * Math.tan(kappa));
  const count = 2 * Math.ceil(half / facet);
  const sag = (2 * half / count) ** 2 / (8 * wheel);
  const outline = [];
  for (let i = 0; i <= count; i++) {
    const y = half * (2 * i / count - 1);
    outline.push([wheel - Math.sqrt((wheel + sag / 2) ** 2 - y * y), y]);
  }
  outline.push([3 * half, half], [3 * half, -half]);
  const along = length / Math.cos(kappa) + 8;
  return new CrossSection([outline.reverse()]).extrude(along).translate(0, 0, -4).rotate(0, kappa * degrees, 0).translate(point, 0, 0);
};

const grind = setting => {
  const tool = wheelBody(setting.facet);
  const steps = Math.ceil(360 / setting.step);
  const began = process.cpuUsage().user;
  const parts = [Manifold.cylinder(length, point + 0.1, point + 0.1 + length * Math.tan(kappa), 180)];
  for (let i = 0; i < steps; i++) {
    const phi = 2 * Math.PI * i / steps;
    parts.push(tool.translate(-rise * share(phi), 0, 0).rotate(0, 0, phi * degrees));
  }
  const ground = Manifold.difference(parts);
  const triangles = ground.numTri();
  const milliseconds = (process.cpuUsage().user - began) / 1000;
  return { ground, triangles, milliseconds, steps };
};

// where the ray of a probe leaves the body; triangles are sorted by the angles that they cover
const errorOf = ground => {
  const mesh = ground.getMesh();
  const place = k => [0, 1, 2].map(axis => mesh.vertProperties[mesh.numProp * k + axis]);
  const bins = Array.from({ length: 720 }, () => []);
  for (let t = 0; t < mesh.triVerts.length; t += 3) {
    const corners = [0, 1, 2].map(k => place(mesh.triVerts[t + k]));
    const angles = corners.map(([x, y]) => Math.atan2(y, x));
    const low = Math.min(...angles), high = Math.max(...angles);
    const from = high - low > Math.PI ? 0 : Math.floor((low + Math.PI) * 360 / Math.PI);
    const to = high - low > Math.PI ? 719 : Math.floor((high + Math.PI) * 360 / Math.PI);
    for (let bin = from; bin <= to; bin++) bins[Math.min(719, bin)].push(corners);
  }
  let worst = 0;
  for (const [theta, z, radius] of probes) {
    const wrapped = Math.atan2(Math.sin(theta), Math.cos(theta));
    const dx = Math.cos(theta), dy = Math.sin(theta);
    let found = -1;
    for (const [a, b, c] of bins[Math.min(719, Math.floor((wrapped + Math.PI) * 360 / Math.PI))]) {
      const e1 = b.map((v, k) => v - a[k]), e2 = c.map((v, k) => v - a[k]);
      const p = [dy * e2[2], -dx * e2[2], dx * e2[1] - dy * e2[0]];
      const det = e1[0] * p[0] + e1[1] * p[1] + e1[2] * p[2];
      if (Math.abs(det) < 1e-14) continue;
      const s = [-a[0], -a[1], z - a[2]];
      const u = (s[0] * p[0] + s[1] * p[1] + s[2] * p[2]) / det;
      if (u < -1e-9 || u > 1 + 1e-9) continue;
      const q = [s[1] * e1[2] - s[2] * e1[1], s[2] * e1[0] - s[0] * e1[2], s[0] * e1[1] - s[1] * e1[0]];
      const v = (dx * q[0] + dy * q[1]) / det;
      if (v < -1e-9 || u + v > 1 + 1e-9) continue;
      found = Math.max(found, (e2[0] * q[0] + e2[1] * q[1] + e2[2] * q[2]) / det);
    }
    worst = Math.max(worst, Math.abs(found - radius));
  }
  return 1000 * worst;
};

// from coarse to fine, the first with which no probe is off by more than a micrometre
const search = () => {
  for (const step of [3, 2.4, 2, 1.9, 1.8, 1.7, 1.6, 1.4, 1.2, 1, 0.8, 0.6]) {
    for (const facet of [0.9, 0.6]) {
      const one = grind({ step, facet });
      const error = errorOf(one.ground);
      one.ground.delete();
      console.error(`a step of ${step} deg, facets of ${facet} mm: ${error.toFixed(3)} um, ${one.milliseconds.toFixed(0)} ms`);
      if (error <= 1) return { step, facet, error, triangles: one.triangles };
    }
  }
  return null;
};
const best = search();
if (!best) process.exit(1);
const times = [];
for (let i = 0; i < 5; i++) {
  const one = grind(best);
  times.push(one.milliseconds);
  one.ground.delete();
}
times.sort((a, b) => a - b);
console.log(JSON.stringify({ ...best, milliseconds: times[2] }));
