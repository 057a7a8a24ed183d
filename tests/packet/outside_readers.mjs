// The station's frame read by programs that are none of ours: glTF by Khronos' validator, IFC by web-ifc, whose volumes must be the library's.
// Usage: node outside_readers.mjs FOLDER NODE_MODULES      77: skipped, the readers are not there
import fs from 'node:fs';
import path from 'node:path';
import { createRequire } from 'node:module';

const [folder, modules] = process.argv.slice(2);
if (!modules || !fs.existsSync(path.join(modules, 'gltf-validator')) || !fs.existsSync(path.join(modules, 'web-ifc'))) {
  console.log('gltf-validator and web-ifc are not there: skipped');
  process.exit(77);
}
const require = createRequire(path.join(path.resolve(modules), 'here.js'));
const all = JSON.parse(fs.readFileSync(path.join(folder, 'all.json'), 'utf8'));
const fail = text => { console.error(text); process.exit(1); };

// -- glTF --
const bytes = fs.readFileSync(path.join(folder, 'station.gltf'));
const report = await require('gltf-validator').validateBytes(new Uint8Array(bytes), { maxIssues: 20 });
if (report.issues.numErrors || report.issues.numWarnings) fail(JSON.stringify(report.issues, null, 1));
if (report.info.drawCallCount !== all.sticks.length) fail(`glTF: ${report.info.drawCallCount} sticks, not ${all.sticks.length}`);

// -- IFC --
const volumeOf = (vertices, indices, at) => {
  let sum = 0;
  const p = i => [vertices[6 * i], vertices[6 * i + 1], vertices[6 * i + 2]];
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [p(indices[t]), p(indices[t + 1]), p(indices[t + 2])];
    sum += (a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
  }
  return sum;
};
const WebIFC = require('web-ifc');
const api = new WebIFC.IfcAPI();
api.SetWasmPath(path.join(path.resolve(modules), 'web-ifc') + '/', true);
await api.Init();
const model = api.OpenModel(new Uint8Array(fs.readFileSync(path.join(folder, 'station.ifc'))), { COORDINATE_TO_ORIGIN: false });
const members = api.GetLineIDsWithType(model, WebIFC.IFCMEMBER);
if (members.size() !== all.sticks.length) fail(`IFC: ${members.size()} members, not ${all.sticks.length}`);
const quantities = new Map(); // NetVolume of each member, by its line
const related = api.GetLineIDsWithType(model, WebIFC.IFCRELDEFINESBYPROPERTIES);
for (let i = 0; i < related.size(); i++) {
  const line = api.GetLine(model, related.get(i));
  const set = api.GetLine(model, line.RelatingPropertyDefinition.value);
  for (const q of set.Quantities) {
    const quantity = api.GetLine(model, q.value);
    if (quantity.VolumeValue) for (const m of line.RelatedObjects) quantities.set(m.value, quantity.VolumeValue.value);
  }
}
let worst = 0, read = 0;
api.StreamAllMeshes(model, mesh => {
  let volume = 0;
  for (let g = 0; g < mesh.geometries.size(); g++) {
    const geometry = api.GetGeometry(model, mesh.geometries.get(g).geometryExpressID);
    volume += volumeOf(api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize()),
      api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize()));
  }
  const stated = quantities.get(mesh.expressID);
  if (stated === undefined) return;
  read++;
  worst = Math.max(worst, Math.abs(volume - stated) / stated);
});
if (read !== all.sticks.length) fail(`IFC: solids of ${read} members were read, not of ${all.sticks.length}`);
if (!(worst < 1e-6)) fail(`IFC: a solid's volume differs by ${worst} of itself`);
console.log(`glTF: ${report.info.drawCallCount} sticks, no error and no warning; IFC: ${read} solids, volumes within ${worst.toExponential(1)}`);
