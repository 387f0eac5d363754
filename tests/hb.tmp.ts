import { readFileSync } from "node:fs";
import { readBuild, solve, uncertainty } from "../packages/chargewright/src/build/index.ts";
import { write } from "@chargewright/quantities";
const json = JSON.parse(readFileSync("packages/chargewright/examples/moorland-two-seater.json","utf8"));
for (const [n,r] of [[2800,1.6],[2800,1.7],[3600,1.5],[3600,1.55],[3000,1.6]]) {
 json.blower.driveRatio = String(r);
 const b = readBuild(json);
 const c = {engineSpeed:`${n} rpm`, ambientTemperature:"21 °C", altitude:"0 m"};
 const p = solve(b, c);
 const u = uncertainty(b, c);
 console.log(n, r, (p.si.blowerOut.pressure-p.si.ambient.pressure)/1000, p.si.blowerOut.temperature-273.15, "->", p.si.coolerOut.temperature-273.15, "drop", (p.si.blowerOut.pressure-p.si.manifold.pressure)/1000, "u", u.values.blowerDischargeTemperature.value.standardUncertainty??u.values.blowerDischargeTemperature.value, String(u.values.blowerDischargeTemperature.value), String(u.values.manifoldTemperature.value), String(u.values.boost.value), p.si.volumetricEfficiency);
}
