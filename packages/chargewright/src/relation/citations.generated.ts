// Written by scripts/citations.mjs from references/sources.yaml.

/** A source that a relation stands on. */
export interface Citation {
  readonly id: string;
  readonly by: string;
  readonly title: string;
  readonly year?: number;
  readonly where?: string;
}

/** The sources by their ids. */
export const citations = {
  "nist-sp811-2008": {"id":"nist-sp811-2008","by":"National Institute of Standards and Technology","title":"Guide for the Use of the International System of Units (SI), Appendix B.8 and B.9","year":2008,"where":"NIST Special Publication 811, https://www.nist.gov/pml/special-publication-811/nist-guide-si-appendix-b-conversion-factors/nist-guide-si-appendix-b8"},
  "ucum-2024": {"id":"ucum-2024","by":"Regenstrief Institute and the UCUM Organization","title":"The Unified Code for Units of Measure, essence file version 2.2","year":2024,"where":"https://ucum.org"},
  "gnu-units-2-22": {"id":"gnu-units-2-22","by":"A. Mariano","title":"GNU units 2.22 with definitions file version 3.15","where":"https://www.gnu.org/software/units/"},
  "ussa-1976": {"id":"ussa-1976","by":"NOAA, NASA and USAF","title":"U.S. Standard Atmosphere, 1976","year":1976,"where":"NOAA-S/T 76-1562, NASA-TM-X-74335 (NTRS 19770009539)"},
  "kutz-handbook-4": {"id":"kutz-handbook-4","by":"M. Kutz (ed.)","title":"Mechanical Engineers' Handbook, Volume 4, Thermophysical Properties of Fluids","where":"Table 6, after the U.S. Standard Atmosphere 1976"},
  "fluids-1-3-1": {"id":"fluids-1-3-1","by":"Caleb Bell and contributors","title":"fluids, version 1.3.1","where":"https://github.com/CalebBell/fluids"},
  "psychrolib-2-5-0": {"id":"psychrolib-2-5-0","by":"D. Meyer, D. Thevenard and contributors","title":"PsychroLib, version 2.5.0","where":"https://github.com/psychrometrics/psychrolib"},
  "coolprop-8-0-0": {"id":"coolprop-8-0-0","by":"CoolProp contributors","title":"CoolProp, version 8.0.0","where":"https://github.com/CoolProp/CoolProp"},
  "psychro-jl-0-3": {"id":"psychro-jl-0-3","by":"Psychro.jl contributors","title":"Psychro.jl, version 0.3, documentation examples","where":"Public repository AtelierArith/DocStrBankExperimental.jl, Psychro/0.3"},
  "picard-2008": {"id":"picard-2008","by":"A. Picard, R. S. Davis, M. Gläser, K. Fujii","title":"Revised formula for the density of moist air (CIPM-2007)","year":2008,"where":"Metrologia 45, 149-155"},
  "cengel-cimbala-2006": {"id":"cengel-cimbala-2006","by":"Y. A. Cengel, J. M. Cimbala","title":"Fluid Mechanics: Fundamentals and Applications","year":2006,"where":"McGraw-Hill"},
  "munson-young-okiishi": {"id":"munson-young-okiishi","by":"B. R. Munson, D. F. Young, T. H. Okiishi","title":"Fundamentals of Fluid Mechanics","where":"Wiley"},
  "fox-mcdonald": {"id":"fox-mcdonald","by":"R. W. Fox, A. T. McDonald","title":"Introduction to Fluid Mechanics","where":"Wiley"},
  "sae-j2263-scope": {"id":"sae-j2263-scope","by":"SAE International","title":"SAE J2263, road load measurement (scope and reference conditions)","where":"also 40 CFR 1066.805(c) and 1066.310"},
  "amca-standard-air": {"id":"amca-standard-air","by":"Air Movement and Control Association","title":"Standard air: 70 °F, 29.92 inHg, dry","where":"as listed in public tables of standard conditions"},
  "asme-standard-air": {"id":"asme-standard-air","by":"American Society of Mechanical Engineers","title":"Standard air of the older blower test code: 68 °F, 14.70 psia, 36 % relative humidity","where":"PTC 9, as quoted in glossaries"},
  "carvill-data-handbook": {"id":"carvill-data-handbook","by":"J. Carvill","title":"Mechanical Engineer's Data Handbook","where":"3.11.3 Roots blower, p. 125"},
  "naca-schey-wilson": {"id":"naca-schey-wilson","by":"O. W. Schey, E. E. Wilson","title":"An Investigation of the Use of Discharge Valves and an Intake Control for Improving the Performance of N.A.C.A. Roots Type Supercharger","where":"NACA Technical Report 303"},
  "onkar-singh": {"id":"onkar-singh","by":"Onkar Singh","title":"Applied Thermodynamics"},
  "somasundaram": {"id":"somasundaram","by":"S. L. Somasundaram","title":"Thermal Engineering"},
  "aero-engine-memo-1938": {"id":"aero-engine-memo-1938","by":"Inspection department of an aero-engine maker","title":"Internal memorandum on two-stage Roots blowers, 5 October 1938","year":1938,"where":"experimental archive, box 140, folder 1, scan 0230"},
  "rajput": {"id":"rajput","by":"R. K. Rajput","title":"A Textbook of Internal Combustion Engines"},
  "mathur-sharma": {"id":"mathur-sharma","by":"M. L. Mathur, R. P. Sharma","title":"Internal Combustion Engine"},
  "gupta": {"id":"gupta","by":"H. N. Gupta","title":"Fundamentals of Internal Combustion Engines"},
  "nag-power-plant": {"id":"nag-power-plant","by":"P. K. Nag","title":"Power Plant Engineering"},
  "ramalingam": {"id":"ramalingam","by":"K. K. Ramalingam","title":"Thermal Engineering"},
  "supercharged-diesel-problem": {"id":"supercharged-diesel-problem","by":"Unnamed thermal engineering textbook","title":"Solved problem on a supercharged diesel engine, with Fig. 11.18","where":"https://student.infinitycodestudio.com/?p=2375"},
  "incropera-heat-transfer": {"id":"incropera-heat-transfer","by":"F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine","title":"Fundamentals of Heat and Mass Transfer, 6th edition","where":"Wiley"},
  "kreith-manglik-bohn-7": {"id":"kreith-manglik-bohn-7","by":"F. Kreith, R. M. Manglik, M. S. Bohn","title":"Principles of Heat Transfer, 7th edition"},
  "epa-trends-2009": {"id":"epa-trends-2009","by":"US Environmental Protection Agency","title":"Light-Duty Automotive Technology, Carbon Dioxide Emissions, and Fuel Economy Trends: 1975 Through 2009, Appendix A","year":2009,"where":"EPA420-R-09-014"},
  "heywood-fundamentals": {"id":"heywood-fundamentals","by":"J. B. Heywood","title":"Internal Combustion Engine Fundamentals","year":1988,"where":"McGraw-Hill"},
  "kays-london-1984": {"id":"kays-london-1984","by":"W. M. Kays, A. L. London","title":"Compact Heat Exchangers, 3rd edition","year":1984,"where":"McGraw-Hill"},
  "icao-doc-7488": {"id":"icao-doc-7488","by":"International Civil Aviation Organization","title":"Manual of the ICAO Standard Atmosphere","where":"Doc 7488"},
  "sae-j1148": {"id":"sae-j1148","by":"SAE International","title":"Engine charge air cooler nomenclature","where":"SAE J1148 (cancelled, now in SAE J1726)"},
  "brown-compressors": {"id":"brown-compressors","by":"R. N. Brown","title":"Compressors: Selection and Sizing","where":"chapter 4, straight-lobe sizing"},
  "en-590": {"id":"en-590","by":"European Committee for Standardization","title":"Automotive fuels, diesel: density limits of EN 590","where":"EN 590"},
  "desnz-conversion-factors": {"id":"desnz-conversion-factors","by":"UK Department for Energy Security and Net Zero","title":"Greenhouse gas reporting: conversion factors (mineral diesel)"},
  "afdc-fuel-properties": {"id":"afdc-fuel-properties","by":"US Department of Energy, Alternative Fuels Data Center","title":"Properties of Fuels","where":"https://afdc.energy.gov/fuels/properties_notes"},
  "sae-350111-1935": {"id":"sae-350111-1935","by":"Engineers of the NACA Langley laboratory","title":"SAE Paper 350111 on displacer-piston combustion chambers","year":1935,"where":"SAE Paper 350111"},
  "moore-collins-1934": {"id":"moore-collins-1934","by":"Moore, Collins","title":"NACA Technical Note on a prechamber compression-ignition engine, December 1934","year":1934,"where":"digital.library.unt.edu, metadc54209"},
  "jcgm-100-2008": {"id":"jcgm-100-2008","by":"Joint Committee for Guides in Metrology","title":"Evaluation of measurement data: Guide to the expression of uncertainty in measurement","year":2008,"where":"JCGM 100:2008"},
  "jcgm-101-2008": {"id":"jcgm-101-2008","by":"Joint Committee for Guides in Metrology","title":"Supplement 1 to the Guide to the expression of uncertainty in measurement: propagation of distributions using a Monte Carlo method","year":2008,"where":"JCGM 101:2008"},
  "cantera-3-2-0": {"id":"cantera-3-2-0","by":"D. G. Goodwin and the Cantera developers","title":"Cantera, version 3.2.0, with gri30.yaml","where":"https://cantera.org"},
  "cengel-boles-thermodynamics": {"id":"cengel-boles-thermodynamics","by":"Y. A. Cengel, M. A. Boles","title":"Thermodynamics: An Engineering Approach","where":"McGraw-Hill"},
  "cfr-40-1065-656": {"id":"cfr-40-1065-656","by":"US Environmental Protection Agency","title":"Engine-testing procedures: calculation of fuel properties","year":2024,"where":"40 CFR 1065.656 (89 FR 29810, 22 April 2024)"},
  "naca-roots-ware-1926": {"id":"naca-roots-ware-1926","by":"M. Ware","title":"Description and laboratory tests of a Roots type aircraft engine supercharger","year":1926,"where":"NACA Technical Report 230"},
  "afdc-biodiesel": {"id":"afdc-biodiesel","by":"US Department of Energy, Alternative Fuels Data Center","title":"Biodiesel Fuel Basics","where":"https://afdc.energy.gov/fuels/biodiesel-basics"},
  "api-mpms-11-1": {"id":"api-mpms-11-1","by":"American Petroleum Institute and ASTM International","title":"Petroleum measurement tables, generalized products (Table 54B)","where":"API MPMS chapter 11.1, ASTM D1250"},
  "api-gravity": {"id":"api-gravity","by":"American Petroleum Institute","title":"Definition of API gravity: 141.5 over the specific gravity 60/60 °F, less 131.5","where":"also 40 CFR 92.113, test fuel type 2-D: API 32 to 37"},
  "astm-d4868": {"id":"astm-d4868","by":"ASTM International","title":"Estimation of Net and Gross Heat of Combustion of Burner and Diesel Fuels","where":"ASTM D4868, after NBS Miscellaneous Publication 97"},
  "epa-co2-factors": {"id":"epa-co2-factors","by":"US Environmental Protection Agency","title":"Greenhouse gas equivalencies: 10 180 g of carbon dioxide per US gallon of diesel","year":2023,"where":"EPA-420-F-23-014"},
  "eia-co2-factors": {"id":"eia-co2-factors","by":"US Energy Information Administration","title":"Frequently asked questions: carbon dioxide from burning fuels","where":"eia.gov, FAQ 307; also energy.gov, fact of the week 576"},
  "asabe-d497": {"id":"asabe-d497","by":"American Society of Agricultural and Biological Engineers","title":"Agricultural machinery management data: diesel fuel consumption","where":"ASABE D497.7, after R. Grisso, M. Kocher, D. Vaughan, Applied Engineering in Agriculture 20(5), 553-561 (2004)"},
  "naca-262": {"id":"naca-262","by":"National Advisory Committee for Aeronautics","title":"Friction of aviation engines","where":"NACA Technical Report 262"},
  "rayner-joel": {"id":"rayner-joel","by":"Rayner Joel","title":"Basic Engineering Thermodynamics"},
  "kates-diesel": {"id":"kates-diesel","by":"E. J. Kates","title":"Diesel and High Compression Gas Engines, Fundamentals"},
  "marine-engineering-text": {"id":"marine-engineering-text","by":"Authors of an open textbook of marine engineering","title":"Introduction to marine engineering, chapter on diesel power"},
  "cfr-40-1065-655": {"id":"cfr-40-1065-655","by":"US Environmental Protection Agency","title":"Engine-testing procedures: chemical balances, default fuel composition","where":"40 CFR 1065.655(e)"},
  "combustion-laboratory-data": {"id":"combustion-laboratory-data","by":"Authors of a student repository","title":"Exhaust gas analysis of a single-cylinder diesel, 104 by 85 mm, 1500 rpm"},
  "holman-heat-transfer-10": {"id":"holman-heat-transfer-10","by":"J. P. Holman","title":"Heat Transfer, 10th edition","year":2009,"where":"McGraw-Hill"},
  "cengel-heat-mass-transfer": {"id":"cengel-heat-mass-transfer","by":"Y. A. Cengel","title":"Heat and Mass Transfer: A Practical Approach","where":"McGraw-Hill"},
  "som-heat-transfer": {"id":"som-heat-transfer","by":"S. K. Som","title":"Introduction to Heat Transfer"},
  "ht-1-0-7": {"id":"ht-1-0-7","by":"Caleb Bell and contributors","title":"ht, version 1.0.7","where":"https://github.com/CalebBell/ht"},
  "ees-heat-transfer-library": {"id":"ees-heat-transfer-library","by":"F-Chart Software","title":"Engineering Equation Solver, heat transfer library: heat exchangers","where":"https://fchartsoftware.com/ees/heat_transfer_library/heat_exchangers/"},
  "shah-sekulic-2003": {"id":"shah-sekulic-2003","by":"R. K. Shah, D. P. Sekulic","title":"Fundamentals of Heat Exchanger Design","year":2003,"where":"Wiley, Table 3.4"},
  "modelica-standard-library": {"id":"modelica-standard-library","by":"Modelica Association and contributors","title":"Modelica Standard Library, Modelica.Fluid.Dissipation, nominal pressure-loss laws","where":"https://github.com/modelica/ModelicaStandardLibrary"},
  "hucho-aerodynamics": {"id":"hucho-aerodynamics","by":"W.-H. Hucho (ed.)","title":"Aerodynamics of Road Vehicles"},
} as const satisfies Readonly<Record<string, Citation>>;

/** Id of a source in references/sources.yaml. */
export type SourceId = keyof typeof citations;
