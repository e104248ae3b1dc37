// Names that stand on the shelves of a home, a school, a pottery, a garden shed, an aquarium, a darkroom and in old books: our own
// list, written down from common knowledge of what is sold and read.
const words = (text: string): readonly string[] => text.split(",").map((one) => one.trim());

export const SHELF_NAMES: Readonly<Record<string, readonly string[]>> = {
  home: words(`table salt, baking soda, washing soda, vinegar, bleach, household ammonia, hydrogen peroxide, borax, lye, citric acid, cream of tartar, sugar,
    starch, lactose, fructose, gelatin, dextrose, glycerine, naphthalene, turpentine, paraffin, acetone, methylated spirit, rubbing alcohol, glucono-lactone, potassium sorbate,
    monosodium glutamate, curing salt, pink salt, Epsom salt, alum, limewater, magnesium chloride flakes, nigari, baking powder, drain opener, vinegar essence, oxalic acid,
    percarbonate, chalk, plaster of Paris, water glass, activated carbon, iodine, salt substitute, lemon juice, tartaric acid, vitamin C, urea, silica gel`),
  school:
    words(`copper sulfate, iron sulfate, silver nitrate, potassium permanganate, potassium dichromate, sodium thiosulfate, barium chloride, lead nitrate, ammonium chloride,
    calcium carbonate, magnesium ribbon, zinc, iron filings, aluminium foil, sodium, potassium, calcium, sulfur, red phosphorus, hydrochloric acid, sulfuric acid, nitric acid,
    phosphoric acid, acetic acid, sodium hydroxide, potassium hydroxide, calcium hydroxide, ammonia, phenolphthalein, methyl orange, bromothymol blue, universal indicator,
    litmus, hydroxylamine hydrochloride, hydrazine sulfate, dimethylglyoxime, phenanthroline, murexide, sulfanilic acid, thiourea, potassium iodide, potassium bromide,
    sodium nitrite, ammonium cerium(IV) nitrate, cerium(IV) sulfate, titanium(III) chloride, bismuth nitrate, chromium(III) nitrate, phosphorus pentoxide, hydrobromic acid,
    hydroiodic acid, potassium hydrogenphthalate, salicylic acid, benzoic acid, potassium thiocyanate, ammonium molybdate, EDTA, manganese dioxide, cobalt chloride, nickel sulfate,
    ammonium iron(II) sulfate, ammonium iron(III) sulfate, potassium ferricyanide, potassium ferrocyanide, sodium sulfite, sodium acetate, lead acetate, mercury, bromine, tin(II) chloride`),
  pottery:
    words(`potash feldspar, soda feldspar, nepheline syenite, spodumene, petalite, lepidolite, ulexite, Gerstley borate, colemanite, ilmenite, bentonite, frit, kaolin, china clay,
    ball clay, talc, whiting, dolomite, quartz, flint, wollastonite, zinc oxide, tin oxide, titanium dioxide, zircon, rutile, red iron oxide, black iron oxide, manganese dioxide,
    copper carbonate, copper oxide, cobalt carbonate, cobalt oxide, nickel oxide, chromium oxide, vanadium pentoxide, antimony trioxide, selenium, cadmium sulfide, uranium oxide,
    praseodymium oxide, neodymium oxide, erbium oxide, ceria, silicon carbide, bone ash, barium carbonate, strontium carbonate, lithium carbonate, magnesium carbonate, alumina, borax,
    boric acid, soda ash, pearl ash, barium sulfate, red lead, white lead, litharge, basic zinc carbonate`),
  garden:
    words(`ammonium nitrate, ammonium sulfate, calcium nitrate, potassium nitrate, potassium sulfate, potash, superphosphate, rock phosphate, MAP, DAP, urea, Epsom salt, gypsum,
    garden lime, quicklime, slaked lime, iron sulfate, moss killer, Fe-EDTA, copper sulfate, Bordeaux mixture, sulfur, lime sulfur, metaldehyde, phosphite, potassium phosphite,
    ferrous gluconate, calcium cyanamide, borax, sodium molybdate, zinc sulfate, manganese sulfate, kainite, bone meal, potassium carbonate, sodium chlorate`),
  aquarium:
    words(`kalkwasser, calcium chloride, magnesium chloride, magnesium sulfate, sodium bicarbonate, potassium bicarbonate, malachite green, methylene blue, formalin, Nessler's reagent,
    sodium thiosulfate, potassium permanganate, potassium nitrate, potassium phosphate, ferrous gluconate, strontium chloride, potassium iodide, copper sulfate, hydrogen peroxide, citric acid`),
  darkroom:
    words(`hydroquinone, metol, phenidone, pyrogallol, catechol, benzotriazole, sodium sulfite, sodium carbonate, borax, potassium bromide, hypo, ammonium thiosulfate,
    potassium metabisulfite, acetic acid, potassium alum, chrome alum, potassium ferricyanide, ferric ammonium citrate, ferric ammonium oxalate, ferric oxalate, potassium chloroplatinite,
    palladium chloride, gold chloride, silver nitrate, liver of sulfur, sodium selenite, uranyl nitrate, potassium dichromate, ammonium dichromate, thiourea, glycine,
    potassium oxalate, EDTA, ascorbic acid, sodium metaborate, sodium hydroxide`),
  old: words(`blue vitriol, green vitriol, white vitriol, oil of vitriol, muriatic acid, aqua fortis, aqua regia, aqua ammonia, spirits of hartshorn, sal ammoniac, sal volatile, saltpetre,
    Chile saltpetre, Norwegian saltpetre, sal prunella, sal polychrest, Glauber's salt, Rochelle salt, tartar emetic, salts of lemon, salts of sorrel, sugar of lead, white lead, flake white,
    red lead, litharge, minium, lithopone, ultramarine, cerulean, cerulean blue, viridian, Naples yellow, Paris green, Scheele's green, Prussian blue, chrome yellow, vermilion, cinnabar,
    orpiment, realgar, colcothar, caput mortuum, Venetian red, crocus martis, ochre, sienna, verdigris, patina, malachite, azurite, butter of zinc, butter of antimony, calomel,
    corrosive sublimate, lunar caustic, muriate of lime, muriate of ammonia, muriate of soda, bichloride of mercury, perchloride of iron, protochloride of tin, sulphocyanide of potassium,
    sulphuret of iron, bauxite, apatite, polyhalite, cryolite, fluorspar, blue copperas, black lead, sedative salt, sugar of milk, soda lime, milk of lime, potassa, pearl ash, quicklime,
    bleaching powder, prussiate of potash, microcosmic salt, fuming acid, pink salt, black powder, brimstone, galena, haematite, pyrolusite`),
};
