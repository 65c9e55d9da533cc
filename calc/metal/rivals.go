package metal

import (
	"slices"
	"strings"
)

// doubtful are names, folded, that mean more than one metal: the id that they are
// taken for, and the ids that they may also mean. From the notes on misleading
// names in the table of alloys.
var doubtful = []struct{ id, names, others string }{
	{"silver-925", "silver,silver sheet,silber,argent,plata,argento,zilver,prata,銀,solid silver,echtsilber,argent massif,plata maciza,argento massiccio", "silver-999"},
	{"phosphor-bronze-5", "bronze,bronze sheet,bronce,bronzo,brons,青銅", "cuzn10,tin-bronze-88-12"},
	{"nickel-silver-12", "nickel silver,nickel silver sheet,german silver,new silver,hotel silver,neusilber,neusilberblech,maillechort,argent allemand,alpaca,alpaka,alpacca,plata alemana,argentone,nysilver,nieuwzilver,洋白", "nickel-silver-18"},
	{"cuzn10", "gilding metal,gilding,gilding metal sheet", "cuzn5,cuzn15"},
	{"cuzn15", "red brass", "gunmetal-85-5-5-5"},
	{"cuzn15", "tombak,tombac,tombacco,tombaco", "cuzn10,cuzn20"},
	{"engraving-brass-cz137", "engraving brass,engravers brass,graviermessing,laiton graver,laiton gravure,laton grabar,ottone incisione", "engraving-brass-c353,engraving-brass-c356,clock-brass-cz120"},
	{"engraving-brass-c353", "leaded brass", "clock-brass-cz120,cuzn36pb3"},
	{"clock-brass-cz120", "clock brass,uhrenmessing,laiton horlogerie,laton relojeria", "engraving-brass-c353"},
	{"gunmetal-88-10-2", "gunmetal,gun metal", "gunmetal-85-5-5-5"},
	{"tin-bronze-88-12", "tin bronze,bronze etain", "phosphor-bronze-6,tin-bronze-88-8-4"},
	{"phosphor-bronze-6", "zinnbronze,bronce estano,bronzo stagno", "tin-bronze-88-12"},
	{"aluminium-bronze-d", "aluminium bronze,aluminum bronze,aluminiumbronze,alubronze,bronze aluminium,bronce aluminio,bronzo alluminio", "aluminium-bronze-5,aluminium-bronze-8"},
	{"silver-900", "coin silver,munzsilber,argent monnaie,plata moneda,argento monete", "silver-835,silver-800"},
	{"cupronickel-25", "cupronickel,cupro nickel,copper nickel,kupfernickel,cuproniquel,cupronichel,cuivre nickel,cobre niquel,rame nichel", "cupronickel-10,cupronickel-30"},
	{"germanium-silver-935", "argentium,argentium silver", "germanium-silver-960"},
	{"shibuichi-25", "shibuichi", "shibuichi-33"},
	{"clay-silver-999", "silver clay,silver metal clay,pate argent,arcilla plata,argilla argento,silberclay,silberton", "clay-silver-960,clay-silver-925"},
	{"clay-silver-999", "metal clay", "clay-copper,clay-bronze"},
	{"statuary-bronze", "statuary bronze,sculpture bronze,kunstbronze,bronze art", "silicon-bronze-cast"},
}

// kin are the usual sheets of a family, offered to a person who types its plain
// word. They are rivals of the plain sheet only where the text says that the metal
// is not known ("unknown brass").
var kin = []struct{ id, names, others string }{
	{"cu-etp", "copper,copper sheet,kupfer,kupferblech,cuivre,cobre,rame,koppar,koper,銅", "cu-dhp,cu-of"},
	{"cuzn37", "brass,brass sheet,messing,messingblech,laiton,laton,chapa laton,ottone,lastra ottone,latao,真鍮,黄銅", "cuzn30,cuzn35,cuzn15,engraving-brass-cz137"},
	{"phosphor-bronze-5", "bronze,bronze sheet,bronce,bronzo,brons,青銅", "phosphor-bronze-8,silicon-bronze-high"},
	{"silver-925", "silver,silver sheet,silber,argent,plata,argento,zilver,prata,銀", "silver-958,silver-950,silver-900"},
}

// rivals are the other metals that a text may mean: those of the same name or
// grade, those of a doubtful name unless other words of the text remove the doubt,
// and a family's usual sheets if the text says that the metal is not known.
func rivals(calls []call) []Hit {
	var list []Hit
	for _, c := range calls[1:] {
		list = append(list, hit(c))
	}
	if calls[0].amid {
		return list
	}
	if calls[0].vague {
		list = append(list, relatives(calls[0])...)
	}
	for _, d := range doubtful {
		if d.id == calls[0].metal.ID && holds(d.names, calls[0].name) {
			list = appendHits(list, d.others, "also called "+calls[0].name)
		}
	}
	return list
}

// relatives are the usual sheets of the family that was named by its plain word.
func relatives(c call) []Hit {
	var list []Hit
	for _, k := range kin {
		if !c.amid && k.id == c.metal.ID && holds(k.names, c.name) {
			list = appendHits(list, k.others, "of the same family")
		}
	}
	return list
}

// holds says that a list of folded names, with commas between, holds a name.
func holds(names, name string) bool {
	return slices.Contains(strings.Split(names, ","), strings.Join(words(fold(name)), " "))
}

// appendHits adds the metals of a list of ids that are not there yet.
func appendHits(list []Hit, ids, why string) []Hit {
	for _, id := range strings.Split(ids, ",") {
		m, ok := byID(id)
		if ok && !slices.ContainsFunc(list, func(h Hit) bool { return h.Metal == m }) {
			list = append(list, Hit{m, why, m.Remark})
		}
	}
	return list
}
