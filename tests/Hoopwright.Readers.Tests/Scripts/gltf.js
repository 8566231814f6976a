// Runs the Khronos glTF validator over every .glb file under a folder and prints its reports, and what the nodes hold, as JSON.
const fs = require("fs"), path = require("path"), validator = require("gltf-validator");

function files(folder) {
  return fs.readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1)).flatMap(entry => {
    const at = path.join(folder, entry.name);
    return entry.isDirectory() ? files(at) : at.endsWith(".glb") ? [at] : [];
  });
}

// The text of a binary file: its first chunk, by glTF 2.0, 4.4.
function text(bytes) {
  return JSON.parse(bytes.subarray(20, 20 + bytes.readUInt32LE(12)).toString("utf8"));
}

// The numbers of an accessor, row by row.
function rows(gltf, bytes, index) {
  const accessor = gltf.accessors[index], view = gltf.bufferViews[accessor.bufferView], size = accessor.type === "VEC3" ? 3 : 1;
  const start = 28 + bytes.readUInt32LE(12) + view.byteOffset + accessor.byteOffset;
  return Array.from({ length: accessor.count }, (_, row) => Array.from({ length: size }, (_, column) => {
    const at = start + 4 * (row * size + column);
    return accessor.componentType === 5126 ? bytes.readFloatLE(at) : bytes.readUInt32LE(at);
  }));
}

// Six times the volume within triangles is the sum of their corners' triple products; it is positive when all face outward.
function volume(gltf, bytes, primitive) {
  const points = rows(gltf, bytes, primitive.attributes.POSITION), corners = rows(gltf, bytes, primitive.indices).map(row => row[0]);
  let sum = 0;
  for (let at = 0; at < corners.length; at += 3) {
    const [a, b, c] = [points[corners[at]], points[corners[at + 1]], points[corners[at + 2]]];
    sum += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return sum / 6;
}

// Where each node lies and how far its own mesh reaches, by the bounds that the file states and the validator checked.
function nodes(gltf, bytes) {
  const found = [];
  const visit = (index, at, parent) => {
    const node = gltf.nodes[index], move = node.translation ?? [0, 0, 0], here = at.map((value, axis) => value + move[axis]);
    const entry = { name: node.name, parent, extras: node.extras ?? {} };
    if (node.mesh !== undefined) {
      const primitive = gltf.meshes[node.mesh].primitives[0], bounds = gltf.accessors[primitive.attributes.POSITION];
      entry.mesh = node.mesh;
      entry.volume = volume(gltf, bytes, primitive);
      entry.material = gltf.materials[primitive.material].name;
      entry.min = bounds.min.map((value, axis) => value + here[axis]);
      entry.max = bounds.max.map((value, axis) => value + here[axis]);
    }
    found.push(entry);
    for (const child of node.children ?? []) visit(child, here, node.name);
  };
  for (const top of gltf.scenes[gltf.scene].nodes) visit(top, [0, 0, 0], "");
  return found;
}

(async () => {
  const all = {}, root = process.argv[2];
  for (const file of files(root)) {
    const bytes = fs.readFileSync(file), report = await validator.validateBytes(new Uint8Array(bytes), { maxIssues: 0 }), gltf = text(bytes);
    all[path.relative(root, file)] = { bytes: bytes.length, issues: report.issues, info: report.info, scene: gltf.scenes[0].name, materials: gltf.materials, nodes: nodes(gltf, bytes) };
  }
  process.stdout.write(JSON.stringify(all));
})();
