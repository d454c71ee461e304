// Builds a tap from its figures with a general kernel for bodies, and measures it and a body that was handed over.
// node kernel.mjs FOLDER BODY.glb FIGURES.json ; FOLDER holds the kernel's manifold.js
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { resolve } from 'node:path';

const [folder, glb, figures] = process.argv.slice(2);
const { default: load } = await import(pathToFileURL(resolve(folder, 'manifold.js')));
const kernel = await load();
kernel.setup();
const { Manifold, Mesh, CrossSection } = kernel;
const tap = JSON.parse(readFileSync(figures, 'utf8'));

// the body that was handed over: binary glTF in metres
const bytes = readFileSync(glb);
const jsonLength = bytes.readUInt32LE(12);
const json = JSON.parse(bytes.subarray(20, 20 + jsonLength).toString('utf8'));
const start = 28 + jsonLength;
const part = (accessor, Kind, width) => {
  const { bufferView, count } = json.accessors[accessor];
  const from = start + json.bufferViews[bufferView].byteOffset;
  return new Kind(bytes.buffer.slice(bytes.byteOffset + from, bytes.byteOffset + from + 4 * width * count));
};
const primitive = json.meshes[0].primitives[0];
const places = part(primitive.attributes.POSITION, Float32Array, 3).map(metres => 1000 * metres);
const handed = new Manifold(new Mesh({ numProp: 3, vertProperties: places, triVerts: part(primitive.indices, Uint32Array, 1) }));

// the same tap from its figures: a threaded rod as one section twisted along the axis, less its flutes
const R = tap.major / 2, root = tap.minor / 2, slope = Math.tan(Math.PI / 6);
const crestHalf = tap.pitch / 16;
const profile = u => {
  const off = Math.abs(u - tap.pitch * Math.round(u / tap.pitch));
  return Math.min(R, Math.max(root, R - (off - crestHalf) / slope));
};
// only the part that is measured, and a little more at both ends
const low = tap.from - tap.pitch / 10, high = tap.to + tap.pitch / 10;
const around = 720;
const outline = [];
for (let i = 0; i < around; i++) {
  const phi = 2 * Math.PI * i / around;
  const r = profile(low - tap.lead * phi / (2 * Math.PI));
  outline.push([r * Math.cos(phi), r * Math.sin(phi)]);
}
const turns = (high - low) / tap.lead;
const rod = new CrossSection([outline]).extrude(high - low, Math.ceil(180 * turns), 360 * turns);
const centre = tap.core / 2 + tap.fluteRadius;
const half = Math.acos((R * R + centre * centre - tap.fluteRadius ** 2) / (2 * R * centre));
const lag = tap.fluteLead ? 2 * Math.PI * low / tap.fluteLead : 0;
const flutes = [];
for (let i = 0; i < tap.flutes; i++) {
  const phi = 2 * Math.PI * i / tap.flutes - half + lag;
  flutes.push(CrossSection.circle(tap.fluteRadius, 720).translate(centre * Math.cos(phi), centre * Math.sin(phi)));
}
const flute = CrossSection.union(flutes);
const helix = tap.fluteLead ? 360 * (high - low) / tap.fluteLead : 0;
const fluteBody = helix ? flute.extrude(high - low, Math.ceil(Math.abs(helix)), helix) : flute.extrude(high - low);
const built = rod.subtract(fluteBody).translate(0, 0, low);

const between = (body, low, high) => body.trimByPlane([0, 0, 1], low).trimByPlane([0, 0, -1], -high).volume();
const measure = body => ({
  status: String(body.status()),
  volume: between(body, tap.from, tap.to),
  sections: tap.heights.map(height => body.slice(height).area()),
});
console.log(JSON.stringify({ handed: measure(handed), built: measure(built), whole: handed.volume() }));
