package metal

// Source says where a row of the catalogue was read and how sure that is.
type Source struct {
	Text       string
	Confidence string // field by field: "seen", "derived" or "calculated" from what was seen, "memory"
	Notes      string // on what the sources disagree about, "" for none
}

// SourceOf is the source of the catalogue's metal of that id.
func SourceOf(id string) (Source, bool) {
	for _, row := range sources {
		if row.id == id {
			return row.Source, true
		}
	}
	return Source{}, false
}

// sources are in the order of the catalogue, and apart from it because the
// program that answers has no use for them: they would be 7 kB of it, which
// the linker leaves out when nothing calls for them.
var sources = [len(catalogue)]struct {
	id string
	Source
}{
	{"cu-etp", Source{
		Text:       "CDA Standard Designation for Wrought Copper Alloys (public copies of the 2010/2014/2015 lists); French decree on metals in contact with water (JORFARTI000042045695); knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); copper.org fact sheet, physical properties of copper",
		Confidence: "seen: codes, ranges, density; derived: comp",
		Notes:      "Default for plain copper sheet. Contains cuprous oxide inclusions: embrittles if annealed in hydrogen. IEC 1913 standard value is 8.89, handbook value 8.96. Code clash: BS C101 is this metal but American C101 is C10100.",
	}},
	{"cu-of", Source{
		Text:       "CDA Standard Designation for Wrought Copper Alloys (public copies of the 2010/2014/2015 lists); knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: codes, ranges, density(dataset); derived: comp",
		Notes:      "UNS/EN pairing differs between sources (one table pairs CW008A with C10300).",
	}},
	{"cu-ofe", Source{
		Text:       "CDA Standard Designation for Wrought Copper Alloys (public copies of the 2010/2014/2015 lists); public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: UNS, EN(dataset), ranges, density(dataset); memory: BS code",
		Notes:      "Code clash: BS C110 is this metal, American C110 is C11000 (ETP).",
	}},
	{"cu-dhp", Source{
		Text:       "French decree on metals in contact with water (JORFARTI000042045695); righton.co.uk C106 data sheet; C106 data sheet copy (copperonnet); australwright.com.au product data sheet",
		Confidence: "seen: codes, ranges, density",
		Notes:      "Weldable and brazeable sheet, common as craft sheet. 8.92 in one data sheet, 8.94 in another.",
	}},
	{"cuzn5", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); List of copper alloys (Wikipedia copies)",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "Brass although coins and bullet jackets of it are called bronze. CDA density 8.86 (memory).",
	}},
	{"cuzn10", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); azom.com UNS data sheet; australwright.com.au product data sheet",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "NAME TRAP: brass without tin. One Australian page calls this red brass and calls the 85/15 alloy commercial bronze (swapped against CDA). AZoM prints 8.8-8.94, CDA 8.80 (memory).",
	}},
	{"cuzn12-5", Source{
		Text:       "azom.com UNS data sheet; makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); memory",
		Confidence: "seen: UNS, comp, density; memory: ranges",
		Notes:      "NAME TRAP: brass without tin. No EN number known.",
	}},
	{"cuzn15", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); rajhans.com / shree-extrusion.com alloy pages",
		Confidence: "seen: codes, comp, ranges, density; memory: aliases Dutch metal, rose brass",
		Notes:      "Red brass also means cast leaded 85-5-5-5 (see gunmetal-85-5-5-5).",
	}},
	{"cuzn20", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); substech.com wrought brasses / silicon bronzes tables",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "One mill sheet gives BS CZ103 for CuZn33; that is taken as an error.",
	}},
	{"cuzn30", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); azom.com UNS data sheet; diversifiedbronze.com alloy page; knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873)",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "Single-phase alpha: the brass two engraving-brass sheets recommend for etched work. Stress-corrosion in ammonia.",
	}},
	{"cuzn33", Source{
		Text:       "KME sheet for the alloy (public copy); mdicopper.com CuZn33 page",
		Confidence: "seen: UNS, EN, BS, comp, density; memory: EN range",
		Notes:      "BS code differs by mill (CZ107, CZ103); density 8.45 to 8.50.",
	}},
	{"cuzn35", Source{
		Text:       "substech.com wrought brasses / silicon bronzes tables; List of copper alloys (Wikipedia copies); public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: UNS, EN, comp, ranges, density(dataset); memory: BS code",
		Notes:      "EN pairing disputed: one list gives CW507L (CuZn36), one CW508L (CuZn37). EN CuZn36 itself is 63.5-65.5 Cu (memory).",
	}},
	{"cuzn37", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); KME sheet for the alloy (public copy)",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "Default for plain brass sheet in Europe. 8.44 in one mill sheet. Mostly alpha, some beta possible. One mill prints BS CZ107.",
	}},
	{"cuzn40", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); substech.com wrought brasses / silicon bronzes tables; bharatmetalalloy.com CZ109 page; kmwindia.com CuZn40 page",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "Two-phase alpha-beta: beta dissolves first, rough or dezincified etch. Another sheet prints 8.41 and maps it to CW617N (wrong).",
	}},
	{"engraving-brass-cz137", Source{
		Text:       "rajhans.com / shree-extrusion.com alloy pages; makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used)",
		Confidence: "seen: codes, ranges, density; derived: comp",
		Notes:      "LEAD-BEARING. Two-phase; two vendor sheets say do not use for acid-etched work. Same vendor prints 8.36 and 8.41. Another page prints Cu 55.5 min (typo).",
	}},
	{"engraving-brass-c353", Source{
		Text:       "nectarmetals.com brass grades; learntimeonline.com clock-brass thread; memory",
		Confidence: "seen: codes, ranges; derived: comp; memory: density",
		Notes:      "LEAD-BEARING. Lead stays as dark smut. EN symbol CuZn36Pb2 on one page, CuZn37Pb2 elsewhere.",
	}},
	{"engraving-brass-c356", Source{
		Text:       "australwright.com.au product data sheet; memory",
		Confidence: "seen: UNS, ranges; memory: nominal comp, density",
		Notes:      "LEAD-BEARING. Described as alpha/beta and unsuitable for acid-etched work. Sheet equates it with ISO CuZn39Pb2.",
	}},
	{"clock-brass-cz120", Source{
		Text:       "learntimeonline.com clock-brass thread; student paper on euro coin alloys (scribd) + frwiki Cuproalliage; memory",
		Confidence: "seen: comp, EN number and symbol; memory: pairing of EN with BS, ranges, density",
		Notes:      "LEAD-BEARING. Two-phase. Other names of the same sheet: engraving brass. UNS equivalence is loose (C37700 in some lists).",
	}},
	{"cuzn36pb3", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); diversifiedbronze.com alloy page; public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "LEAD-BEARING. Usually rod, not sheet. Lead limit changed between sources.",
	}},
	{"architectural-bronze", Source{
		Text:       "brass-copper-castings.com alloy page (nominal, min, max, lb/cu in); historicalbronze.com architectural bronze table; patelalloys.com CZ121Pb3 / C37000 pages; diversifiedbronze.com alloy page",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "LEAD-BEARING. NAME TRAP: brass without tin. One cross-list gives CW608N/CZ123. 8.45 in another page.",
	}},
	{"forging-brass", Source{
		Text:       "public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: codes, ranges (vendor list); memory: comp, density, BS",
		Notes:      "LEAD-BEARING. Listed because its EN number is often quoted wrongly for CuZn40.",
	}},
	{"naval-brass", Source{
		Text:       "weldaloy.com sheet quoting CDA data; brass-copper-castings.com alloy page (nominal, min, max, lb/cu in); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used)",
		Confidence: "seen: UNS, BS, comp, ranges, density; memory: CW719R choice",
		Notes:      "Two-phase. EN pairing disputed: one list gives CW712R CuZn36Sn1Pb, which has deliberate lead; CW719R is the closer grade (memory).",
	}},
	{"admiralty-brass", Source{
		Text:       "memory",
		Confidence: "memory",
		Notes:      "Tube alloy; trace arsenic (waste bath).",
	}},
	{"manganese-bronze", Source{
		Text:       "memory",
		Confidence: "memory",
		Notes:      "NAME TRAP: brass, hardly any manganese.",
	}},
	{"nickel-brass-coin", Source{
		Text:       "student paper on euro coin alloys (scribd) + frwiki Cuproalliage; calculated",
		Confidence: "seen: comp; calculated: density",
		Notes:      "NICKEL: contact allergy. Outer or inner part of bimetal euro coins. Density is an ideal-mixing estimate.",
	}},
	{"nordic-gold", Source{
		Text:       "Wikipedia / wikia Nordic gold; de.zxc.wiki for density; calculated",
		Confidence: "seen: comp; calculated: density (source value rejected)",
		Notes:      "NAME TRAP: no gold. Oxide film of aluminium may passivate. Density: one page prints 7.01, which only fits coin mass over rim thickness; ideal mixing gives 7.9, CuAl5 is 8.17 (memory), 8.0 taken. Two pages say the name is the property of a company (unsourced): prefer the symbol as display name.",
	}},
	{"phosphor-bronze-4", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); memory",
		Confidence: "seen: codes; memory: comp, ranges, density",
	}},
	{"phosphor-bronze-5", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); johnhoodandcompany.co.uk PB102 sheet; public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "Default for plain phosphor bronze sheet in the UK and US. CDA 8.86 (memory).",
	}},
	{"phosphor-bronze-6", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873)",
		Confidence: "seen: codes, ranges, density (rounded); derived: comp",
		Notes:      "Default phosphor or tin bronze sheet in Germany.",
	}},
	{"phosphor-bronze-8", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: codes, comp (92/8), density; memory: ranges",
	}},
	{"phosphor-bronze-10", Source{
		Text:       "List of copper alloys (Wikipedia copies); memory",
		Confidence: "seen: comp; memory: UNS, ranges, density",
	}},
	{"phosphor-bronze-leaded", Source{
		Text:       "public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: codes, comp (dataset); memory: ranges, density",
		Notes:      "LEAD-BEARING. One dataset prints 8.90.",
	}},
	{"coinage-bronze", Source{
		Text:       "encyclopaedia excerpt on bronze coins; memory",
		Confidence: "seen: comp; memory: density",
		Notes:      "UK coin bronze 97/0.5/2.5 (memory) is nearer gilding metal.",
	}},
	{"silicon-bronze-high", Source{
		Text:       "atlasmetal.com C65500 page; australwright.com.au product data sheet; brass-copper-castings.com alloy page (nominal, min, max, lb/cu in); public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: UNS, EN(dataset), comp, ranges, density; memory: BS",
		Notes:      "Published nominal 97+0.9+3 sums to 100.9, reduced on Cu. Silicon may be oxidised to silica: charge per gram up to 14 % more, glassy smut.",
	}},
	{"silicon-bronze-low", Source{
		Text:       "substech.com wrought brasses / silicon bronzes tables; makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); memory",
		Confidence: "seen: codes, ranges, density 0.316 lb/cu in; memory: nominal",
	}},
	{"silicon-bronze-cast", Source{
		Text:       "memory",
		Confidence: "memory",
		Notes:      "Common in art foundries in place of tin bronze. See silicon note.",
	}},
	{"aluminium-bronze-5", Source{
		Text:       "memory",
		Confidence: "memory",
		Notes:      "Contains no tin. May hold arsenic. Oxide film can block the etch.",
	}},
	{"aluminium-bronze-8", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); memory",
		Confidence: "seen: UNS, BS; memory: comp, ranges, density",
		Notes:      "Contains no tin.",
	}},
	{"aluminium-bronze-d", Source{
		Text:       "brass-copper-castings.com alloy page (nominal, min, max, lb/cu in); makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used)",
		Confidence: "seen: codes, comp, ranges, density",
		Notes:      "Contains no tin. makeitfrom prints 8.5.",
	}},
	{"nickel-aluminium-bronze", Source{
		Text:       "makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used); public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: codes, comp, density (dataset); memory: ranges",
		Notes:      "Contains no tin. NICKEL. Two or more phases.",
	}},
	{"aluminium-bronze-cast", Source{
		Text:       "public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: UNS, EN, comp (dataset); memory: ranges, density, BS",
		Notes:      "Contains no tin. Dataset prints 7.53, CDA 7.45 (memory).",
	}},
	{"tin-bronze-88-8-4", Source{
		Text:       "National Bronze C90300 sheet (public copy) and stpaulfoundry.com; pwfoundry.com casting alloy table",
		Confidence: "seen: UNS, comp, ranges, density",
		Notes:      "Published nominal 87.5/8.3/4.0 sums to 99.8; trade ratio used.",
	}},
	{"gunmetal-88-10-2", Source{
		Text:       "brass-copper-castings.com alloy page (nominal, min, max, lb/cu in); pwfoundry.com casting alloy table; makeitfrom.com page for the UNS number (EN/BS codes only; its densities are NOT used)",
		Confidence: "seen: UNS, comp, ranges, density; memory: BS code",
		Notes:      "Gunmetal is a bronze, not steel.",
	}},
	{"tin-bronze-89-11", Source{
		Text:       "memory",
		Confidence: "memory",
	}},
	{"tin-bronze-88-12", Source{
		Text:       "memory",
		Confidence: "memory",
	}},
	{"gunmetal-85-5-5-5", Source{
		Text:       "pwfoundry.com casting alloy table; memory",
		Confidence: "seen: UNS, comp, ranges; memory: EN, BS, density",
		Notes:      "LEAD-BEARING. NAME TRAP: also called red brass.",
	}},
	{"statuary-bronze", Source{
		Text:       "Henley's Twentieth Century Formulas (public-domain text); historicalbronze.com architectural bronze table; calculated",
		Confidence: "seen: comp; calculated: density",
		Notes:      "LEAD-BEARING. Name is used for many alloys; some architectural suppliers mean a copper-zinc alloy. Density is ideal mixing.",
	}},
	{"bell-metal", Source{
		Text:       "Henley's Twentieth Century Formulas (public-domain text); memory",
		Confidence: "seen: comp, ranges; memory: density",
		Notes:      "Two-phase, brittle; delta phase etches at another rate. Tin smut.",
	}},
	{"bell-bronze-80-20", Source{
		Text:       "Henley's Twentieth Century Formulas (public-domain text); memory",
		Confidence: "seen: comp; memory: UNS, ranges, density",
		Notes:      "Two-phase.",
	}},
	{"nickel-silver-10", Source{
		Text:       "knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); historicalbronze.com architectural bronze table; memory",
		Confidence: "seen: codes, ranges, US nominal; derived: comp; memory: density",
		Notes:      "NO SILVER. NICKEL: contact allergy. American C74500 nominal is 65/10/25 with 8.69 (memory).",
	}},
	{"nickel-silver-12", Source{
		Text:       "knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); memory",
		Confidence: "seen: codes, ranges; derived: comp; memory: density",
		Notes:      "NO SILVER. NICKEL: contact allergy. Default for plain nickel silver sheet in Europe. Alpaca is the ordinary Spanish word; similar German and Italian spellings are called protected marks by two sources and are left out.",
	}},
	{"nickel-silver-15", Source{
		Text:       "memory",
		Confidence: "memory",
		Notes:      "NO SILVER. NICKEL: contact allergy. No EN number known.",
	}},
	{"nickel-silver-18", Source{
		Text:       "CDA designation for wrought copper alloys; memory",
		Confidence: "seen: UNS; memory: comp, ranges, density",
		Notes:      "NO SILVER. NICKEL: contact allergy. Default for nickel silver sheet in the US; the nearest EN grade is CW409J (62/18/20), a row of its own.",
	}},
	{"nickel-silver-18-en", Source{
		Text:       "knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); kemper-olpe.de CuNi18Zn20 sheet; public repository machining dataset (C-number, EN, composition, density; quality unverified)",
		Confidence: "seen: codes, ranges, density; derived: comp",
		Notes:      "NO SILVER. NICKEL: contact allergy. Copper 60-63 %: leaner in copper than C75200, though tables often pair them.",
	}},
	{"nickel-silver-18-spring", Source{
		Text:       "public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: UNS, EN, comp (dataset); memory: BS, ranges, density",
		Notes:      "NO SILVER. NICKEL. Dataset prints 8.50, CDA 8.70 (memory).",
	}},
	{"nickel-silver-leaded", Source{
		Text:       "UNS C76300 / CW408J one-page sheet (public copy)",
		Confidence: "seen: codes, ranges, density; derived: comp",
		Notes:      "NO SILVER. NICKEL and LEAD-BEARING. Sheet says used in jewellery.",
	}},
	{"cupronickel-10", Source{
		Text:       "husseycopper.com C70600 page; cross-reference list in a public repository (CW352H, CuNi10Fe1Mn); memory",
		Confidence: "seen: UNS, EN, comp, ranges, density; memory: BS",
		Notes:      "NICKEL: contact allergy.",
	}},
	{"cupronickel-25", Source{
		Text:       "electrical-contacts-wiki.com, Naturharte/Sonstige naturharte Kupfer-Legierungen tables (EN+UNS+range+density); memory",
		Confidence: "seen: UNS, EN, comp, ranges, density; memory: BS",
		Notes:      "NICKEL: contact allergy. Coin metal, looks like silver, has none.",
	}},
	{"cupronickel-30", Source{
		Text:       "memory",
		Confidence: "memory",
		Notes:      "NICKEL: contact allergy.",
	}},
	{"beryllium-copper", Source{
		Text:       "knight-precision-wire.co.uk specification table (EN 12166 limits, nearest UNS, BS 2873); public repository machining dataset (C-number, EN, composition, density; quality unverified); safety sheets for beryllium materials (chemical etching, pickling, cleaning as exposure routes); Cornell beryllium hazard page",
		Confidence: "seen: codes, ranges, comp and density (dataset), hazard",
		Notes:      "DO NOT ETCH. Beryllium salts, dust and mist are toxic (chronic beryllium disease, cancer); chemical etching and pickling are named as exposure routes in safety sheets for beryllium materials.",
	}},
	{"beryllium-copper-low", Source{
		Text:       "public repository machining dataset (C-number, EN, composition, density; quality unverified); memory",
		Confidence: "seen: codes, comp, density (dataset); memory: ranges",
		Notes:      "DO NOT ETCH. Beryllium hazard as above. Dataset beryllium (0.3) is below the CDA range.",
	}},
	{"silver-999", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table; jewellery supplier specific-gravity table (stuller); memory",
		Confidence: "seen: comp, ranges, density; memory: UNS",
		Notes:      "Unalloyed; soft. 10.53 in one supplier table.",
	}},
	{"silver-958", Source{
		Text:       "wholesale-silver.blogspot.com note on silver standards; laudismonte.de Praktische Silberlegierungen density table",
		Confidence: "seen: comp; derived: density between 950 (10.40) and 975 (10.42)",
		Notes:      "NAME TRAP: Britannia metal is pewter (tin) and must not match.",
	}},
	{"silver-950", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table; wholesale-silver.blogspot.com note on silver standards; snazlondon.blogspot.com list of silver finenesses",
		Confidence: "seen: comp, density, aliases",
		Notes:      "Mexican silver marked .925 also exists.",
	}},
	{"silver-935", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table",
		Confidence: "seen: comp, density",
	}},
	{"silver-925", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table; jewellery supplier specific-gravity table (stuller); biologyinsights.com pages on silver density; wholesale-silver.blogspot.com note on silver standards; memory",
		Confidence: "seen: comp, density; memory: UNS",
		Notes:      "Nickel is possible in old or cheap sterling; firescale under anneal. 10.35, 10.36 and 10.40 printed by three sources.",
	}},
	{"silver-900", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table; wholesale-silver.blogspot.com note on silver standards; memory",
		Confidence: "seen: comp, density; memory: UNS",
		Notes:      "Outside the US coin silver may be 800 to 835.",
	}},
	{"silver-875", Source{
		Text:       "memory; calculated",
		Confidence: "memory: comp; calculated: density",
	}},
	{"silver-835", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table",
		Confidence: "seen: comp, density",
		Notes:      "A 835/55 Cu/110 Zn variant is listed with the same density.",
	}},
	{"silver-830", Source{
		Text:       "snazlondon.blogspot.com list of silver finenesses; laudismonte.de Praktische Silberlegierungen density table; calculated",
		Confidence: "seen: standard; calculated: density",
		Notes:      "833 Dutch second standard is next to it (10.2).",
	}},
	{"silver-800", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table; calculated",
		Confidence: "seen: comp, density (rounded)",
		Notes:      "Table prints 10.1 for 800/200 Cu and 10.14 for 800/50/150 Zn.",
	}},
	{"silver-720", Source{
		Text:       "laudismonte.de Praktische Silberlegierungen density table; memory",
		Confidence: "seen: comp, density; memory: UNS",
		Notes:      "Also a brazing filler.",
	}},
	{"silver-500-coin", Source{
		Text:       "Newman Numismatic Portal dictionary, Copper Nickel; calculated",
		Confidence: "seen: comp; calculated: density",
		Notes:      "NICKEL: contact allergy. Density is ideal mixing.",
	}},
	{"germanium-sterling-925", Source{
		Text:       "Guild of Enamellers reprint of Goldsmiths Company Technical Bulletin 2005/2; calculated",
		Confidence: "seen: Ge 1.2 % replacing copper; calculated: density",
		Notes:      "TARNISH-RESISTANT with germanium: transparent oxide film slows dissolution start, germanium may stay as oxide. If Ge dissolves as Ge(IV) charge per gram rises by 6 %. Brand names left out on purpose.",
	}},
	{"germanium-silver-935", Source{
		Text:       "declaration in US application 10/559,092 (archive.org); calculated",
		Confidence: "seen: Ag and Ge levels, rest copper; calculated: density",
		Notes:      "TARNISH-RESISTANT with germanium, as above.",
	}},
	{"germanium-silver-960", Source{
		Text:       "declaration in US application 10/559,092 (archive.org); calculated",
		Confidence: "seen: Ag and Ge levels, rest copper; calculated: density",
		Notes:      "TARNISH-RESISTANT with germanium, as above.",
	}},
	{"shibuichi-25", Source{
		Text:       "Brinkley, Japan vol. 7 p. 234 (Wikisource); calculated",
		Confidence: "seen: comp; calculated: density",
		Notes:      "Two-phase silver-copper: phases etch at different rates. Density is ideal mixing.",
	}},
	{"shibuichi-33", Source{
		Text:       "Brinkley, Japan vol. 7 p. 234 (Wikisource); calculated",
		Confidence: "seen: comp; calculated: density",
		Notes:      "As shibuichi-25; usual grade for sword fittings. A third grade is 6-7 parts silver to 10 copper.",
	}},
	{"shakudo", Source{
		Text:       "Brinkley, Japan vol. 7 p. 234 (Wikisource); Wikipedia Shakudo; calculated",
		Confidence: "seen: comp, ranges; calculated: density",
		Notes:      "CONTAINS GOLD: gold does not dissolve, stays as sludge worth keeping. Density is ideal mixing.",
	}},
	{"clay-copper", Source{
		Text:       "metal-clay artist's gallery page on bronze clay; amcaw.org on sintering (always somewhat porous); memory",
		Confidence: "memory: density; seen: porosity in general",
		Notes:      "POROUS: density taken as 0.90 of 8.96; assumption, no source for copper. Traps electrolyte.",
	}},
	{"clay-bronze", Source{
		Text:       "metal-clay artist's gallery page on bronze clay; amcaw.org on sintering (always somewhat porous); memory",
		Confidence: "seen: comp, relative density; derived: density",
		Notes:      "POROUS: fully sintered density printed as 90 % of cast bronze; 0.90 x 8.77. Traps electrolyte.",
	}},
	{"clay-silver-999", Source{
		Text:       "metal-clay artist's gallery page on bronze clay; amcaw.org on sintering (always somewhat porous); metal-clay retailer collection text (.999, .960 and .925 silver clays exist); memory",
		Confidence: "seen: fineness, porosity in general; memory: density",
		Notes:      "POROUS: 0.93 of 10.49 assumed (0.90-0.95 by memory); sources only say less dense than sterling and always somewhat porous. Weigh and measure the piece.",
	}},
	{"clay-silver-960", Source{
		Text:       "metal-clay retailer collection text (.999, .960 and .925 silver clays exist); memory",
		Confidence: "seen: fineness; memory: rest, density",
		Notes:      "POROUS: 0.93 of 10.41 assumed. Remainder taken as copper.",
	}},
	{"clay-silver-925", Source{
		Text:       "metal-clay retailer collection text (.999, .960 and .925 silver clays exist); metal-clay technical adviser's blog test of 2011; memory",
		Confidence: "seen: fineness, shrinkage; memory: density",
		Notes:      "POROUS: 0.93 of 10.36 assumed. Fired in carbon; one test disc went from 20 mm to 16.5 mm.",
	}},
}
