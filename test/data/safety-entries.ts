// The classifications written down a second time: which entry of the list a substance of the bench is found in, and every
// statement of it, the EUH codes last. A row that is deleted, shortened or shifted in the tables differs from its line here.
// The lines were printed from our own tables and then read through, from memory of Annex VI, Table 3: they hold the tables against a
// slip of the hand later on, not against a fault that was in them that day. Those of sheets have no number.

/** Material ("HNO3 @ 80" is of 80 %), all its statements, index number, the form that the entry is about, and what it is classified as. */
export type SafetyEntry = readonly [material: string, codes: string, index?: string, form?: string, as?: string];

// biome-ignore format: a table, several entries a line
export const LISTED: readonly SafetyEntry[] = [
  ["HCl", "H314 H335", "017-002-01-X", "solution"], ["H2SO4", "H314", "016-020-00-8"], ["HNO3", "H272 H314 H331 EUH071", "007-030-00-3", "up to 70 %"], ["HNO3 @ 80", "H272 H314 H330 EUH071", "007-004-00-1", "more than 70 %"],
  ["H3PO4", "H314", "015-011-00-6"], ["CH3COOH", "H226 H314", "607-002-00-6"], ["H2C2O4·2H2O", "H302 H312 H318", "607-006-00-8", "", "H2C2O4"], ["SbCl3", "H314 H411", "051-001-00-8"],
  ["SbCl5", "H314 H411", "051-002-00-3"], ["SbF3", "H301 H311 H331 H411", "051-004-00-4"], ["Sb2O3", "H351", "051-005-00-X"], ["HBr", "H314 H335", "035-002-01-8"], ["HI", "H314", "053-002-01-6"],
  ["CS(NH2)2", "H302 H351 H361d H411", "612-082-00-0"], ["C6H12N4", "H228 H317", "612-101-00-2"], ["P4O10", "H314", "015-010-00-0"], ["P2O5", "H314", "015-010-00-0"],
  ["C6H5OH", "H301 H311 H314 H331 H341 H373", "604-001-00-2"], ["C6H5CH3", "H225 H304 H315 H336 H361d H373", "601-021-00-3"], ["CH2Cl2", "H351", "602-004-00-3"], ["TiCl4", "H314 EUH014", "022-001-00-5"],
  ["K2S", "H314 H400 EUH031", "016-006-00-1"], ["C6H8O7", "H319 H335", "607-750-00-3"], ["H3NSO3", "H315 H319 H412", "016-026-00-0"], ["NaHSO4", "H318", "016-046-00-X"], ["KHSO4", "H314 H335", "016-056-00-4"],
  ["NaOH", "H314", "011-002-00-6"], ["KOH", "H302 H314", "019-002-00-8"], ["NH3", "H314 H400", "007-001-01-2", "solution, 25 %"], ["NH3", "H221 H314 H331 H400", "007-001-00-5", "gas"], ["Na2CO3", "H319", "011-005-00-2"],
  ["Na2SiO3", "H314 H335", "014-010-00-8"], ["H2O2", "H271 H302 H314 H332", "008-003-00-9"], ["NaBO3·4H2O", "H318 H335 H360Df", "005-018-00-2"], ["NaClO", "H314 H410 EUH031", "017-011-00-1", "solution"],
  ["Ca(ClO)2", "H272 H302 H314 H400 EUH031", "017-012-00-7"], ["C3N3O3Cl3", "H272 H302 H319 H335 H410 EUH031", "613-031-00-5"], ["C3N3O3Cl2Na·2H2O", "H302 H319 H335 H410 EUH031", "613-030-01-7"],
  ["KMnO4", "H272 H302 H361d H410", "025-002-00-9"], ["NaNO2", "H272 H301 H400", "007-010-00-4"], ["KNO2", "H272 H301 H400", "007-011-00-X"], ["KClO4", "H271 H302", "017-008-00-5"], ["HClO4", "H271 H314", "017-006-00-4"],
  ["NH4ClO4", "H201 H271", "017-009-00-0"], ["K2S2O8", "H272 H302 H315 H317 H319 H334 H335", "016-061-00-1"], ["(NH4)2S2O8", "H272 H302 H315 H317 H319 H334 H335", "016-060-00-6"], ["KBrO3", "H271 H301 H350", "035-003-00-6"],
  ["Na2O2", "H271 H314", "011-003-00-1"], ["BaO2", "H272 H302 H332", "056-001-00-1"], ["MnO2", "H302 H332", "025-001-00-3"], ["CrO3", "H271 H301 H311 H314 H317 H330 H334 H340 H350 H361f H372 H410", "024-001-00-0"],
  ["K2Cr2O7", "H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410", "024-002-00-6"], ["K2CrO4", "H315 H317 H319 H335 H340 H350i H410", "024-006-00-8"],
  ["Na2CrO4", "H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410", "024-018-00-3"], ["(NH4)2Cr2O7", "H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410", "024-003-00-1"],
  ["PbCrO4", "H350 H360Df H373 H410", "082-004-00-2"], ["SrCrO4", "H302 H350 H410", "024-009-00-4"], ["CaCrO4", "H302 H350 H410", "024-008-00-9"], ["CuSO4·5H2O", "H302 H318 H410", "029-023-00-4"],
  ["CuSO4", "H302 H315 H319 H410", "029-004-00-0"], ["CuCl", "H302 H410", "029-001-00-4"], ["CuO", "H410", "029-016-00-6"], ["Cu2O", "H302 H318 H332 H410", "029-002-00-X"], ["Cu(OH)2", "H302 H318 H330 H410", "029-021-00-3"],
  ["Cu2(OH)2CO3", "H302 H319 H332 H410", "029-020-00-8"], ["Cu2(OH)3Cl", "H301 H332 H410", "029-017-00-1"], ["Cu4(OH)6SO4", "H302 H410", "029-018-00-7"], ["CuSCN", "H410 EUH032", "029-015-00-0"],
  ["Cu", "H411", "029-024-00-X", "powder"], ["ZnSO4·H2O", "H302 H318 H410", "030-006-00-9"], ["ZnCl2", "H302 H314 H410", "030-003-00-2"], ["ZnO", "H410", "030-013-00-7"], ["Zn", "H410", "030-001-01-9", "dust, stabilised"],
  ["Zn3(PO4)2", "H410", "030-011-00-6"], ["FeSO4·7H2O", "H302 H315 H319", "026-003-01-4"], ["FeSO4", "H302 H315 H319", "026-003-00-7"], ["MnSO4·H2O", "H373 H411", "025-003-00-4", "", "MnSO4"],
  ["CoSO4·7H2O", "H302 H317 H334 H341 H350i H360F H410", "027-005-00-0", "", "CoSO4"], ["CoCl2·6H2O", "H302 H317 H334 H341 H350i H360F H410", "027-004-00-5", "", "CoCl2"],
  ["Co(NO3)2·6H2O", "H317 H334 H341 H350i H360F H410", "027-009-00-2", "", "Co(NO3)2"], ["CoCO3", "H317 H334 H341 H350i H360F H410", "027-010-00-8"],
  ["Co(CH3COO)2·4H2O", "H317 H334 H341 H350i H360F H410", "027-006-00-6", "", "Co(CH3COO)2"], ["CoO", "H302 H317 H410", "027-002-00-4"], ["Co", "H317 H334 H341 H350 H360F H413", "027-001-00-9", "powder"],
  ["NiSO4·6H2O", "H302 H315 H317 H332 H334 H341 H350i H360D H372 H410", "028-009-00-5", "", "NiSO4"], ["NiCl2·6H2O", "H301 H315 H317 H331 H334 H341 H350i H360D H372 H410", "028-011-00-6", "", "NiCl2"],
  ["Ni(NO3)2·6H2O", "H272 H302 H315 H317 H318 H332 H334 H341 H350i H360D H372 H410", "028-012-00-1", "", "Ni(NO3)2"], ["NiCO3", "H302 H315 H317 H332 H334 H341 H350i H360D H372 H410", "028-010-00-0"],
  ["Ni3(OH)4CO3·4H2O", "H302 H315 H317 H332 H334 H341 H350i H360D H372 H410", "028-010-00-0", "", "Ni3(OH)4CO3"], ["NiO", "H317 H350i H372 H413", "028-003-00-2"],
  ["Ni(OH)2", "H302 H315 H317 H332 H334 H341 H350i H360D H372 H410", "028-008-00-X"], ["Ni", "H317 H351 H372", "028-002-00-7", "metal"],
  ["[Ni(NH3)6]Cl2", "H301 H315 H317 H331 H334 H341 H350i H360D H372 H410", "028-011-00-6", "", "NiCl2"], ["(NH4)2Ni(SO4)2·6H2O", "H302 H317 H332 H334 H341 H350i H360D H372 H410", "028-017-00-9", "", "(NH4)2Ni(SO4)2"],
  ["AgNO3", "H272 H314 H410", "047-001-00-2"], ["BaCl2·2H2O", "H301 H332", "056-004-00-8", "", "BaCl2"], ["BaCO3", "H302", "056-003-00-2"], ["Ba(OH)2·8H2O", "H302 H314 H332", "056-002-00-7", "", "barium salts"],
  ["BaS", "H302 H332 H400 EUH031", "016-002-00-X"], ["Al", "H228 H261", "013-002-00-1", "powder, stabilised"], ["AlCl3", "H314", "013-003-00-7"], ["Mg", "H228 H252 H261", "012-002-00-9", "turnings or powder"],
  ["CaCl2", "H319", "017-013-00-2"], ["CaC2", "H260", "006-004-00-9"], ["Na2S2O5", "H302 H318 EUH031", "016-063-00-2"], ["Na2S2O4", "H251 H302 EUH031", "016-028-00-1"], ["Na2S", "H302 H311 H314 H400 EUH031", "016-009-00-8"],
  ["H2S", "H220 H330 H400", "016-001-00-4"], ["Cl2", "H270 H315 H319 H331 H335 H400", "017-001-00-7"], ["NO2", "H270 H314 H330", "007-002-00-0"], ["CO", "H220 H331 H360D H372", "006-001-00-2"],
  ["H2", "H220", "001-001-00-9"], ["O2", "H270", "008-001-00-8"], ["C2H2", "H220", "601-015-00-0"], ["ClO2", "H270 H314 H330 H400", "017-026-00-3"], ["Br2", "H314 H330 H400", "035-001-00-5"],
  ["I2", "H312 H332 H400", "053-001-00-3"], ["HF", "H300 H310 H314 H330", "009-002-00-6", "and acid fluorides"], ["NaF", "H301 H315 H319 EUH032", "009-004-00-7"], ["KF", "H301 H311 H331", "009-005-00-2"],
  ["NH4HF2", "H301 H314", "009-009-00-4", "glass etch, rust remover"], ["H2SiF6", "H314", "009-011-00-5", "masonry sealer, also MgSiF6"], ["Na2SiF6", "H301 H311 H331", "009-012-00-0"], ["K2SiF6", "H301 H311 H331", "009-012-00-0"],
  ["(NH4)2SiF6", "H301 H311 H331", "009-012-00-0"], ["Na3AlF6", "H332 H372 H411", "009-016-00-2"], ["H3BO3", "H360FD", "005-007-00-2"], ["Na2B4O7·10H2O", "H360FD", "005-011-00-4"], ["Na2B4O7·5H2O", "H360FD", "005-011-00-4"],
  ["B2O3", "H360FD", "005-008-00-8"], ["NH4Cl", "H302 H319", "017-014-00-8"], ["NH4SCN", "H302 H312 H319 H332 H412 EUH032", "615-004-00-3", "", "thiocyanates"],
  ["KSCN", "H302 H312 H319 H332 H412 EUH032", "615-004-00-3", "", "thiocyanates"], ["SnCl4", "H314 H412", "050-001-00-5"], ["Pb", "H360FD H362 H410", "082-013-00-1", "powder"],
  ["Pb(CH3COO)2·3H2O", "H360Df H373 H410", "082-005-00-8", "", "Pb(CH3COO)2"], ["CdS", "H302 H341 H350 H361fd H372 H413", "048-010-00-4"], ["CdSO4", "H301 H330 H340 H350 H360FD H372 H410", "048-009-00-9"],
  ["Cd", "H330 H341 H350 H361fd H372 H410", "048-002-00-0", "metal"], ["Hg", "H330 H360D H372 H410", "080-001-00-0"], ["HgCl2", "H300 H314 H341 H361f H372 H410", "080-010-00-X"], ["As2O3", "H300 H314 H350 H410", "033-003-00-0"],
  ["HCN", "H224 H330 H410", "006-006-00-X"], ["NaN3", "H300 H410 EUH032", "011-004-00-7"], ["P", "H228 H412", "015-002-00-7", "red"], ["PH3", "H220 H314 H330 H400", "015-181-00-1"], ["AsH3", "H220 H330 H373 H410", "033-006-00-7"],
  ["S", "H315", "016-094-00-1"], ["Na", "H260 H314 EUH014", "011-001-00-0", "metal"], ["K", "H260 H314 EUH014", "019-001-00-2", "metal"], ["MoO3", "H319 H335 H351", "042-001-00-9"],
  ["CH3COCH3", "H225 H319 H336 EUH066", "606-001-00-8", "acetone"], ["C2H5OH", "H225", "603-002-00-5"], ["C3H8O", "H225 H319 H336", "603-117-00-0", "propan-2-ol"],
  ["CH3OH", "H225 H301 H311 H331 H370", "603-001-00-X", "the methanol in methylated spirit"], ["CuHAsO3", "H301 H331 H410", "033-002-00-5", "copper arsenite pigments"], ["NaHSO3", "H302 EUH031", "016-064-00-8", "solution"],
  ["Ca", "H261", "020-001-00-X", "metal"], ["H3PO3", "H302 H314", "015-157-00-0"], ["CaCN2", "H302 H318 H335", "615-017-00-4"], ["C10H8", "H302 H351 H410", "601-052-00-2"],
  ["C6H6O2", "H302 H317 H318 H341 H351 H400", "604-005-00-4", "hydroquinone (benzene-1,4-diol)"], ["C6H6O2", "H301 H311 H315 H319 H341 H350", "604-016-00-4", "catechol (benzene-1,2-diol)"],
  ["C6H6O3", "H302 H312 H332 H341 H412", "604-009-00-6", "pyrogallol (benzene-1,2,3-triol)"], ["(C7H10NO)2SO4", "H302 H317 H373 H410", "650-031-00-4", "metol"],
  ["NH3OHCl", "H290 H302 H312 H315 H317 H319 H351 H373 H400", "612-123-00-2"],
  ["C6H5COOH", "H315 H318 H372", "607-705-00-8"], ["C7H6O3", "H302 H318 H361d", "607-732-00-5", "salicylic acid"], ["C6H7NO3S", "H315 H317 H319", "612-014-00-X", "sulfanilic acid"],
  ["C10H16", "H226 H302 H304 H312 H315 H317 H319 H332 H411", "650-002-00-6", "turpentine"],
];

// biome-ignore format: a table, several entries a line
export const LISTED_LATER: readonly SafetyEntry[] = [
  ["N2O", "H270 H336 H360 H372", "007-031-00-9"],
];

// biome-ignore format: a table, several entries a line
export const LISTED_2026: readonly SafetyEntry[] = [
  ["HCOOH", "H226 H290 H302 H314 H331", "607-001-00-0"], ["CH2O", "H302 H314 H317 H330 H341 H350", "605-001-00-5"], ["SO2", "H314 H331 H370", "016-011-00-9"], ["Pb", "H360FD H362 H410", "082-014-00-7", "massive"],
  ["C9H10N2O", "H302 H411", "606-022-00-2", "phenidone"], ["C8H16O4", "H228 H301 H361f H412", "605-005-00-7", "metaldehyde"], ["C20H14O4", "H341 H350 H361f", "604-076-00-1", "phenolphthalein"],
  ["KClO3", "H271 H301", "017-004-00-3"], ["NaClO3", "H271 H301", "017-005-00-9"], ["V2O5", "H301 H330 H335 H341 H350 H361fd H362 H372 H411", "023-001-00-8"],
  ["NH4Br", "H319 H336 H360FD H362 H372", "035-005-00-7"], ["Ag", "H361f H373", "047-004-00-9", "pieces of a millimetre or more"], ["Ag", "H361f H373 H410", "047-005-00-4", "powder"], ["Se", "H301 H331 H373 H413", "034-001-00-2"],
  ["Na2SeO3", "H300 H317 H331 H411 EUH031", "034-003-00-3"], ["CaS", "H315 H319 H335 H400 EUH031", "016-004-00-0"], ["CaS5", "H315 H319 H335 H400 EUH031", "016-005-00-6", "", "calcium polysulfides"],
  ["CaS4", "H315 H319 H335 H400 EUH031", "016-005-00-6", "", "calcium polysulfides"], ["K2PtCl4", "H301 H315 H317 H318 H334", "078-004-00-7"], ["K2PtCl6", "H301 H317 H318 H334", "078-007-00-3"],
  ["H2PtCl6", "H301 H314 H317 H334", "078-009-00-4"], ["NaClO4", "H271 H302", "017-010-00-6"], ["CdCO3", "H302 H312 H332 H340 H350 H372 H410", "048-012-00-5"], ["Cd(OH)2", "H302 H312 H332 H340 H350 H372 H410", "048-013-00-0"],
  ["Cd(NO3)2", "H302 H312 H332 H340 H350 H372 H410", "048-014-00-6"], ["CdCl2", "H301 H330 H340 H350 H360FD H372 H410", "048-008-00-3"], ["CdO", "H330 H341 H350 H361fd H372 H410", "048-002-00-0"],
  ["CdI2", "H301 H331 H351 H373 H410", "048-007-00-8"], ["KC6H7O2", "H319", "019-003-00-3"], ["N2H6SO4", "H301 H311 H317 H331 H350 H410", "007-014-00-6", "hydrazine sulfate", "hydrazine salts"],
  ["NH4F", "H301 H311 H331", "009-006-00-8"],
];

// Changed where a sheet or the inventory of notified classifications was read since and says more or else than what was recalled: silver
// carbonate and acetate, lithium fluoride, potassium peroxomonosulfate, iron(III) nitrate, aluminium sulfate.
// biome-ignore format: a table, several entries a line
export const OF_SHEETS: readonly SafetyEntry[] = [
  ["C4H6O6", "H318"], ["LiOH", "H302 H314"], ["Ca(OH)2", "H315 H318"], ["CaO", "H315 H318 H335"], ["K2CO3", "H318 H335"], ["NaHCO3", ""], ["Na3PO4", "H314"], ["2Na2CO3·3H2O2", "H272 H302 H315 H318 H335"],
  ["K2MnO4", "H272 H315 H319 H335"], ["NaNO3", "H272 H319"], ["KNO3", "H272"], ["NH4NO3", "H272 H319"], ["Ca(NO3)2·4H2O", "H272 H302 H318", "", "", "Ca(NO3)2"], ["Sr(NO3)2", "H272 H318"], ["Ba(NO3)2", "H272 H301 H319 H332"],
  ["Mg(NO3)2·6H2O", "H272 H319", "", "", "Mg(NO3)2"], ["NaClO2", "H271 H301 H310 H314 H373 H410"], ["Na2S2O8", "H272 H302 H315 H317 H319 H334 H335"], ["KIO3", "H272 H302 H371"], ["CaO2", "H272 H302 H314 H335"],
  ["PbO2", "H272 H302 H332 H341 H351 H360Df H373 H410"], ["Na2Cr2O7·2H2O", "H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410"], ["ZnCrO4", "H302 H317 H331 H350 H373 H410"], ["BaCrO4", "H302 H317 H331 H350 H373 H410"],
  ["Cr2O3", ""], ["KCr(SO4)2·12H2O", "H315 H319"], ["CrCl3·6H2O", "H317 H361 H410"], ["Cr2(SO4)3", "H317 H410"], ["CuCl2·2H2O", "H290 H301 H315 H317 H318 H361 H410", "", "", "CuCl2"],
  ["Cu(NO3)2·3H2O", "H272 H290 H302 H314 H410", "", "", "Cu(NO3)2"], ["Cu(CH3COO)2·H2O", "H302 H314 H410", "", "", "Cu(CH3COO)2"], ["CuI", "H320 H335 H410"], ["[Cu(NH3)4]SO4·H2O", "H302 H315 H319 H335 H410"],
  ["ZnSO4·7H2O", "H302 H318 H410"], ["Zn", "", "", "massive"], ["Zn(NO3)2·6H2O", "H272 H302 H318 H410", "", "", "Zn(NO3)2"], ["Zn(CH3COO)2·2H2O", "H302 H318 H411", "", "", "Zn(CH3COO)2"], ["FeCl3", "H290 H302 H314 H318"],
  ["FeCl2", "H290 H302 H318"], ["Fe2(SO4)3", "H290 H302 H315 H318"], ["Fe(NO3)3·9H2O", "H272 H315 H319 H335", "", "", "Fe(NO3)3"], ["Fe2O3", ""], ["Fe", "", "", "steel wool"], ["FeS", "H400"], ["(NH4)2Fe(SO4)2·6H2O", "H315 H319 H335"],
  ["K3[Fe(CN)6]", ""], ["K4[Fe(CN)6]·3H2O", "H412", "", "", "K4[Fe(CN)6]"], ["Fe4[Fe(CN)6]3", ""], ["MnCl2·4H2O", "H301 H318 H373 H411", "", "", "MnCl2"], ["MnCO3", ""],
  ["Mn(NO3)2·4H2O", "H272 H302 H314 H372 H412", "", "", "Mn(NO3)2"], ["Co3O4", "H317 H334 H350"], ["Co(OH)2", "H302 H317 H319 H330 H334 H360F H372 H410"], ["Ag2O", "H271 H318 H410"], ["AgCl", "H410"],
  ["Ag2CO3", "H318 H410"], ["BaSO4", ""], ["SrCO3", ""], ["SrCl2·6H2O", "H318 H341", "", "", "SrCl2"], ["Sr(OH)2·8H2O", "H314", "", "", "Sr(OH)2"], ["Al", "", "", "massive"],
  ["Al2(SO4)3·18H2O", "H290 H318", "", "", "Al2(SO4)3"], ["KAl(SO4)2·12H2O", "", "", "", "KAl(SO4)2"], ["Al(NO3)3·9H2O", "H272 H318", "", "", "Al(NO3)3"], ["MgSO4·7H2O", "", "", "", "MgSO4"], ["MgCl2·6H2O", "", "", "", "MgCl2"],
  ["MgO", ""], ["CaSO4·0.5H2O", "", "", "", "CaSO4"], ["Na2S2O3·5H2O", "", "", "", "Na2S2O3"], ["K2S2O5", "H302 H318"], ["Na2SO3", "H302 H318"], ["NO", "H270 H314 H330 H370"], ["CO2", "H336"],
  ["O3", "H270 H319 H330 H341 H361 H370 H372 H400"], ["CaF2", ""], ["(NH4)2SO4", ""], ["NH4HCO3", "H302"], ["KI", "H372"], ["LiCl", "H302 H319 H372"], ["Li2CO3", "H302 H319"], ["SnCl2·2H2O", "H302 H314 H317 H332 H335 H373 H412", "", "", "SnCl2"],
  ["SnO2", ""], ["Pb(NO3)2", "H272 H302 H318 H332 H341 H351 H360Df H373 H410"], ["PbI2", "H302 H332 H341 H351 H360Df H372 H410"], ["Pb3O4", "H272 H302 H332 H341 H351 H360Df H373 H410"],
  ["PbO", "H302 H332 H341 H351 H360Df H373 H410"], ["HgS", ""], ["NaCN", "H290 H300 H310 H315 H330 H372 H410 EUH029 EUH032"], ["KCN", "H290 H300 H310 H315 H330 H372 H410 EUH029 EUH032"], ["(NH4)6Mo7O24·4H2O", "H302"],
  ["NH4VO3", "H301 H332 H340 H361 H370 H372 H402 H412"], ["SiO2", "H350i H372", "", "fine crystalline dust"], ["TiO2", ""], ["C", "", "", "charcoal, activated carbon"], ["Na5P3O10", ""], ["Ca(HCOO)2", "H318"],
  ["Na2C10H14N2O8·2H2O", "H332 H373"], ["CO(NH2)2", ""], ["LiF", "H301 H315 H319 H335 EUH032"], ["LiBr", "H302 H315 H317 H319"], ["LiNO3", "H272 H302 H319"], ["Li2SO4·H2O", "H302", "", "", "Li2SO4"], ["Li2O", "H314"],
  ["Na2O", "H314 EUH014"], ["SrO", "H314"], ["NaAlO2", "H290 H314"], ["K3PO4", "H318 H335"], ["Na4P2O7", "H302 H318"], ["Na2H2P2O7", "H319"], ["Ca(H2PO4)2·H2O", "H318", "", "", "Ca(H2PO4)2"], ["NH4HSO4", "H314"],
  ["Na2S2O7", "H314 H335"], ["K2S2O7", "H314 H335"], ["2KHSO5·KHSO4·K2SO4", "H272 H302 H314 H332 H335 H412"], ["KHSO5", "H272 H302 H314 H332 H335 H412"], ["SO3", "H314 H335 EUH014"], ["NH2COONH4", "H302 H318"], ["(NH4)2CO3", "H302 H319"],
  ["Na2[Fe(CN)5NO]·2H2O", "H301"], ["Cr(NO3)3·9H2O", "H272 H315 H317 H319", "", "", "Cr(NO3)3"], ["(NH4)2Ce(NO3)6", "H272 H302 H314 H317 H410"], ["Ce(SO4)2", "H315 H319 H335"],
  ["Bi(NO3)3·5H2O", "H272 H315 H319 H335", "", "", "Bi(NO3)3"], ["5Ca(NO3)2·NH4NO3·10H2O", "H302 H318"], ["TiCl3", "H250 H314"], ["ZnBr2", "H302 H314 H317 H411"], ["ZnI2", "H315 H319 H335 H410"], ["CuBr2", "H302 H314 H410"],
  ["CuBr", "H302 H315 H319 H410"], ["SnI4", "H302 H314 H317"], ["SnSO4", "H302 H315 H317 H318 H373"], ["Mn(CH3COO)2·4H2O", "H373 H412", "", "", "Mn(CH3COO)2"], ["Ag2SO4", "H318 H410"], ["AgCH3COO", "H315 H318 H335 H410"],
  ["Ag3PO4", "H314 H410"], ["C16H18ClN3S", "H302", "", "methylene blue"], ["C14H14N3NaO3S", "H301", "", "methyl orange powder"], ["C12H8N2", "H301 H410", "", "1,10-phenanthroline"], ["C4H8N2O2", "H228 H301", "", "dimethylglyoxime"],
  ["C6H5N3", "H302 H319 H411", "", "benzotriazole"], ["HAuCl4·3H2O", "H290 H302 H314 H317", "", "", "HAuCl4"], ["PdCl2", "H290 H302 H317 H318 H410"], ["CaCl2O", "H272 H302 H314 H400 EUH031", "", "bleaching powder"],
  ["K2O", "H314 EUH014"], ["HIO3", "H272 H314"],
];

/** Salts that no row of their own names: the group they are classified as. */
// biome-ignore format: a table, several entries a line
export const BY_GROUP: readonly (readonly [salt: string, group: string, codes: string])[] = [
  ["K2C2O4", "salts of oxalic acid", "H302 H312"], ["Ba(CH3COO)2", "barium salts", "H302 H332"], ["PbCl2", "lead compounds", "H302 H332 H360Df H373 H410"], ["CdBr2", "cadmium compounds", "H302 H312 H332 H410"],
  ["HgO", "mercury compounds", "H300 H310 H330 H373 H410"], ["Na2HAsO4", "arsenic compounds", "H301 H331 H410"], ["Li2CrO4", "chromium(VI) compounds", "H317 H350i H410"], ["N2H5Cl", "hydrazine salts", "H301 H311 H317 H331 H350 H410"],
  ["Na2PtCl6", "tetrachloridoplatinates and hexachloridoplatinates", "H301 H317 H318 H334"], ["NiBr2", "nickel compounds", "H317 H334 H341 H350i H360D H372 H410"], ["CoBr2", "cobalt compounds", "H317 H334 H341 H350i H360F H410"],
  ["SbI3", "antimony compounds", "H302 H332 H411"], ["SeO2", "selenium compounds", "H301 H331 H373 H410"], ["Tl2SO4", "thallium compounds", "H300 H330 H373 H411"], ["UO2(NO3)2", "uranium compounds and salts of acids that feed a fire", "H272 H300 H330 H373 H411"],
  ["BeSO4", "beryllium compounds", "H301 H315 H317 H319 H330 H335 H350i H372 H411"], ["ZnSiF6", "fluorosilicates", "H302"], ["NaSCN", "thiocyanates", "H302 H312 H332 H412 EUH032"], ["Zn(CN)2", "salts of hydrogen cyanide", "H300 H310 H330 H410 EUH032"],
  ["CsF", "soluble fluorides", "H301 H315 H319 EUH032"], ["Ca(NO2)2", "nitrites", "H272 H301 H400"], ["RbNO3", "salts of acids that feed a fire", "H272"],
];
