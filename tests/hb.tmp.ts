import { readFileSync } from "node:fs";
import { readBuild, solve, sweep, whatBoostCosts, openValue } from "../packages/chargewright/src/build/index.ts";
const json = JSON.parse(readFileSync("packages/chargewright/examples/moorland-two-seater.json","utf8"));
const b = readBuild(json);
const nul = Object.create(null);
const t=(n:string,f:()=>unknown)=>{try{ f(); console.log(n,"OK?");}catch(e:any){console.log(n, e?.name==="ChargewrightError"?"good "+e.input:"BAD "+String(e).slice(0,160));}};
for (const v of [null, 1n, Symbol("x"), nul, [], {}, Number.NaN, ()=>1, {toString(){throw 1}}, "", "x".repeat(1e4), true, {kind:"rotationalSpeed",si:3}]) {
 t("cond.speed", ()=>solve(b,{engineSpeed:v} as never));
 t("cond", ()=>solve(b,v as never));
 t("fuelling", ()=>solve(b,{engineSpeed:"2000 rpm",fuelling:v} as never));
 t("fuelling.rl", ()=>solve(b,{engineSpeed:"2000 rpm",fuelling:{roadLoad:v}} as never));
 t("gear", ()=>solve(b,{engineSpeed:"2000 rpm",gear:v} as never));
 t("relief", ()=>solve(b,{engineSpeed:"2000 rpm",reliefOpening:v} as never));
 t("build", ()=>readBuild(v));
 t("build.engine", ()=>readBuild({...json, engine:v}));
 t("build.engine.cyl", ()=>readBuild({...json, engine:{...json.engine,cylinders:v}}));
 t("build.engine.disp", ()=>readBuild({...json, engine:{...json.engine,displacement:v}}));
 t("build.lim.cal", ()=>readBuild({...json, limiter:{...json.limiter,calibration:v}}));
 t("build.lim.cal1", ()=>readBuild({...json, limiter:{...json.limiter,calibration:[v]}}));
 t("sweep", ()=>sweep(b,{engineSpeed:"2000 rpm"},v as never));
 t("sweep.axis", ()=>sweep(b,{engineSpeed:"2000 rpm"},{driveRatio:v} as never));
 t("sweep.axis[]", ()=>sweep(b,{engineSpeed:"2000 rpm"},{driveRatio:[v]} as never));
}
for (const s of ["0.05 km/h","0.5 km/h","3 km/h"]) t("road "+s, ()=>console.log(solve(b,{engineSpeed:"2000 rpm",roadSpeed:s}).boost.si));
for (const [k,v] of [["unkn", {...json, engin: json.engine, engine: undefined}],["bad",{...json,blower:{...json.blower,driveRatoi:"1"}}]] as const) try{readBuild(v)}catch(e){console.log(String(e))}
for (const c of [{engineSpeed:"2000 rpm",ambientTemprature:"20 °C"},{engineSpeed:"2000 Nm"}]) try{solve(b,c as never)}catch(e){console.log(String(e))}
try{ solve(readBuild({...json, engine:{...json.engine,displacement:"20 Nm"}}),{engineSpeed:"2000 rpm"})}catch(e:any){console.log(String(e), e.code)}
try{ const {blower,...rest}=json; const {engine,...r2}=rest; readBuild(r2)}catch(e:any){console.log(String(e), e.code)}
