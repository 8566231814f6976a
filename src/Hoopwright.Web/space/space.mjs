// The tunnel in space: tubes, boards, film. x across, y along, z up, metres.
import {
  AmbientLight, BoxGeometry, BufferGeometry, CurvePath, CylinderGeometry, DirectionalLight, DoubleSide, Float32BufferAttribute,
  GridHelper, Group, LineCurve3, Mesh, MeshLambertMaterial, Path, PerspectiveCamera, Scene, Shape, ShapeGeometry, TubeGeometry, Vector3, WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';

const views = new WeakMap();
const steel = new MeshLambertMaterial({ color: 0x8b9795 }), wood = new MeshLambertMaterial({ color: 0xa9743d }), earth = new MeshLambertMaterial({ color: 0x5d4a3a });
const moved = new MeshLambertMaterial({ color: 0xa3301f });
const film = new MeshLambertMaterial({ color: 0x8fc0d8, transparent: true, opacity: .28, side: DoubleSide, depthWrite: false });

export function show(host, text) {
  const tunnel = JSON.parse(text);
  let view = views.get(host);
  if (!view) {
    view = start(host);
    if (!view) return false;
    views.set(host, view);
  }
  const first = !view.model;
  if (view.model) { view.scene.remove(view.model); view.model.traverse(part => part.geometry?.dispose()); }
  view.model = model(tunnel);
  view.scene.add(view.model);
  if (first) place(view, tunnel);
  view.draw();
  return true;
}

export function stop(host) {
  const view = views.get(host);
  if (!view) return;
  views.delete(host);
  view.watch.disconnect();
  view.controls.dispose();
  view.renderer.dispose();
  view.renderer.domElement.remove();
}

function start(host) {
  let renderer;
  try { renderer = new WebGLRenderer({ antialias: true, alpha: true }); } catch { return null; }
  const scene = new Scene(), camera = new PerspectiveCamera(42, 1, .1, 2000);
  scene.add(new AmbientLight(0xffffff, 1.9));
  const sun = new DirectionalLight(0xffffff, 1.8);
  sun.position.set(-20, 40, 30);
  scene.add(sun);
  const controls = new OrbitControls(camera, renderer.domElement);
  controls.maxPolarAngle = Math.PI * .495;
  controls.listenToKeyEvents(host);
  const draw = () => renderer.render(scene, camera);
  controls.addEventListener('change', draw);
  host.append(renderer.domElement);
  const size = () => {
    const { clientWidth: width, clientHeight: height } = host;
    if (!width || !height) return;
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    renderer.setSize(width, height, false);
    camera.aspect = width / height;
    camera.updateProjectionMatrix();
    draw();
  };
  const watch = new ResizeObserver(size);
  watch.observe(host);
  // The arrow keys turn the tunnel.
  host.addEventListener('keydown', event => {
    const turn = { ArrowLeft: -.12, ArrowRight: .12 }[event.key];
    if (!turn) return;
    event.preventDefault();
    camera.position.sub(controls.target).applyAxisAngle(new Vector3(0, 1, 0), turn).add(controls.target);
    controls.update();
    draw();
  });
  return { renderer, scene, camera, controls, draw, watch, model: null };
}

// Three.js has y up; the tunnel has z up and y along.
const point = ([x, y, z]) => new Vector3(x, z, -y);

function model(tunnel) {
  const group = new Group(), { profile, bows, tubeRadius, members } = tunnel;
  for (const [y, base] of bows) group.add(tube(profile, y, base, tubeRadius, steel));
  // How one bow moves under the worst loads, drawn many times larger.
  if (tunnel.moved) group.add(tube(tunnel.moved.points, ...bows[tunnel.moved.bow - 1], tubeRadius, moved));
  for (const end of tunnel.ends) group.add(wall(profile, end));
  for (const member of members) group.add(stick(member));
  group.add(new Mesh(skin(profile, bows), film));
  const [wide, long] = [profile.at(-1)[0], bows.at(-1)[0]];
  const ground = new GridHelper(Math.ceil(Math.max(wide, long) * 1.6), Math.ceil(Math.max(wide, long) * 1.6), 0x5d4a3a, 0xb7a998);
  ground.position.set(wide / 2, -.01, -long / 2);
  group.add(ground);
  return group;
}

function tube(line, y, base, radius, material) {
  const path = new CurvePath();
  for (let at = 1; at < line.length; at++) path.add(new LineCurve3(point([line[at - 1][0], y, line[at - 1][1] + base]), point([line[at][0], y, line[at][1] + base])));
  return new Mesh(new TubeGeometry(path, line.length * 2, radius, 8), material);
}

// The film of an end, with its doors left open.
function wall(profile, { y, base, doors }) {
  const shape = new Shape();
  profile.forEach(([x, z], at) => at ? shape.lineTo(x, z) : shape.moveTo(x, z));
  for (const [left, right, top] of doors) {
    const door = new Path();
    door.moveTo(left, .01); door.lineTo(left, top); door.lineTo(right, top); door.lineTo(right, .01);
    shape.holes.push(door);
  }
  const mesh = new Mesh(new ShapeGeometry(shape), film);
  mesh.position.set(0, base, -y);
  return mesh;
}

function stick({ role, a, b, across, deep, round }) {
  const from = point(a), to = point(b), way = to.clone().sub(from), length = way.length();
  const shape = round ? new CylinderGeometry(across / 2, across / 2, length, 10) : new BoxGeometry(across, length, deep);
  const mesh = new Mesh(shape, round ? steel : role === 'GroundPost' ? earth : wood);
  mesh.position.copy(from).add(to).multiplyScalar(.5);
  if (length > 0) mesh.quaternion.setFromUnitVectors(new Vector3(0, 1, 0), way.normalize());
  return mesh;
}

function skin(profile, bows) {
  const places = [], faces = [], row = profile.length;
  for (const [y, base] of bows) for (const [x, z] of profile) { const at = point([x, y, z + base]); places.push(at.x, at.y, at.z); }
  for (let bow = 1; bow < bows.length; bow++) for (let at = 1; at < row; at++) {
    const [a, b, c, d] = [(bow - 1) * row + at - 1, (bow - 1) * row + at, bow * row + at - 1, bow * row + at];
    faces.push(a, b, c, b, d, c);
  }
  const shape = new BufferGeometry();
  shape.setAttribute('position', new Float32BufferAttribute(places, 3));
  shape.setIndex(faces);
  shape.computeVertexNormals();
  return shape;
}

function place(view, { profile, bows }) {
  const wide = profile.at(-1)[0], long = bows.at(-1)[0], high = Math.max(...profile.map(([, z]) => z)), far = Math.max(wide, long * .62, high) * 1.5;
  view.controls.target.set(wide / 2, high * .35, -long / 2);
  view.camera.position.set(wide / 2 - far * .75, high * .9 + far * .35, far * .55);
  view.controls.update();
}
