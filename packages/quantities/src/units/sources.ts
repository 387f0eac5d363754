/** The SI Brochure: coherent units, prefixes, and units accepted with them. */
export const siBrochure = "SI Brochure, 9th edition";
/** Exact relations and conventional values; where the print is rounded, its footnotes and definitions give the exact value. */
export const sp811 = "NIST Special Publication 811 (2008), appendix B";
/** Definitions of United States customary measures. */
export const handbook44 = "NIST Handbook 44, appendix C";
/** The Unified Code for Units of Measure. */
export const ucumTables = "UCUM 2.2";
/** Products and quotients of units that are defined elsewhere. */
export const derived = "derived from its parts, which NIST Special Publication 811 (2008) defines";
