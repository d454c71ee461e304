// The bodies of the page, to be turned. Without WebGL or without this script the still pictures stand alone.
const holder = document.getElementById('turning');
const canvas = holder?.querySelector('canvas');
// the bodies are in metres, as glTF wants it; the page speaks millimetres
const METRE = 0.001;

const readBody = async address => {
  const bytes = await (await fetch(address)).arrayBuffer();
  const view = new DataView(bytes);
  const jsonLength = view.getUint32(12, true);
  const json = JSON.parse(new TextDecoder().decode(new Uint8Array(bytes, 20, jsonLength)));
  const start = 20 + jsonLength + 8;
  const part = (number, Kind, width) => {
    const accessor = json.accessors[number];
    const offset = start + json.bufferViews[accessor.bufferView].byteOffset;
    return new Kind(bytes.slice(offset, offset + 4 * width * accessor.count));
  };
  const attributes = json.meshes[0].primitives[0].attributes;
  return { corners: part(0, Uint32Array, 1), places: part(attributes.POSITION, Float32Array, 3), gaps: part(attributes._GAP, Float32Array, 1) };
};

const start = async () => {
  const three = await import(holder.dataset.three);
  const renderer = new three.WebGLRenderer({ canvas, antialias: true, alpha: true, preserveDrawingBuffer: true });
  const ends = holder.dataset.steps.split(' ').map(Number);
  const metal = new three.Color(0xb4b4b0);
  const ink = new three.Color(0x1f3a5f);
  const paper = new three.Color(0xffffff);

  const colourOf = gap => {
    if (gap < -999) return metal;
    const step = ends.filter(end => gap >= end).length;
    return ink.clone().lerp(paper, 0.12 + 0.8 * step / ends.length);
  };

  const meshOf = body => {
    const flat = new three.BufferGeometry();
    flat.setAttribute('position', new three.BufferAttribute(body.places, 3));
    flat.setIndex(new three.BufferAttribute(body.corners, 1));
    const geometry = flat.toNonIndexed();
    const colours = new Float32Array(3 * body.corners.length);
    for (let t = 0; t < body.corners.length; t += 3) {
      const gap = Math.min(...[0, 1, 2].map(k => body.gaps[body.corners[t + k]]));
      const colour = colourOf(gap);
      for (let k = 0; k < 3; k++) colour.toArray(colours, 3 * (t + k));
    }
    geometry.setAttribute('color', new three.BufferAttribute(colours, 3));
    geometry.computeVertexNormals();
    return new three.Mesh(geometry, new three.MeshLambertMaterial({ vertexColors: true, side: three.DoubleSide }));
  };

  const [before, after] = await Promise.all([holder.dataset.before, holder.dataset.after].map(readBody));
  const bodies = { before: meshOf(before), after: meshOf(after) };
  bodies.before.visible = false;
  const box = new three.Box3().setFromObject(bodies.after);
  const length = box.max.z;
  const radius = Math.max(box.max.x, box.max.y);
  const tap = new three.Group();
  tap.add(bodies.before, bodies.after);
  const scene = new three.Scene();
  scene.add(tap, new three.HemisphereLight(0xffffff, 0x888880, 1.6));
  const lamp = new three.DirectionalLight(0xffffff, 1.8);
  lamp.position.set(-3, 5, 6);
  scene.add(lamp);
  const camera = new three.OrthographicCamera(-1, 1, 1, -1, -10, 10);
  let turn = 0.35, tilt = 0.42, reach = Math.min(length, 7 * radius) / 2, cut = false, spin = false;
  // the line along which the wheel grinds stands still in the fixture, over the tap
  const [r1, z1, r2, z2] = (holder.dataset.wheel ?? '0 0 0 0').split(' ').map(value => Number(value) * METRE);
  const wheel = new three.Line(
    new three.BufferGeometry().setFromPoints([new three.Vector3(0, r1, z1), new three.Vector3(0, r2, z2)]),
    new three.LineBasicMaterial({ color: 0xb3401f, depthTest: false }));
  wheel.visible = false;
  scene.add(wheel);
  const moved = new three.Vector3();
  const section = new three.Plane(new three.Vector3(0, 0, -1), 0);

  const draw = () => {
    const width = canvas.clientWidth, height = canvas.clientHeight;
    renderer.setSize(width, height, false);
    const aspect = width / height;
    camera.left = -reach; camera.right = reach; camera.top = reach / aspect; camera.bottom = -reach / aspect;
    camera.updateProjectionMatrix();
    // the axis to the right, the point towards the eye by the tilt, the tap turned about its axis
    tap.rotation.set(0, 0, 0);
    tap.quaternion.setFromAxisAngle(new three.Vector3(0, 1, 0), Math.PI / 2 + tilt)
      .multiply(new three.Quaternion().setFromAxisAngle(new three.Vector3(0, 0, 1), turn));
    const tilted = new three.Quaternion().setFromAxisAngle(new three.Vector3(0, 1, 0), Math.PI / 2 + tilt);
    tap.position.set(-reach * 0.8, 0, 0).add(moved.clone().applyQuaternion(tilted));
    wheel.quaternion.copy(tilted);
    wheel.position.set(-reach * 0.8, 0, 0);
    renderer.clippingPlanes = cut ? [section] : [];
    renderer.render(scene, camera);
    holder.dataset.drawn = String(Number(holder.dataset.drawn ?? 0) + 1);
  };

  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  const turnOnce = () => {
    const from = turn, began = performance.now();
    const step = now => {
      const part = Math.min(1, (now - began) / 6000);
      turn = from + 2 * Math.PI * part;
      draw();
      if (part < 1 && spin) requestAnimationFrame(step);
      else press('spin', spin = false);
    };
    requestAnimationFrame(step);
  };
  const press = (what, on) => holder.querySelector(`[data-do=${what}]`).setAttribute('aria-pressed', String(on));
  const deeds = {
    state: () => {
      bodies.before.visible = !bodies.before.visible;
      bodies.after.visible = !bodies.before.visible;
      press('state', bodies.after.visible);
    },
    left: () => { turn -= Math.PI / 12; },
    right: () => { turn += Math.PI / 12; },
    nearer: () => { reach = Math.max(radius / 2, reach / 1.3); },
    farther: () => { reach = Math.min(2 * length, reach * 1.3); },
    cut: () => press('cut', cut = !cut),
    spin: () => { press('spin', spin = !spin); if (spin && still) { turn += Math.PI / 2; press('spin', spin = false); } else if (spin) turnOnce(); },
  };
  holder.querySelectorAll('[data-do]').forEach(button => button.addEventListener('click', () => { deeds[button.dataset.do](); draw(); }));
  const keys = { ArrowLeft: 'left', ArrowRight: 'right', '+': 'nearer', '-': 'farther' };
  canvas.addEventListener('keydown', event => {
    if (event.key === 'ArrowUp') tilt = Math.min(1.5, tilt + 0.1);
    else if (event.key === 'ArrowDown') tilt = Math.max(-1.5, tilt - 0.1);
    else if (keys[event.key]) deeds[keys[event.key]]();
    else return;
    event.preventDefault();
    draw();
  });
  canvas.addEventListener('pointermove', event => {
    if (!event.buttons) return;
    turn += event.movementY * 0.01;
    tilt = Math.max(-1.5, Math.min(1.5, tilt - event.movementX * 0.01));
    draw();
  });
  document.addEventListener('spindle', ({ detail }) => {
    const way = holder.dataset.hand === 'left' ? -1 : 1;
    turn = Math.PI / 2 - way * detail.degrees * Math.PI / 180;
    moved.set(0, detail.radial, -detail.axial).multiplyScalar(METRE);
    wheel.visible = true;
    draw();
  });
  new ResizeObserver(draw).observe(canvas);
  holder.hidden = false;
  document.getElementById('no-turning').hidden = true;
  draw();
};

const hasWebGl = () => {
  try { return Boolean(document.createElement('canvas').getContext('webgl2')); } catch { return false; }
};
if (canvas && hasWebGl()) start().catch(why => { holder.hidden = true; holder.dataset.failed = String(why); });
